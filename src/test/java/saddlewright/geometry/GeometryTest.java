package saddlewright.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

/** Geometry against closed forms of Euclid: lengths, areas and distances of circles and squares. */
class GeometryTest {
  private static Outline circle(double radius) {
    List<Point> knots = new ArrayList<>();
    for (int i = 0; i < 36; i++) {
      knots.add(Point.ORIGIN.plus(Vector.atAngle(Math.PI * i / 18).times(radius)));
    }
    return Outline.smooth(knots);
  }

  private static Outline square(double x, double y, double side) {
    return Outline.of(
        List.of(
            Point.of(x, y),
            Point.of(x + side, y),
            Point.of(x + side, y + side),
            Point.of(x, y + side)));
  }

  @Test
  void a_smooth_circle_has_the_area_and_length_of_a_circle() {
    assertThat(circle(5).area()).isCloseTo(Math.PI * 25, within(0.05));
    assertThat(circle(5).toPath().length()).isCloseTo(2 * Math.PI * 5, within(0.02));
  }

  @Test
  void every_point_of_a_sampled_circle_lies_within_two_hundredths_of_it() {
    for (Point p : circle(5).points()) {
      assertThat(p.distanceTo(Point.ORIGIN)).isCloseTo(5, within(0.02));
    }
  }

  @Test
  void a_ribbon_tapers_from_one_width_to_the_other() {
    // Trapezium: (1.4 + 0.6) / 2 × 10 = 10 mm².
    Outline ribbon = Path.of(Point.of(0, 0), Point.of(10, 0)).ribbon(1.4, 0.6);
    assertThat(ribbon.area()).isCloseTo(10, within(1e-6));
  }

  @Test
  void union_and_difference_of_two_squares() {
    Region a = square(0, 0, 2).toRegion();
    Region b = square(1, 0, 2).toRegion();
    assertThat(a.plus(b).area()).isCloseTo(6, within(1e-9));
    assertThat(a.minus(b).area()).isCloseTo(2, within(1e-9));
    assertThat(a.intersection(b).area()).isCloseTo(2, within(1e-9));
    assertThat(a.distanceTo(square(5, 0, 1).toRegion())).isCloseTo(3, within(1e-9));
  }

  @Test
  void a_fillet_fills_inner_corners_only() {
    Region l = square(0, 0, 10).toRegion().minus(square(5, 5, 6).toRegion());
    // A fillet of radius 1 in one right angle adds 1 − π/4 = 0.215 mm².
    assertThat(l.filleted(1).area() - l.area()).isCloseTo(1 - Math.PI / 4, within(0.02));
  }

  @Test
  void a_path_is_cut_where_it_enters_a_region() {
    List<Path> in = square(0, 0, 2).toRegion().inside(Path.of(Point.of(-1, 1), Point.of(5, 1)));
    assertThat(in).hasSize(1);
    assertThat(in.get(0).length()).isCloseTo(2, within(1e-9));
  }

  @Test
  void refuses_what_is_no_number() {
    assertThatThrownBy(() -> Point.of(Double.NaN, 0)).hasMessageContaining("finite");
  }

  @Property
  void a_transform_followed_by_its_inverse_changes_nothing(
      @ForAll @DoubleRange(min = -3, max = 3) double turn,
      @ForAll @DoubleRange(min = -90, max = 90) double x,
      @ForAll @DoubleRange(min = -90, max = 90) double y) {
    Transform t =
        Transform.rotation(turn).then(Transform.scaling(1, -1)).then(Transform.translation(x, y));
    Point p = Point.of(x / 2, -y);
    assertThat(t.inverse().apply(t.apply(p)).distanceTo(p)).isLessThan(1e-9);
  }

  @Property
  void a_region_moves_as_its_points_do(@ForAll @DoubleRange(min = -3, max = 3) double turn) {
    Transform t = Transform.rotation(turn).then(Transform.translation(3, -4));
    Region moved = square(1, 2, 3).toRegion().transformed(t);
    assertThat(moved.distanceTo(t.apply(Point.of(1, 2)))).isLessThan(1e-9);
    assertThat(moved.area()).isCloseTo(9, within(1e-9));
  }
}
