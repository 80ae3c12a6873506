package saddlewright.rules.abutments;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import saddlewright.chart.ChartField;
import saddlewright.design.Subject;
import saddlewright.rules.Claim;
import saddlewright.rules.Draft;
import saddlewright.rules.Judging;
import saddlewright.rules.Literature;
import saddlewright.rules.Quantity;
import saddlewright.rules.Rule;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;

/** A crown longer than its root is a lever that works the tooth loose. */
public final class AbutmentsHaveEnoughRoot implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "abutments-have-enough-root",
          "An abutment has more root in bone than crown; with twice as much crown as root it is no"
              + " abutment.",
          Severity.MUST,
          Source.read(Literature.ANKARA));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    double most = s.profile().limit(Quantity.CROWN_ROOT_MOST);
    double good = s.profile().limit(Quantity.CROWN_ROOT);
    List<Burden> uncharted = new ArrayList<>();
    for (Burden b : Burden.all(s)) {
      Optional<Double> ratio = b.found(s).crownRoot();
      // Either figure is read off the same radiograph; one of them will do.
      if (ratio.isEmpty() && b.found(s).boneSupportPercent().isEmpty()) {
        uncharted.add(b);
      } else if (ratio.isEmpty()) {
        on.judged();
      } else if (ratio.get() < good) {
        on.upheld("has root enough, crown to root " + shown(ratio.get()), Subject.of(b.tooth()));
      } else {
        boolean none = ratio.get() >= most;
        Draft d =
            on.finding(b.tooth().toString(), Subject.of(b.tooth()))
                .fact(
                    none
                        ? "too little root to serve as an abutment"
                        : "little root for an abutment; share its load with a neighbour")
                .measured("crown to root " + shown(ratio.get()), "less than " + shown(good))
                .weighing(none ? Severity.MUST : Severity.SHOULD);
        if (none) {
          d.remedy("Take rests and clasps off " + b.tooth(), Unburdened.of(b));
        }
        d.done();
      }
    }
    Burden.ask(uncharted, ChartField::crownRoot, on);
  }

  private static String shown(double ratio) {
    return String.format(Locale.ROOT, "%.1f", ratio);
  }
}
