package saddlewright.rules.framework;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import saddlewright.design.Component;
import saddlewright.design.MinorConnector;
import saddlewright.design.Subject;
import saddlewright.geometry.Path;
import saddlewright.geometry.Point;
import saddlewright.layout.Laid;
import saddlewright.layout.Measure;
import saddlewright.rules.Amount;
import saddlewright.rules.Claim;
import saddlewright.rules.Clearance;
import saddlewright.rules.Finding;
import saddlewright.rules.Judging;
import saddlewright.rules.Literature;
import saddlewright.rules.Naming;
import saddlewright.rules.Quantity;
import saddlewright.rules.Rule;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;

/** Narrow windows between struts hold food and cannot be cleaned. */
public final class MinorConnectorsStandApart implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "minor-connectors-stand-apart",
          "Neighbouring minor connectors stand at least 5 mm apart.",
          Severity.SHOULD,
          Source.read(Literature.EXAM_NOTES + "; " + Literature.STRATTON));

  /** Struts that cross the margin this close to each other are one, as the layout takes them. */
  private static final double ONE_STRUT_MM = 1.5;

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    found(s).forEach(on::add);
  }

  private List<Finding> found(Situation s) {
    double least = s.profile().limit(Quantity.MINOR_SPACING);
    List<Laid> all =
        s.layout().all(MinorConnector.class).stream().filter(l -> !l.body().isEmpty()).toList();
    Map<String, Finding> out = new LinkedHashMap<>();
    for (Laid laid : all) {
      OptionalDouble window = laid.measure(Measure.SPACING);
      if (window.isPresent() && window.getAsDouble() < least - Clearance.MEASURING_ERROR_MM) {
        nearest(s, laid, all)
            .map(
                other ->
                    finding(s, laid.component(), other.component(), window.getAsDouble(), least))
            .ifPresent(f -> out.putIfAbsent(f.key(), f));
      }
    }
    return List.copyOf(out.values());
  }

  /** The strut that crosses the margin nearest to this one, unless the two run as one. */
  private static Optional<Laid> nearest(Situation s, Laid laid, List<Laid> all) {
    Point own = crossing(s, laid);
    return all.stream()
        .filter(o -> o != laid && crossing(s, o).distanceTo(own) > ONE_STRUT_MM)
        .min(Comparator.comparingDouble(o -> crossing(s, o).distanceTo(own)));
  }

  private static Point crossing(Situation s, Laid strut) {
    Path margin = s.form().lingualMargin();
    return strut
        .centreline()
        .map(c -> c.sampled(0.5))
        .orElse(List.of(s.form().tooth(strut.component().teeth().get(0)).centre()))
        .stream()
        .min(Comparator.comparingDouble(margin::distanceTo))
        .orElseThrow();
  }

  private Finding finding(
      Situation s, Component strut, Component other, double window, double least) {
    return finding(Naming.of(strut), Subject.of(s.arch(), strut), Subject.of(s.arch(), other))
        .fact("narrow window to the " + Naming.of(other))
        .measured(Amount.mm(window), Amount.atLeastMm(least))
        .done();
  }
}
