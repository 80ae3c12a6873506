package saddlewright.rules.support;

import java.util.ArrayList;
import java.util.List;
import saddlewright.dentition.RestSite;
import saddlewright.dentition.Tooth;
import saddlewright.design.ConnectorForm;
import saddlewright.design.DesignEdit;
import saddlewright.design.MajorConnector;
import saddlewright.design.Plating;
import saddlewright.design.Rest;
import saddlewright.design.Subject;
import saddlewright.rules.AreaSupport;
import saddlewright.rules.Claim;
import saddlewright.rules.EndSupport;
import saddlewright.rules.Judging;
import saddlewright.rules.Literature;
import saddlewright.rules.Naming;
import saddlewright.rules.NewRest;
import saddlewright.rules.Outlook;
import saddlewright.rules.Rule;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;

/** A canine has the longest root of the front; an incisor yields under a rest. */
public final class CaninesAreRestedBeforeIncisors implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "canines-are-rested-before-incisors",
          "An incisor is rested only beside its saddle, under plating, or after the canine.",
          Severity.SHOULD,
          Source.read(Literature.ANKARA + "; " + Literature.MCCRACKEN_NOTES));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    for (Rest r : s.design().all(Rest.class)) {
      Tooth t = r.tooth();
      if (t.isCanine() && s.chart().stands(t) && r.site() == RestSite.CINGULUM) {
        on.upheld("uses the strongest root of the front", Subject.of(s.arch(), r));
      } else if (t.isIncisor() && s.chart().stands(t) && !r.indirectRetainer()) {
        weigh(s, r, on);
      }
    }
  }

  private static void weigh(Situation s, Rest r, Judging on) {
    Tooth canine = Tooth.of(r.tooth().fdi() / 10 * 10 + 3);
    boolean free =
        s.chart().stands(canine)
            && !Outlook.isPoor(s, canine)
            && s.design().stream(Rest.class).noneMatch(x -> x.tooth() == canine);
    if (!free || isAbutment(s, r.tooth()) || isPlated(s, r.tooth())) {
      on.judged();
      return;
    }
    List<DesignEdit> edits = new ArrayList<>();
    edits.add(
        new DesignEdit.Change(
            new Rest(r.id(), canine, RestSite.CINGULUM, r.form(), r.seat(), r.indirectRetainer())));
    NewRest.strut(s, canine, RestSite.CINGULUM).ifPresent(m -> edits.add(new DesignEdit.Place(m)));
    on.finding(r.tooth().toString(), Subject.of(s.arch(), r))
        .fact("an incisor is rested while " + canine + " stands free beside it")
        .measured(Naming.of(r), "cingulum rest on " + canine)
        .remedy("Move it to " + canine, new DesignEdit.Several(edits))
        .done();
  }

  private static boolean isAbutment(Situation s, Tooth t) {
    for (AreaSupport a : AreaSupport.all(s)) {
      for (EndSupport e : a.ends()) {
        if (e.abutment() == t) {
          return true;
        }
      }
    }
    return false;
  }

  private static boolean isPlated(Situation s, Tooth t) {
    return s.design().stream(Plating.class).anyMatch(p -> p.span().contains(t))
        || s.design().stream(MajorConnector.class)
            .anyMatch(
                m ->
                    (m.form() == ConnectorForm.LINGUAL_PLATE
                            || m.form() == ConnectorForm.DENTAL_BAR
                            || m.form() == ConnectorForm.CONTINUOUS_BAR)
                        && m.span().contains(t));
  }
}
