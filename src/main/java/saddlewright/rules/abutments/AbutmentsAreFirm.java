package saddlewright.rules.abutments;

import java.util.ArrayList;
import java.util.List;
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

/** A very loose tooth can neither carry nor hold a denture. */
public final class AbutmentsAreFirm implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "abutments-are-firm",
          "No rest or clasp is placed on a tooth of mobility above grade II; grade II is used with"
              + " caution.",
          Severity.MUST,
          Source.read("teaching notes on mouth preparation; " + Literature.ANKARA));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    double most = s.profile().limit(Quantity.MOBILITY);
    List<Burden> uncharted = new ArrayList<>();
    for (Burden b : Burden.all(s)) {
      Optional<Integer> grade = b.found(s).mobility();
      if (grade.isEmpty()) {
        uncharted.add(b);
      } else if (grade.get() >= most) {
        loose(s, b, grade.get(), most, on);
      } else {
        on.upheld("is firm enough to serve, mobility grade " + grade.get(), Subject.of(b.tooth()));
      }
    }
    Burden.ask(uncharted, ChartField::mobility, on);
  }

  private static void loose(Situation s, Burden b, int grade, double most, Judging on) {
    Draft d =
        on.finding(b.tooth().toString(), Subject.of(b.tooth()))
            .fact(
                grade > most
                    ? "too loose to serve as an abutment"
                    : "loose for an abutment; prefer a rest without a clasp, and plan its loss")
            .measured("mobility grade " + grade, "grade 1 at most")
            .weighing(grade > most ? Severity.MUST : Severity.SHOULD);
    if (grade > most) {
      d.remedy("Take rests and clasps off " + b.tooth(), Unburdened.of(b));
    }
    d.done();
  }
}
