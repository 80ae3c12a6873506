package saddlewright.mechanics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import saddlewright.geometry.Point;

/** Axes by hand, millimetres; x to the viewer's right, y from the incisors backwards. */
class ClaspAxisTest {
  private static final Point RIGHT = Point.of(-20, 20);
  private static final Point LEFT = Point.of(20, 20);

  @Test
  void distance_from_a_line_by_hand() {
    // Through (0,0) and (3,4): e = (0.6, 0.8); P = (5, 0): d = 0.6*0 - 0.8*5 = -4.
    RotationAxis axis = new RotationAxis(Point.ORIGIN, Point.of(3, 4));
    assertThat(axis.distanceTo(Point.of(5, 0))).isCloseTo(-4, within(1e-12));
    // A point on the other side, (0, 5): d = 0.6*5 = 3; seen from the first it lies 3 mm beyond.
    assertThat(axis.beyond(Point.of(0, 5), Point.of(5, 0))).isCloseTo(3, within(1e-12));
    assertThat(axis.beyond(Point.of(5, 0), Point.of(5, 0))).isCloseTo(-4, within(1e-12));
  }

  @Test
  void two_tips_make_the_axis_of_a_class_one() {
    RotationAxis axis = ClaspAxis.of(List.of(RIGHT, LEFT), List.of(Point.of(24, 45))).orElseThrow();
    assertThat(Math.abs(axis.distanceTo(Point.of(24, 45)))).isCloseTo(25, within(1e-12));
    assertThat(axis.beyond(Point.of(14, 8), Point.of(24, 45))).isCloseTo(12, within(1e-12));
  }

  @Test
  void of_three_tips_the_edge_that_faces_the_load_counts() {
    // Class II, load on the left behind: the tip at (-24, 40) and the left one face it; the tip at
    // (-16, 10) lies behind that edge and cannot hold it.
    Point back = Point.of(-24, 40);
    Point front = Point.of(-16, 10);
    RotationAxis axis =
        ClaspAxis.of(List.of(back, front, LEFT), List.of(Point.of(24, 45))).orElseThrow();
    assertThat(List.of(axis.from(), axis.to())).containsExactlyInAnyOrder(back, LEFT);
  }

  @Test
  void a_load_within_the_tips_has_no_axis() {
    List<Point> tips = List.of(RIGHT, LEFT, Point.of(22, 40), Point.of(-22, 40));
    assertThat(ClaspAxis.of(tips, List.of(Point.of(0, 30)))).isEmpty();
  }

  @Test
  void one_tip_makes_no_axis() {
    assertThat(ClaspAxis.of(List.of(RIGHT), List.of(Point.of(24, 45)))).isEmpty();
    assertThat(ClaspAxis.of(List.of(RIGHT, RIGHT), List.of(Point.of(24, 45)))).isEmpty();
  }

  @Test
  void a_saddle_in_front_has_its_axis_in_front() {
    List<Point> tips = List.of(RIGHT, LEFT, Point.of(22, 40), Point.of(-22, 40));
    RotationAxis axis = ClaspAxis.of(tips, List.of(Point.of(0, 1))).orElseThrow();
    assertThat(List.of(axis.from(), axis.to())).containsExactlyInAnyOrder(RIGHT, LEFT);
  }

  @Test
  void the_support_axis_joins_the_rearmost_seats_of_the_two_sides() {
    RotationAxis axis =
        SupportAxis.of(List.of(Point.of(-14, 8), RIGHT, Point.of(14, 8), Point.of(24, 42)))
            .orElseThrow();
    assertThat(axis.from()).isEqualTo(RIGHT);
    assertThat(axis.to()).isEqualTo(Point.of(24, 42));
    assertThat(SupportAxis.of(List.of(RIGHT))).isEmpty();
  }
}
