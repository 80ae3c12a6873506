package saddlewright.rules.upper;

import java.util.Optional;
import saddlewright.design.ConnectorForm;
import saddlewright.layout.PalatalLimbs;
import saddlewright.rules.Amount;
import saddlewright.rules.Claim;
import saddlewright.rules.Clearance;
import saddlewright.rules.Draft;
import saddlewright.rules.Judging;
import saddlewright.rules.LaidConnector;
import saddlewright.rules.Literature;
import saddlewright.rules.Quantity;
import saddlewright.rules.Rule;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;

/** Between opening and gum the palate is narrow, and metal and clearance compete for it. */
public final class SideLimbsAreBroadEnough implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "side-limbs-are-broad-enough",
          "The side limbs of a ring are at least 7 mm broad, those of a horseshoe 6 mm.",
          Severity.SHOULD,
          Source.read(Literature.MAXILLARY_NOTES));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  /**
   * What a palate 22 mm wide between the clearances leaves beside an opening 12 mm wide (derived).
   */
  private static final double NARROW_PALATE_MM = 5;

  @Override
  public void weigh(Situation s, Judging on) {
    Optional<PalatalLimbs> limbs = s.layout().palatalLimbs();
    for (LaidConnector c :
        LaidConnector.all(s, ConnectorForm.PALATAL_RING, ConnectorForm.HORSESHOE)) {
      if (limbs.isEmpty() || limbs.get().lateral().isEmpty()) {
        continue;
      }
      boolean ring = c.is(ConnectorForm.PALATAL_RING);
      double least = s.profile().limit(ring ? Quantity.RING_SIDE_LIMB : Quantity.HORSESHOE_LIMB);
      double width = limbs.get().lateral().getAsDouble();
      if (width < least - Clearance.MEASURING_ERROR_MM) {
        Draft d =
            on.finding(c.name(), c.subject())
                .fact("narrow limb beside the opening")
                .measured(Amount.mm(width), Amount.atLeastMm(least))
                .weighing(width < NARROW_PALATE_MM ? Severity.SHOULD : Severity.CONSIDER);
        if (!PalatalToriAreSpared.isCharted(s)) {
          d.remedy(c.label(ConnectorForm.PALATAL_PLATE), c.as(ConnectorForm.PALATAL_PLATE));
        }
        d.done();
      } else {
        on.upheld("has side limbs of " + Amount.mm(width), c.subject());
      }
    }
  }
}
