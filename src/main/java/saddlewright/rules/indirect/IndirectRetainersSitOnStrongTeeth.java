package saddlewright.rules.indirect;

import java.util.stream.Stream;
import saddlewright.chart.ToothFindings;
import saddlewright.dentition.End;
import saddlewright.dentition.Tooth;
import saddlewright.design.ConnectorForm;
import saddlewright.design.DesignEdit;
import saddlewright.design.MajorConnector;
import saddlewright.design.Plating;
import saddlewright.design.Rest;
import saddlewright.design.Subject;
import saddlewright.rules.Claim;
import saddlewright.rules.Draft;
import saddlewright.rules.Judging;
import saddlewright.rules.Literature;
import saddlewright.rules.Quantity;
import saddlewright.rules.Rule;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;

/** An indirect retainer loads its tooth on one side; a single incisor gives way. */
public final class IndirectRetainersSitOnStrongTeeth implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "indirect-retainers-sit-on-strong-teeth",
          "An indirect retainer sits on a canine, a premolar or a molar with a good outlook, not on"
              + " a single incisor.",
          Severity.SHOULD,
          Source.read(
              Literature.DALHOUSIE + "; " + Literature.ANKARA + "; " + Literature.STEWART_NOTES));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    for (Rest r : IndirectNeed.declared(s)) {
      if (!s.chart().stands(r.tooth())) {
        continue;
      }
      boolean alone = r.tooth().isIncisor() && !sharesItsLoad(s, r.tooth());
      Subject rest = Subject.of(s.arch(), r);
      if (alone) {
        weak(s, r, "a single incisor, which gives way under it", "1 incisor", on);
      } else if (isPoor(s, r.tooth())) {
        weak(s, r, "a tooth of poor outlook", "doubtful or loose", on);
      } else {
        on.upheld("sits on a tooth that is strong enough for an indirect retainer", rest);
      }
    }
  }

  private static void weak(Situation s, Rest r, String what, String actual, Judging on) {
    Draft d =
        on.finding(r.tooth().toString(), Subject.of(s.arch(), r))
            .fact("indirect retainer on " + what)
            .measured(actual, "a firm canine, premolar or molar");
    DesignEdit.Change plain = new DesignEdit.Change(r.asPlain());
    LiftingSaddle.all(s).stream()
        .findFirst()
        .ifPresent(
            x ->
                IndirectSite.best(s, x.facts()).stream()
                    .filter(site -> site.tooth() != r.tooth() && !isPoor(s, site.tooth()))
                    .limit(2)
                    .forEach(
                        site ->
                            d.remedy(
                                site.label() + " instead",
                                DesignEdit.several(site.edit(s), plain))));
    d.remedy("Keep it as a plain rest", plain).done();
  }

  private static boolean isPoor(Situation s, Tooth t) {
    ToothFindings f = s.chart().tooth(t);
    return f.doubtful() || f.mobility().orElse(0) >= s.profile().limit(Quantity.MOBILITY);
  }

  /** Plated together with its neighbours, or one of three rests on front teeth in a row. */
  private static boolean sharesItsLoad(Situation s, Tooth t) {
    boolean plated =
        s.design().components().stream()
            .anyMatch(
                c ->
                    c.teeth().contains(t)
                        && (c instanceof Plating p && p.span().size() > 1
                            || c instanceof MajorConnector m
                                && m.form() == ConnectorForm.LINGUAL_PLATE));
    long group =
        Stream.of(End.MESIAL, End.DISTAL)
            .flatMap(e -> t.neighbour(e).stream())
            .filter(n -> s.design().stream(Rest.class).anyMatch(x -> x.tooth() == n))
            .count();
    return plated || group == 2;
  }
}
