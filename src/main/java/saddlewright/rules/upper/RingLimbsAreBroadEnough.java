package saddlewright.rules.upper;

import java.util.Optional;
import saddlewright.design.ConnectorForm;
import saddlewright.layout.PalatalLimbs;
import saddlewright.rules.Amount;
import saddlewright.rules.Claim;
import saddlewright.rules.Clearance;
import saddlewright.rules.Judging;
import saddlewright.rules.LaidConnector;
import saddlewright.rules.Literature;
import saddlewright.rules.Quantity;
import saddlewright.rules.Rule;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;

/** A ring is stiff only when both of its straps are. */
public final class RingLimbsAreBroadEnough implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "ring-limbs-are-broad-enough",
          "The straps of a palatal ring are at least 6 mm broad in front and 8 mm" + " behind.",
          Severity.SHOULD,
          Source.read(Literature.MAXILLARY_NOTES + "; " + Literature.EXAM_NOTES));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    Optional<PalatalLimbs> limbs = s.layout().palatalLimbs();
    double front = s.profile().limit(Quantity.RING_FRONT_LIMB);
    double rear = s.profile().limit(Quantity.RING_REAR_LIMB);
    for (LaidConnector c : LaidConnector.all(s, ConnectorForm.PALATAL_RING)) {
      if (limbs.isEmpty() || limbs.get().posterior().isEmpty()) {
        continue;
      }
      double ahead = limbs.get().anterior();
      double behind = limbs.get().posterior().getAsDouble();
      if (ahead < front - Clearance.MEASURING_ERROR_MM) {
        tell(c, "narrow in front", ahead, front, on);
      } else if (behind < rear - Clearance.MEASURING_ERROR_MM) {
        tell(c, "narrow behind", behind, rear, on);
      } else {
        on.upheld(
            "braces itself with straps of " + Amount.mm(ahead) + " and " + Amount.mm(behind),
            c.subject());
      }
    }
  }

  private static void tell(LaidConnector c, String fact, double width, double least, Judging on) {
    on.finding(c.name(), c.subject())
        .fact(fact)
        .measured(Amount.mm(width), Amount.atLeastMm(least))
        .remedy("Return to the usual breadths", c.usualLimbs())
        .done();
  }
}
