package saddlewright.rules.retention;

import java.util.List;
import saddlewright.dentition.Face;
import saddlewright.dentition.Side;
import saddlewright.dentition.ToothNames;
import saddlewright.design.Clasp;
import saddlewright.design.DesignEdit;
import saddlewright.design.Subject;
import saddlewright.rules.Claim;
import saddlewright.rules.Draft;
import saddlewright.rules.Judging;
import saddlewright.rules.Literature;
import saddlewright.rules.Naming;
import saddlewright.rules.ReshapedClasp;
import saddlewright.rules.Rule;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;
import saddlewright.rules.StandingClasps;
import saddlewright.rules.SurveyedTooth;

/** Tips that grip outer faces on one side and inner faces on the other push the denture across. */
public final class RetentionIsOpposedAcrossTheArch implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "retention-is-opposed-across-the-arch",
          "Buccal tips on one side are opposed by buccal tips on the other, lingual ones by"
              + " lingual.",
          Severity.SHOULD,
          Source.read(Literature.NEURONS + "; design tutorial on Class I by Faraone"));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    List<Clasp> right = StandingClasps.on(s, Side.RIGHT);
    List<Clasp> left = StandingClasps.on(s, Side.LEFT);
    if (right.isEmpty() || left.isEmpty()) {
      return;
    }
    boolean opposed = false;
    for (Face face : Face.values()) {
      List<Clasp> r = on(right, face);
      List<Clasp> l = on(left, face);
      if (!r.isEmpty() && !l.isEmpty()) {
        opposed = true;
        r.forEach(c -> uphold(s, on, c, l.get(0)));
        l.forEach(c -> uphold(s, on, c, r.get(0)));
      }
    }
    if (!opposed) {
      List<Clasp> odd = on(right, Face.LINGUAL).isEmpty() ? left : right;
      Side side = odd.get(0).tooth().side();
      Draft d =
          on.finding(odd.get(0).tooth().toString(), StandingClasps.subjects(s, odd))
              .fact("retention is not opposed across the arch")
              .measured(
                  "lingual on the " + side.code() + ", buccal on the " + side.opposite().code(),
                  "the same face on both sides");
      if (odd.size() == 1) {
        outward(s, odd.get(0), d);
      }
      d.done();
    }
  }

  private static void outward(Situation s, Clasp c, Draft d) {
    SurveyedTooth.of(s, c.tooth()).undercut(Face.BUCCAL).stream()
        .findFirst()
        .ifPresent(
            z ->
                d.remedy(
                    "Use the " + ToothNames.zone(c.tooth(), z) + " undercut",
                    new DesignEdit.Change(ReshapedClasp.tipped(c, z))));
  }

  private static void uphold(Situation s, Judging on, Clasp c, Clasp against) {
    on.upheld(
        "is opposed across the arch by the "
            + Naming.of(against)
            + ", "
            + ToothNames.face(c.tooth(), c.tip().face())
            + " against "
            + ToothNames.face(against.tooth(), against.tip().face()),
        Subject.of(s.arch(), c));
  }

  private static List<Clasp> on(List<Clasp> clasps, Face face) {
    return clasps.stream().filter(c -> c.tip().face() == face).toList();
  }
}
