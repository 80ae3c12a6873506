package saddlewright.rules.upper;

import java.util.List;
import java.util.Optional;
import saddlewright.chart.ChartField;
import saddlewright.dentition.Arch;
import saddlewright.dentition.Tooth;
import saddlewright.design.ConnectorForm;
import saddlewright.design.ConnectorShape;
import saddlewright.design.DesignEdit;
import saddlewright.design.MajorConnector;
import saddlewright.layout.PalatalLimbs;
import saddlewright.rules.Amount;
import saddlewright.rules.AreaPattern;
import saddlewright.rules.Claim;
import saddlewright.rules.Judging;
import saddlewright.rules.LaidConnector;
import saddlewright.rules.Literature;
import saddlewright.rules.Quantity;
import saddlewright.rules.Rule;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;
import saddlewright.rules.WeakTeeth;

/** Few or loose front teeth can neither carry nor brace two free-end saddles. */
public final class WeakFrontTeethTakeACompletePalate implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "weak-front-teeth-take-a-complete-palate",
          "With free ends on both sides and front teeth that are few or weak, the whole"
              + " hard palate is covered.",
          Severity.SHOULD,
          Source.read(Literature.ANKARA));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    if (s.arch() != Arch.UPPER || AreaPattern.of(s).freeEnds().size() < 2) {
      return;
    }
    Optional<LaidConnector> connector = LaidConnector.all(s).stream().findFirst();
    Optional<PalatalLimbs> limbs = s.layout().palatalLimbs();
    if (connector.isEmpty() || limbs.isEmpty()) {
      return;
    }
    LaidConnector c = connector.get();
    List<Tooth> front = s.chart().where(t -> t.isAnterior() && s.chart().stands(t));
    long incisors = front.stream().filter(Tooth::isIncisor).count();
    List<Tooth> weak = front.stream().filter(t -> WeakTeeth.isWeak(s, t)).toList();
    boolean called = incisors <= 2 || !weak.isEmpty();
    boolean complete =
        c.is(ConnectorForm.PALATAL_PLATE)
            && limbs.get().beforeSoftPalate() <= s.profile().limit(Quantity.COMPLETE_PALATE);
    if (called && complete) {
      on.upheld("covers the whole palate to spare the front teeth", c.subject());
    } else if (called) {
      double soft = limbs.get().rearBorder() + limbs.get().beforeSoftPalate();
      on.finding(c.name(), c.subject())
          .fact("leaves support to front teeth that are few or weak")
          .measured(
              incisors <= 2
                  ? Amount.of(incisors, "incisor") + " standing"
                  : "weak front tooth " + weak.get(0),
              "a plate over the whole hard palate")
          .remedy(
              "Cover the whole hard palate",
              new DesignEdit.Change(
                  MajorConnector.of(
                          c.connector().id(), ConnectorForm.PALATAL_PLATE, c.connector().span())
                      .withShape(
                          ConnectorShape.DEFAULT.withBorders(
                              Optional.empty(), Optional.of(soft - BEFORE_SOFT_PALATE_MM)))))
          .done();
    } else if (!complete && !WeakTeeth.unknown(s, front).isEmpty()) {
      on.unanswered(ChartField.mobility(WeakTeeth.unknown(s, front)), c.subject());
    } else {
      on.judged();
    }
  }

  /** Where the rear border is put: this far in front of the soft palate. */
  private static final double BEFORE_SOFT_PALATE_MM = 2;
}
