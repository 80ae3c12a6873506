package saddlewright.rules.hygiene;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import saddlewright.dentition.Span;
import saddlewright.design.ConnectorForm;
import saddlewright.design.DesignEdit;
import saddlewright.design.MajorConnector;
import saddlewright.design.MinorConnector;
import saddlewright.design.Plating;
import saddlewright.design.Subject;
import saddlewright.geometry.Path;
import saddlewright.geometry.Point;
import saddlewright.layout.Laid;
import saddlewright.layout.Measure;
import saddlewright.rules.Amount;
import saddlewright.rules.Claim;
import saddlewright.rules.Clearance;
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

  @Override
  public Claim stated() {
    return CLAIM;
  }

  /** Struts that cross the margin this close to each other are one, as the layout takes them. */
  private static final double ONE_STRUT_MM = 1.5;

  /** A strut and where it crosses the margin. */
  private record Crossing(MinorConnector strut, Laid laid, Point at) {}

  @Override
  public void weigh(Situation s, Judging on) {
    double least = s.profile().limit(Quantity.MINOR_SPACING);
    List<Laid> all =
        s.layout().all(MinorConnector.class).stream().filter(l -> !l.body().isEmpty()).toList();
    List<Crossing> crossings = null;
    Set<String> told = new HashSet<>();
    for (Laid laid : all) {
      OptionalDouble window = laid.measure(Measure.SPACING);
      if (window.isEmpty()) {
        continue;
      }
      if (window.getAsDouble() >= least - Clearance.MEASURING_ERROR_MM) {
        on.upheld(
            "leaves a window of " + Amount.mm(window.getAsDouble()) + " to the next",
            Subject.of(s.arch(), laid.component()));
        continue;
      }
      crossings = crossings == null ? crossings(s, all) : crossings;
      Optional<Crossing> other = nearest(laid, crossings);
      if (other.isPresent()) {
        MinorConnector one = (MinorConnector) laid.component();
        MinorConnector two = other.get().strut();
        if (isClosed(s, one, two)) {
          on.judged();
        } else if (told.add(pair(one, two))) {
          tell(s, one, two, window.getAsDouble(), least, on);
        }
      }
    }
  }

  private static void tell(
      Situation s,
      MinorConnector one,
      MinorConnector two,
      double window,
      double least,
      Judging on) {
    on.finding(Naming.of(one), Subject.of(s.arch(), one), Subject.of(s.arch(), two))
        .fact("narrow window to the " + Naming.of(two))
        .measured(Amount.mm(window), Amount.atLeastMm(least))
        .remedy(
            "Close the window with plating",
            new DesignEdit.Place(
                new Plating(s.design().freshId("plating"), Span.of(one.tooth(), two.tooth()))))
        .done();
  }

  private static boolean isClosed(Situation s, MinorConnector one, MinorConnector two) {
    return s.design().stream(Plating.class)
            .anyMatch(p -> p.span().contains(one.tooth()) && p.span().contains(two.tooth()))
        || s.design().stream(MajorConnector.class)
            .filter(m -> m.form() == ConnectorForm.LINGUAL_PLATE)
            .anyMatch(m -> m.span().contains(one.tooth()) && m.span().contains(two.tooth()));
  }

  private static String pair(MinorConnector one, MinorConnector two) {
    String a = one.id().value();
    String b = two.id().value();
    return a.compareTo(b) < 0 ? a + "+" + b : b + "+" + a;
  }

  private static List<Crossing> crossings(Situation s, List<Laid> all) {
    Path margin = s.form().lingualMargin();
    List<Crossing> out = new ArrayList<>();
    for (Laid l : all) {
      List<Point> way =
          l.centreline()
              .map(c -> c.sampled(0.5))
              .orElse(List.of(s.form().tooth(l.component().teeth().get(0)).centre()));
      Point at = way.stream().min(Comparator.comparingDouble(margin::distanceTo)).orElseThrow();
      out.add(new Crossing((MinorConnector) l.component(), l, at));
    }
    return out;
  }

  /** The strut that crosses the margin nearest to this one, unless the two run as one. */
  private static Optional<Crossing> nearest(Laid laid, List<Crossing> all) {
    Point own =
        all.stream().filter(c -> c.laid() == laid).map(Crossing::at).findFirst().orElseThrow();
    return all.stream()
        .filter(c -> c.laid() != laid && c.at().distanceTo(own) > ONE_STRUT_MM)
        .min(Comparator.comparingDouble(c -> c.at().distanceTo(own)));
  }
}
