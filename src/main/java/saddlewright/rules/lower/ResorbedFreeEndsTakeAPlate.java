package saddlewright.rules.lower;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import saddlewright.chart.ChartField;
import saddlewright.chart.SoftTissues;
import saddlewright.dentition.Arch;
import saddlewright.dentition.Side;
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

/** Where the ridges have gone the front teeth must help to hold the denture still. */
public final class ResorbedFreeEndsTakeAPlate implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "resorbed-free-ends-take-a-plate",
          "Free ends on both sides over resorbed ridges are joined by a plate rather"
              + " than a bar.",
          Severity.CONSIDER,
          Source.read(Literature.NORTH_AMERICAN_CARDS + "; " + Literature.MANDIBULAR_NOTES));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    if (s.arch() != Arch.LOWER || AreaPattern.of(s).freeEnds().size() < 2) {
      return;
    }
    Map<Side, SoftTissues.RidgeState> ridges = s.chart().softTissues().ridges();
    List<Side> sound =
        Stream.of(Side.values())
            .filter(x -> ridges.containsKey(x) && ridges.get(x) != SoftTissues.RidgeState.RESORBED)
            .toList();
    List<Side> unknown = Stream.of(Side.values()).filter(x -> !ridges.containsKey(x)).toList();
    for (LaidConnector c : LaidConnector.all(s)) {
      if (!sound.isEmpty()) {
        on.judged();
      } else if (c.is(ConnectorForm.LINGUAL_PLATE)) {
        if (unknown.isEmpty()) {
          on.upheld("braces the denture where both ridges are resorbed", c.subject());
        } else {
          on.judged();
        }
      } else if (unknown.isEmpty()) {
        on.finding(c.name(), c.subject())
            .fact("nothing braces the denture over flat ridges")
            .measured("both ridges resorbed", "a lingual plate against the front teeth")
            .remedy(c.label(ConnectorForm.LINGUAL_PLATE), c.as(ConnectorForm.LINGUAL_PLATE))
            .done();
      } else {
        unknown.forEach(side -> on.unanswered(ChartField.ridge(s.arch(), side), c.subject()));
      }
    }
  }
}
