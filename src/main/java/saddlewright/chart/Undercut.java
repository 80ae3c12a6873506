package saddlewright.chart;

import java.util.Optional;

/**
 * An undercut charted on the survey.
 *
 * @param depth horizontal depth in millimetres where the tip would lie
 * @param height height of that place above the gingival margin in millimetres, when measured
 */
public record Undercut(double depth, Optional<Double> height) {
  public Undercut {
    Measure.refuseOutside("undercut depth", depth, 0, 5);
    height.ifPresent(h -> Measure.refuseOutside("undercut height", h, 0, 15));
  }

  public static Undercut of(double depth) {
    return new Undercut(depth, Optional.empty());
  }
}
