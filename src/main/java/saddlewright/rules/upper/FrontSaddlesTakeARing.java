package saddlewright.rules.upper;

import java.util.Optional;
import saddlewright.classification.EdentulousArea;
import saddlewright.dentition.Arch;
import saddlewright.dentition.Tooth;
import saddlewright.design.ConnectorForm;
import saddlewright.rules.AreaPattern;
import saddlewright.rules.Claim;
import saddlewright.rules.Judging;
import saddlewright.rules.LaidConnector;
import saddlewright.rules.Literature;
import saddlewright.rules.Rule;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;

/** A strap across the middle of the palate does not reach a saddle in front. */
public final class FrontSaddlesTakeARing implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "front-saddles-take-a-ring",
          "A front saddle is joined by a ring, a horseshoe or a plate, not by a strap" + " or bar.",
          Severity.SHOULD,
          Source.read(Literature.MAXILLARY_NOTES + "; " + Literature.BRITISH_NOTES));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    Optional<EdentulousArea> front =
        AreaPattern.of(s).all().stream()
            .filter(a -> a.replaced().stream().anyMatch(Tooth::isIncisor))
            .findFirst();
    if (s.arch() != Arch.UPPER || front.isEmpty()) {
      return;
    }
    for (LaidConnector c : LaidConnector.all(s)) {
      if (UpperFreeEndsTakeABroadPlate.isNarrow(c)) {
        on.finding(c.name(), c.subject())
            .fact("does not take hold of the front saddle")
            .measured("front saddle " + front.get().span(), "a ring, horseshoe or plate")
            .remedy(c.label(ConnectorForm.PALATAL_RING), c.as(ConnectorForm.PALATAL_RING))
            .remedy(c.label(ConnectorForm.PALATAL_PLATE), c.as(ConnectorForm.PALATAL_PLATE))
            .done();
      } else {
        on.upheld("takes hold of the front saddle " + front.get().span(), c.subject());
      }
    }
  }
}
