package saddlewright.rules.placing;

import java.util.ArrayList;
import java.util.List;
import saddlewright.dentition.Tooth;
import saddlewright.design.Clasp;
import saddlewright.design.Rest;
import saddlewright.design.Subject;
import saddlewright.rules.Claim;
import saddlewright.rules.Finding;
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
    found(s).forEach(on::add);
  }

  private List<Finding> found(Situation s) {
    List<Finding> out = new ArrayList<>();
    double most = s.profile().limit(Quantity.MOBILITY);
    for (Tooth t : s.chart().standing()) {
      int grade = s.chart().tooth(t).mobility().orElse(0);
      boolean used =
          s.design().components().stream()
              .anyMatch(c -> (c instanceof Rest || c instanceof Clasp) && c.teeth().contains(t));
      if (used && grade >= most) {
        out.add(
            finding(t.toString(), Subject.of(t))
                .fact(
                    grade > most
                        ? "too loose to serve as an abutment"
                        : "loose for an abutment; prefer a rest without a clasp, and plan its loss")
                .measured("mobility grade " + grade, "grade I or firmer")
                .weighing(grade > most ? Severity.MUST : Severity.SHOULD)
                .done());
      }
    }
    return out;
  }
}
