package saddlewright.rules.abutments;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import saddlewright.chart.ChartField;
import saddlewright.design.Subject;
import saddlewright.rules.Claim;
import saddlewright.rules.Judging;
import saddlewright.rules.Quantity;
import saddlewright.rules.Rule;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;

/** Root without bone about it carries nothing. */
public final class AbutmentsHaveEnoughBone implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "abutments-have-enough-bone",
          "A tooth that bears a rest or a clasp keeps at least half of its bone.",
          Severity.SHOULD,
          Source.fromMemory("common teaching on periodontally reduced abutments"));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    double least = s.profile().limit(Quantity.BONE_SUPPORT);
    List<Burden> uncharted = new ArrayList<>();
    for (Burden b : Burden.all(s)) {
      Optional<Double> percent = b.found(s).boneSupportPercent();
      // Either figure is read off the same radiograph; one of them will do.
      if (percent.isEmpty() && b.found(s).crownRoot().isEmpty()) {
        uncharted.add(b);
      } else if (percent.isEmpty()) {
        on.judged();
      } else if (percent.get() >= least) {
        on.upheld(
            String.format(Locale.ROOT, "keeps %.0f per cent of its bone", percent.get()),
            Subject.of(b.tooth()));
      } else {
        on.finding(b.tooth().toString(), Subject.of(b.tooth()))
            .fact(
                b.isClasped()
                    ? "little bone for an abutment; prefer a rest without a clasp, and share"
                        + " its load"
                    : "little bone for a tooth that carries a rest; share its load")
            .measured(
                String.format(Locale.ROOT, "%.0f per cent of its bone", percent.get()),
                String.format(Locale.ROOT, "at least %.0f per cent", least))
            .done();
      }
    }
    Burden.ask(uncharted, ChartField::boneSupport, on);
  }
}
