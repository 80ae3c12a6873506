package saddlewright.rules.bracing;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import saddlewright.design.Clasp;
import saddlewright.design.Component;
import saddlewright.design.DesignEdit;
import saddlewright.design.GuidePlate;
import saddlewright.design.ReciprocalArm;
import saddlewright.design.Subject;
import saddlewright.layout.Embrace;
import saddlewright.rules.Amount;
import saddlewright.rules.Claim;
import saddlewright.rules.Draft;
import saddlewright.rules.Judging;
import saddlewright.rules.Literature;
import saddlewright.rules.Naming;
import saddlewright.rules.Quantity;
import saddlewright.rules.Rule;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;

/** A tooth that is held over less than half of its round slips out sideways. */
public final class ClaspUnitsEncloseMoreThanHalf implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "clasp-units-enclose-more-than-half",
          "The parts of a clasp unit hold their tooth over more than 180 degrees of its round,"
              + " without a break or at three points.",
          Severity.MUST,
          Source.read(
              Literature.MCCRACKEN_NOTES + "; " + Literature.NEURONS + "; " + Literature.FARAONE));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    double least = s.profile().limit(Quantity.ENCIRCLEMENT);
    for (Clasp c : s.design().all(Clasp.class)) {
      if (!s.chart().stands(c.tooth())) {
        continue;
      }
      double held = Embrace.of(s.layout(), c.tooth()).degrees();
      Subject clasp = Subject.of(s.arch(), c);
      if (held > least) {
        on.upheld("is part of a unit that holds its tooth over " + Amount.degrees(held), clasp);
      } else {
        Draft d =
            on.finding(c.tooth().toString(), clasp)
                .fact("the parts round it leave the tooth free to slip out of the " + Naming.of(c))
                .measured(Amount.degrees(held) + " enclosed", "more than " + Amount.degrees(least));
        remedies(s, c).forEach(d::remedy);
        d.done();
      }
    }
  }

  /** The parts that close the ring, the usual one first; only those that do close it. */
  private static Map<String, DesignEdit> remedies(Situation s, Clasp c) {
    Map<String, DesignEdit> out = new LinkedHashMap<>();
    Component arm =
        new ReciprocalArm(
            s.design().freshId("recip"), c.tooth(), c.tip().face().opposite(), c.origin());
    Component plate = new GuidePlate(s.design().freshId("plate"), c.tooth(), c.origin());
    boolean bar = c.form().isGingivallyApproaching();
    for (Component part : bar ? List.of(plate, arm) : List.of(arm, plate)) {
      if (closes(s, c, part)) {
        out.put("Add a " + Naming.of(part), new DesignEdit.Place(part));
      }
    }
    return out;
  }

  private static boolean closes(Situation s, Clasp c, Component part) {
    return Embrace.of(s.layout().plus(part), c.tooth()).degrees()
        > s.profile().limit(Quantity.ENCIRCLEMENT);
  }
}
