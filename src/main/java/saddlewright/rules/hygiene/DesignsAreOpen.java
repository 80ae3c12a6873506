package saddlewright.rules.hygiene;

import java.util.List;
import saddlewright.design.MinorConnector;
import saddlewright.design.Subject;
import saddlewright.rules.Amount;
import saddlewright.rules.Claim;
import saddlewright.rules.Judging;
import saddlewright.rules.Literature;
import saddlewright.rules.Quantity;
import saddlewright.rules.Rule;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;

/** Each further strut is one more place that the patient has to clean. */
public final class DesignsAreOpen implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "designs-are-open",
          "A denture has no more minor connectors than its rests need.",
          Severity.CONSIDER,
          Source.read(Literature.OWALL));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    List<MinorConnector> struts = s.design().all(MinorConnector.class);
    double most = s.profile().limit(Quantity.MINOR_CONNECTORS);
    if (s.design().majorConnector().isEmpty()) {
      return;
    }
    if (struts.size() > most) {
      on.finding(s.arch().code() + " denture", Subject.of(s.arch()))
          .fact("many struts across the gums")
          .measured(Amount.of(struts.size(), "minor connector"), "at most " + Math.round(most))
          .done();
    } else {
      on.upheld(
          struts.isEmpty()
              ? "crosses the gums by no minor connector"
              : "crosses the gums with " + Amount.of(struts.size(), "minor connector") + " only",
          Subject.of(s.arch()));
    }
  }
}
