package saddlewright.rules.lower;

import java.util.List;
import java.util.Optional;
import saddlewright.chart.ChartField;
import saddlewright.dentition.Tooth;
import saddlewright.design.ConnectorForm;
import saddlewright.rules.Claim;
import saddlewright.rules.Judging;
import saddlewright.rules.LaidConnector;
import saddlewright.rules.Literature;
import saddlewright.rules.Rule;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;
import saddlewright.rules.WeakTeeth;

/** A plate holds loose lower incisors together and takes others in when they go. */
public final class WeakIncisorsTakeAPlate implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "weak-incisors-take-a-plate",
          "Weak or doubtful lower incisors are backed by a plate, to which teeth can be"
              + " added.",
          Severity.CONSIDER,
          Source.read(Literature.NORTH_AMERICAN_CARDS + "; " + Literature.RADNAI));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    for (LaidConnector c : LaidConnector.all(s)) {
      boolean bar = BarObstacles.isInSulcus(c);
      if (!bar && !c.is(ConnectorForm.LINGUAL_PLATE)) {
        continue;
      }
      List<Tooth> incisors = c.standing().stream().filter(Tooth::isIncisor).toList();
      Optional<Tooth> weak =
          incisors.stream()
              .filter(t -> WeakTeeth.isWeak(s, t) || s.chart().tooth(t).doubtful())
              .findFirst();
      if (weak.isPresent() && bar) {
        on.finding(c.name(), c.subject())
            .fact("weak " + weak.get() + " could not be added to it")
            .measured("a bar", "a lingual plate")
            .remedy(c.label(ConnectorForm.LINGUAL_PLATE), c.as(ConnectorForm.LINGUAL_PLATE))
            .done();
      } else if (weak.isPresent()) {
        on.upheld("backs " + weak.get() + " and can take it when it is lost", c.subject());
      } else if (bar && !WeakTeeth.unknown(s, incisors).isEmpty()) {
        on.unanswered(ChartField.mobility(WeakTeeth.unknown(s, incisors)), c.subject());
      } else {
        on.judged();
      }
    }
  }
}
