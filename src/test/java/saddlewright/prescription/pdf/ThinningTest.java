package saddlewright.prescription.pdf;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import saddlewright.geometry.Path;
import saddlewright.geometry.Point;

class ThinningTest {
  private static List<Point> circle(double radius, int n) {
    List<Point> out = new ArrayList<>();
    for (int i = 0; i <= n; i++) {
      double t = 2 * Math.PI * i / n;
      out.add(new Point(radius * Math.cos(t), radius * Math.sin(t)));
    }
    return out;
  }

  /** A chord of sagitta s on a circle of radius r spans about sqrt(8 r s): 0.57 mm here. */
  @Test
  void a_circle_keeps_its_shape_with_fewer_points() {
    List<Point> all = circle(10, 2000);
    List<Point> few = Thinning.of(all, 0.004);
    assertThat(few.size()).isBetween(80, 260);
    Path thin = Path.through(few);
    assertThat(all).allSatisfy(p -> assertThat(thin.distanceTo(p)).isLessThan(0.0045));
  }

  @Test
  void a_straight_line_keeps_only_its_ends_and_corners_stay() {
    assertThat(
            Thinning.of(
                List.of(
                    new Point(0, 0),
                    new Point(1, 0),
                    new Point(2, 0),
                    new Point(3, 0),
                    new Point(3, 2)),
                0.004))
        .containsExactly(new Point(0, 0), new Point(3, 0), new Point(3, 2));
  }
}
