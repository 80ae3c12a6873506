package saddlewright.desktop.subject;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import saddlewright.design.Clasp;
import saddlewright.design.Component;
import saddlewright.design.MajorConnector;
import saddlewright.design.MinorConnector;
import saddlewright.design.Rest;
import saddlewright.design.Saddle;
import saddlewright.desktop.Words;
import saddlewright.layout.Laid;
import saddlewright.layout.Layout;
import saddlewright.layout.Measure;
import saddlewright.mechanics.IndirectRetention;

/** What can be measured of a laid-out component, in words. */
public final class Facts {
  private Facts() {}

  /** Such as "arm 14.2 mm", one fact each. */
  public static List<String> of(Laid laid) {
    List<String> out = new ArrayList<>();
    laid.measures().forEach((m, v) -> out.add(of(m, v)));
    return out;
  }

  /** The few facts that matter while a component is being placed. */
  public static List<String> chief(Laid laid, Layout layout) {
    List<String> out = new ArrayList<>();
    if (laid.component() instanceof Rest rest && rest.indirectRetainer()) {
      reach(layout, rest).ifPresent(mm -> out.add(Words.of("fact.reach", oneDecimal(mm))));
    }
    for (Measure m : chiefMeasures(laid.component())) {
      laid.measure(m).ifPresent(v -> out.add(of(m, v)));
    }
    return out;
  }

  /** Distance in mm beyond the clasp axis that it reaches least far past. */
  private static OptionalDouble reach(Layout layout, Rest rest) {
    return layout.design().stream(Saddle.class)
        .flatMap(s -> IndirectRetention.aboutClasps(layout, s).stream())
        .mapToDouble(r -> r.reach(rest))
        .min();
  }

  private static String oneDecimal(double mm) {
    return Words.mm(Math.round(mm * 10) / 10.0);
  }

  private static List<Measure> chiefMeasures(Component c) {
    if (c instanceof Clasp) {
      return List.of(Measure.ARM_LENGTH, Measure.UNDERCUT);
    }
    if (c instanceof MajorConnector) {
      return List.of(Measure.HEIGHT, Measure.MARGIN_CLEARANCE);
    }
    if (c instanceof MinorConnector) {
      return List.of(Measure.SPACING);
    }
    return c instanceof Saddle ? List.of(Measure.LENGTH) : List.of();
  }

  /** One fact. */
  public static String of(Measure measure, double value) {
    String number =
        switch (measure) {
          case ENCIRCLEMENT_DEGREES, CROSSING_DEGREES -> Math.round(value) + "°";
          case AREA_MM2 -> Math.round(value) + " mm²";
          case UNDERCUT -> Words.mm(value);
          default -> oneDecimal(value);
        };
    return Words.of(measure) + " " + number;
  }
}
