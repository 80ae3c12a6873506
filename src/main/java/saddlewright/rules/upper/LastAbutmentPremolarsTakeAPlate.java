package saddlewright.rules.upper;

import java.util.List;
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

/** Behind a premolar or canine the saddle is so long that the palate must help to carry it. */
public final class LastAbutmentPremolarsTakeAPlate implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "last-abutment-premolars-take-a-plate",
          "Where the last tooth in front of an upper free-end saddle is a premolar or"
              + " canine, a palatal plate is used.",
          Severity.SHOULD,
          Source.read(Literature.EXAM_NOTES));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    AreaPattern areas = AreaPattern.of(s);
    List<Tooth> last =
        areas.freeEnds().stream()
            .flatMap(a -> areas.abutment(a).stream())
            .filter(t -> t.position() <= 5)
            .toList();
    if (s.arch() != Arch.UPPER || last.isEmpty()) {
      return;
    }
    for (LaidConnector c : LaidConnector.all(s)) {
      boolean spoken =
          UpperFreeEndsTakeABroadPlate.isNarrow(c)
              && UpperFreeEndsTakeABroadPlate.isHeavy(s, areas.freeEnds());
      if (c.is(ConnectorForm.PALATAL_PLATE)) {
        on.upheld("covers the palate behind " + last.get(0) + ", the last tooth", c.subject());
      } else if (spoken || PalatalToriAreSpared.isCharted(s)) {
        on.judged();
      } else {
        on.finding(c.name(), c.subject())
            .fact("long free-end saddle behind a slender abutment")
            .measured("last tooth " + last.get(0), "a palatal plate behind a premolar or canine")
            .weighing(c.is(ConnectorForm.PALATAL_RING) ? Severity.CONSIDER : Severity.SHOULD)
            .remedy(c.label(ConnectorForm.PALATAL_PLATE), c.as(ConnectorForm.PALATAL_PLATE))
            .done();
      }
    }
  }
}
