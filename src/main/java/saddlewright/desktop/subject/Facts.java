package saddlewright.desktop.subject;

import java.util.ArrayList;
import java.util.List;
import saddlewright.desktop.Words;
import saddlewright.layout.Laid;
import saddlewright.layout.Measure;

/** What can be measured of a laid-out component, in words. */
public final class Facts {
  private Facts() {}

  /** Such as "arm 14.2 mm", one fact each. */
  public static List<String> of(Laid laid) {
    List<String> out = new ArrayList<>();
    laid.measures().forEach((m, v) -> out.add(of(m, v)));
    return out;
  }

  /** One fact. */
  public static String of(Measure measure, double value) {
    String number =
        switch (measure) {
          case ENCIRCLEMENT_DEGREES, CROSSING_DEGREES -> Math.round(value) + "°";
          case AREA_MM2 -> Math.round(value) + " mm²";
          case UNDERCUT -> Words.mm(value);
          default -> Words.mm(Math.round(value * 10) / 10.0);
        };
    return Words.of(measure) + " " + number;
  }
}
