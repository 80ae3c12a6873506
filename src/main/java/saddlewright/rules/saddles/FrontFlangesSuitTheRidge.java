package saddlewright.rules.saddles;

import java.util.List;
import java.util.Map;
import saddlewright.chart.ChartField;
import saddlewright.chart.SoftTissues;
import saddlewright.chart.ToothStatus;
import saddlewright.dentition.Side;
import saddlewright.dentition.Tooth;
import saddlewright.design.DesignEdit;
import saddlewright.design.Saddle;
import saddlewright.design.Subject;
import saddlewright.rules.Claim;
import saddlewright.rules.Judging;
import saddlewright.rules.Literature;
import saddlewright.rules.Naming;
import saddlewright.rules.Rule;
import saddlewright.rules.SaddleTeeth;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;

/**
 * Where bone is lost a flange fills out the lip; teeth set on a sunken ridge look long and fall in.
 */
public final class FrontFlangesSuitTheRidge implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "front-flanges-suit-the-ridge",
          "A front saddle without a flange lies on a full ridge.",
          Severity.SHOULD,
          Source.read(Literature.BRITISH_NOTES));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    for (Saddle saddle : s.design().all(Saddle.class)) {
      List<Tooth> front = SaddleTeeth.of(s, saddle).stream().filter(Tooth::isAnterior).toList();
      if (!front.isEmpty()) {
        weigh(s, saddle, front, on);
      }
    }
  }

  private static void weigh(Situation s, Saddle saddle, List<Tooth> front, Judging on) {
    Subject subject = Subject.of(s.arch(), saddle);
    Map<Side, SoftTissues.RidgeState> ridges = s.chart().softTissues().ridges();
    boolean immediate =
        front.stream().anyMatch(t -> s.chart().tooth(t).status() == ToothStatus.TO_BE_EXTRACTED);
    List<Side> sides = front.stream().map(Tooth::side).distinct().toList();
    boolean lost =
        sides.stream()
            .map(ridges::get)
            .anyMatch(
                r -> r == SoftTissues.RidgeState.RESORBED || r == SoftTissues.RidgeState.FLABBY);
    if (saddle.flange() != Saddle.Flange.GUM_FITTED) {
      if (lost) {
        on.upheld("fills out the lip where bone was lost", subject);
      } else {
        on.judged();
      }
    } else if (immediate) {
      on.judged();
    } else if (lost) {
      on.finding(Naming.of(saddle), subject)
          .fact("its front teeth are set on a ridge that has sunk")
          .measured("no flange", "a flange")
          .remedy("Give it a full flange", flange(saddle, Saddle.Flange.FULL))
          .remedy("Give it a part flange", flange(saddle, Saddle.Flange.PART))
          .done();
    } else {
      List<Side> open = sides.stream().filter(x -> !ridges.containsKey(x)).toList();
      open.forEach(x -> on.unanswered(ChartField.ridge(s.arch(), x), subject));
      if (open.isEmpty()) {
        on.upheld("lies on a full ridge and needs no flange", subject);
      }
    }
  }

  private static DesignEdit flange(Saddle saddle, Saddle.Flange flange) {
    return new DesignEdit.Change(saddle.withFlange(flange));
  }
}
