package saddlewright.rules.upper;

import java.util.List;
import saddlewright.classification.EdentulousArea;
import saddlewright.dentition.Arch;
import saddlewright.design.ConnectorForm;
import saddlewright.rules.Amount;
import saddlewright.rules.AreaPattern;
import saddlewright.rules.Claim;
import saddlewright.rules.Draft;
import saddlewright.rules.Judging;
import saddlewright.rules.LaidConnector;
import saddlewright.rules.Literature;
import saddlewright.rules.Quantity;
import saddlewright.rules.Rule;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;

/** Free-end saddles load the palate, and a strap gives them too little of it. */
public final class UpperFreeEndsTakeABroadPlate implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "upper-free-ends-take-a-broad-plate",
          "Upper free-end saddles on both sides, or a long one, are joined by a plate"
              + " or a ring and not by a strap or bar.",
          Severity.SHOULD,
          Source.read(Literature.EXAM_NOTES + "; " + Literature.MAXILLARY_NOTES));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    AreaPattern areas = AreaPattern.of(s);
    List<EdentulousArea> free = areas.freeEnds();
    if (s.arch() != Arch.UPPER || free.isEmpty()) {
      return;
    }
    for (LaidConnector c : LaidConnector.all(s)) {
      if (c.is(ConnectorForm.PALATAL_PLATE, ConnectorForm.PALATAL_RING)) {
        on.upheld("shares the load of free-end saddles with the palate", c.subject());
      } else if (isNarrow(c) && isHeavy(s, free)) {
        Draft d =
            on.finding(c.name(), c.subject())
                .fact("too little palate is covered to share the load of free-end saddles")
                .measured(words(free), "a palatal plate or ring");
        if (!PalatalToriAreSpared.isCharted(s)) {
          d.remedy(c.label(ConnectorForm.PALATAL_PLATE), c.as(ConnectorForm.PALATAL_PLATE));
        }
        d.remedy(c.label(ConnectorForm.PALATAL_RING), c.as(ConnectorForm.PALATAL_RING)).done();
      } else {
        on.judged();
      }
    }
  }

  /** Whether these saddles ask for more of the palate than a strap covers. */
  static boolean isHeavy(Situation s, List<EdentulousArea> free) {
    return free.size() > 1
        || free.get(0).replaced().size() >= s.profile().limit(Quantity.LONG_FREE_END);
  }

  static boolean isNarrow(LaidConnector c) {
    return c.is(ConnectorForm.PALATAL_STRAP, ConnectorForm.PALATAL_BAR);
  }

  private static String words(List<EdentulousArea> free) {
    int longest = free.stream().mapToInt(a -> a.replaced().size()).max().orElse(0);
    return Amount.of(free.size(), "free-end saddle")
        + (free.size() > 1 ? " of up to " : " of ")
        + (longest == 1 ? "1 tooth" : longest + " teeth");
  }
}
