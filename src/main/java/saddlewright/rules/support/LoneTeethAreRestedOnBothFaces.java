package saddlewright.rules.support;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import saddlewright.dentition.End;
import saddlewright.dentition.RestSite;
import saddlewright.dentition.Tooth;
import saddlewright.design.DesignEdit;
import saddlewright.design.Rest;
import saddlewright.design.Subject;
import saddlewright.rules.Amount;
import saddlewright.rules.AreaSupport;
import saddlewright.rules.Claim;
import saddlewright.rules.EndSupport;
import saddlewright.rules.Judging;
import saddlewright.rules.Literature;
import saddlewright.rules.NewRest;
import saddlewright.rules.Rule;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;

/** A tooth between two saddles is rocked by both; rests at both ends keep it upright. */
public final class LoneTeethAreRestedOnBothFaces implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "lone-teeth-are-rested-on-both-faces",
          "A tooth that stands alone between two saddles is rested at both ends, or away from the free end.",
          Severity.SHOULD,
          Source.read(Literature.MCCRACKEN_NOTES + "; " + Literature.ANKARA));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    List<AreaSupport> areas = AreaSupport.all(s);
    for (Tooth t : s.chart().standing()) {
      if (t.isAnterior()) {
        continue;
      }
      Optional<AreaSupport> mesial = beside(areas, t, End.MESIAL);
      Optional<AreaSupport> distal = beside(areas, t, End.DISTAL);
      if (mesial.isPresent() && distal.isPresent()) {
        weigh(s, t, distal.get().isFreeEnd(), on);
      }
    }
  }

  private static void weigh(Situation s, Tooth t, boolean beforeFreeEnd, Judging on) {
    List<Rest> rests = s.design().stream(Rest.class).filter(r -> r.tooth() == t).toList();
    if (rests.isEmpty() && s.design().all(Rest.class).isEmpty()) {
      return;
    }
    List<DesignEdit> edits = new ArrayList<>();
    List<String> missing = new ArrayList<>();
    for (End end : beforeFreeEnd ? List.of(End.MESIAL) : List.of(End.MESIAL, End.DISTAL)) {
      RestSite site = RestSite.occlusal(end);
      if (rests.stream().noneMatch(r -> r.site() == site || r.form() == Rest.Form.DOUBLE)) {
        edits.add(NewRest.edit(s, t, site));
        missing.add(end == End.MESIAL ? "mesial" : "distal");
      }
    }
    if (edits.isEmpty()) {
      for (Rest r : rests) {
        on.upheld("keeps the lone " + t + " upright between two saddles", Subject.of(s.arch(), r));
      }
      return;
    }
    on.finding(t.toString(), Subject.of(t))
        .fact(
            "stands alone between two saddles without a "
                + String.join(" and a ", missing)
                + " rest")
        .measured(
            Amount.of(rests.size(), "rest"), beforeFreeEnd ? "a mesial rest" : "a rest at each end")
        .remedy("Add the missing rest", new DesignEdit.Several(edits))
        .done();
  }

  private static Optional<AreaSupport> beside(List<AreaSupport> areas, Tooth t, End end) {
    for (AreaSupport a : areas) {
      for (EndSupport e : a.ends()) {
        if (e.abutment() == t && e.facing() == end) {
          return Optional.of(a);
        }
      }
    }
    return Optional.empty();
  }
}
