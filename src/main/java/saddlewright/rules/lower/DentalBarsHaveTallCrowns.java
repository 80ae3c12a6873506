package saddlewright.rules.lower;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import saddlewright.chart.ChartField;
import saddlewright.dentition.Tooth;
import saddlewright.design.ConnectorForm;
import saddlewright.rules.Amount;
import saddlewright.rules.Claim;
import saddlewright.rules.Judging;
import saddlewright.rules.LaidConnector;
import saddlewright.rules.Literature;
import saddlewright.rules.Quantity;
import saddlewright.rules.Rule;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;
import saddlewright.rules.framework.CrossArch;

/** A bar on the teeth has to find room between their edges and the gum. */
public final class DentalBarsHaveTallCrowns implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "dental-bars-have-tall-crowns",
          "A dental bar lies on crowns at least 8 mm tall.",
          Severity.SHOULD,
          Source.derived(
              "a dental bar is 4 mm high ("
                  + Literature.OWALL
                  + "); with room above it to the edge and below it to the margin that makes 8 mm"));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    double least = s.profile().limit(Quantity.DENTAL_BAR_CROWN);
    for (LaidConnector c : LaidConnector.all(s, ConnectorForm.DENTAL_BAR)) {
      List<Tooth> under = c.standing().stream().filter(t -> t.position() <= 4).toList();
      Optional<Tooth> lowest =
          under.stream()
              .filter(t -> s.chart().tooth(t).crownHeight().isPresent())
              .min(Comparator.comparingDouble(t -> height(s, t)));
      List<Tooth> unknown =
          under.stream().filter(t -> s.chart().tooth(t).crownHeight().isEmpty()).toList();
      if (lowest.isPresent() && height(s, lowest.get()) < least) {
        on.finding(c.name(), c.subject())
            .fact("short crown of " + lowest.get() + " under it")
            .measured(Amount.mm(height(s, lowest.get())), Amount.atLeastMm(least))
            .remedy(c.label(CrossArch.usualForm(s)), c.as(CrossArch.usualForm(s)))
            .done();
      } else if (!unknown.isEmpty()) {
        on.unanswered(ChartField.crownHeight(unknown), c.subject());
      } else if (lowest.isPresent()) {
        on.upheld(
            "finds crowns of " + Amount.mm(height(s, lowest.get())) + " and more", c.subject());
      }
    }
  }

  private static double height(Situation s, Tooth t) {
    return s.chart().tooth(t).crownHeight().orElseThrow();
  }
}
