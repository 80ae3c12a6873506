package saddlewright.layout;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import saddlewright.geometry.Outline;
import saddlewright.geometry.Path;
import saddlewright.geometry.Point;
import saddlewright.geometry.Region;
import saddlewright.geometry.Vector;

/**
 * The area of an arm drawn along a curve, its width changing evenly, square at its root and rounded
 * at its end.
 */
final class ArmShape {
  private static final double STEP_MM = 0.4;
  private static final int NOSE = 4;

  private ArmShape() {}

  /** Widths in mm at the start and the end of the curve. */
  static Region along(Path path, double atStart, double atEnd) {
    return outline(path, atStart, atEnd).toRegion();
  }

  private static Outline outline(Path path, double atStart, double atEnd) {
    List<Point> left = new ArrayList<>();
    List<Point> right = new ArrayList<>();
    double length = path.length();
    int n = Math.max(2, (int) Math.ceil(length / STEP_MM));
    Point before = path.at(0);
    Point here = before;
    Vector along = path.tangentAt(0);
    for (int i = 0; i <= n; i++) {
      double share = (double) i / n;
      Point next = path.at(Math.min(1, (i + 1.0) / n) * length);
      if (before.distanceTo(next) > 1e-6) {
        along = before.to(next).unit();
      }
      double half = (atStart + (atEnd - atStart) * share) / 2;
      Vector side = along.quarterTurn().times(half);
      left.add(here.plus(side));
      right.add(here.minus(side));
      before = here;
      here = next;
    }
    List<Point> ring = new ArrayList<>(left);
    Vector ahead = path.tangentAt(length);
    for (int i = 1; i < 2 * NOSE; i++) {
      Vector spoke = ahead.turned(Math.PI / 2 - Math.PI * i / (2 * NOSE));
      ring.add(path.end().plus(spoke.times(atEnd / 2)));
    }
    Collections.reverse(right);
    ring.addAll(right);
    return Outline.of(ring);
  }
}
