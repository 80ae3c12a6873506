package saddlewright.desktop.survey.card;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import saddlewright.archform.ArchForm;
import saddlewright.archform.PlacedTooth;
import saddlewright.chart.ArchChart;
import saddlewright.chart.Tilt;
import saddlewright.dentition.Arch;
import saddlewright.dentition.CrownSize;
import saddlewright.dentition.Face;
import saddlewright.dentition.Tooth;
import saddlewright.dentition.Zone;
import saddlewright.desktop.survey.Items;
import saddlewright.desktop.survey.picture.CrownFace;
import saddlewright.desktop.survey.picture.CrownSide;
import saddlewright.desktop.survey.picture.NumberTouch;
import saddlewright.geometry.Box;
import saddlewright.geometry.Point;
import saddlewright.geometry.Vector;

class TouchTest {
  private static final ArchChart LOWER = ArchChart.full(Arch.LOWER);
  private static final Tooth T = Tooth.T46;

  private static final NumberTouch UNDERCUT =
      new NumberTouch(
          "undercut",
          Items.undercut(Zone.MESIOBUCCAL),
          NumberTouch.GAUGES,
          0.05,
          0.01,
          t -> 0.25,
          new Vector(0, -0.15));

  private static double depth(ArchChart c) {
    return Items.undercut(Zone.MESIOBUCCAL).value(c, T).orElse(-1.0);
  }

  @Test
  void clicks_go_through_the_gauges_and_none() {
    List<Double> seen = new ArrayList<>();
    ArchChart now = LOWER;
    for (int i = 0; i < 5; i++) {
      now = UNDERCUT.click(now, T).orElseThrow();
      seen.add(depth(now));
    }
    assertThat(seen).containsExactly(0.25, 0.5, 0.75, 0.0, 0.25);
  }

  @Test
  void a_click_goes_from_a_value_between_gauges_to_the_next_larger_one() {
    ArchChart now = Items.undercut(Zone.MESIOBUCCAL).put(LOWER, T, Optional.of(0.3));
    assertThat(depth(UNDERCUT.click(now, T).orElseThrow())).isEqualTo(0.5);
    now = Items.undercut(Zone.MESIOBUCCAL).put(LOWER, T, Optional.of(1.2));
    assertThat(depth(UNDERCUT.click(now, T).orElseThrow())).isEqualTo(0.25);
  }

  @Test
  void arrows_step_from_grid_to_grid_and_never_past_what_is_possible() {
    ArchChart now = UNDERCUT.step(LOWER, T, 0, 1, false);
    assertThat(depth(now)).isEqualTo(0.25);
    // The zone lies at the foot of the picture: outwards, and so deeper, is down.
    assertThat(depth(UNDERCUT.step(now, T, 0, -1, false))).isEqualTo(0.3);
    assertThat(depth(UNDERCUT.step(now, T, 0, 1, true))).isEqualTo(0.24);
    assertThat(depth(UNDERCUT.step(now, T, 1, 0, true))).isEqualTo(0.26);
    ArchChart none = Items.undercut(Zone.MESIOBUCCAL).put(LOWER, T, Optional.of(0.0));
    assertThat(depth(UNDERCUT.step(none, T, 0, 1, false))).isZero();
  }

  @Test
  void dragging_outwards_makes_an_undercut_deeper_by_hundredths() {
    ArchChart now = Items.undercut(Zone.MESIOBUCCAL).put(LOWER, T, Optional.of(0.25));
    ArchChart next = UNDERCUT.drag(now, T, new Point(3, -5), new Point(3, -6), false);
    assertThat(depth(next)).isEqualTo(0.4);
    assertThat(depth(UNDERCUT.drag(now, T, new Point(0, -5), new Point(0, 40), false))).isZero();
  }

  private static final TiltTouch ALONG =
      new TiltTouch("tilt", Tilt.MESIAL, Tilt.DISTAL, true, new Point(0, -4));

  @Test
  void turning_the_crown_leans_it_by_the_angle_at_the_pivot() {
    // From straight above the pivot to 20 mm up and 20·tan 15° = 5.36 mm to the right.
    Point top = new Point(0, 16);
    Point moved = new Point(20 * Math.tan(Math.toRadians(15)), 16);
    ArchChart next = ALONG.drag(LOWER, T, top, moved, false);
    assertThat(next.tooth(T).tilt()).contains(Tilt.MESIAL);
    assertThat(next.tooth(T).tiltDegrees()).contains(15.0);
    ArchChart back = ALONG.drag(next, T, moved, top, false);
    assertThat(back.tooth(T).tilt()).isEmpty();
    assertThat(back.tooth(T).tiltDegrees()).isEmpty();
  }

  @Test
  void arrows_lean_the_crown_the_way_they_point() {
    ArchChart right = ALONG.step(LOWER, T, 1, 0, false);
    assertThat(ALONG.words(right, T)).isEqualTo("mesial by 5°");
    ArchChart left = ALONG.step(ALONG.step(right, T, -1, 0, false), T, -1, 0, true);
    assertThat(ALONG.words(left, T)).isEqualTo("distal by 1°");
  }

  @Test
  void turning_in_one_plane_takes_the_place_of_what_was_charted_in_the_other() {
    TiltTouch across =
        new TiltTouch("tilt-across", Tilt.BUCCAL, Tilt.LINGUAL, true, new Point(0, -4));
    ArchChart leaning = across.step(LOWER, T, -1, 0, false);
    assertThat(across.words(leaning, T)).isEqualTo("lingual by 5°");
    assertThat(ALONG.inThisView(leaning, T)).isEqualTo("upright in this view");
    assertThat(ALONG.words(ALONG.step(leaning, T, 1, 0, false), T)).isEqualTo("mesial by 5°");
  }

  /** The chart counts mesial towards lingual as positive. */
  @Test
  void turning_mesial_towards_lingual_is_positive_on_either_side_of_either_arch() {
    for (Tooth tooth : List.of(Tooth.T16, Tooth.T26, Tooth.T36, Tooth.T46)) {
      boolean right = tooth.fdi() / 10 == 1 || tooth.fdi() / 10 == 4;
      boolean upper = tooth.arch() == Arch.UPPER;
      // Mesial lies at the right of the picture for teeth of the right side; lingual at its foot
      // for upper teeth.
      Point mesial = new Point(right ? 10 : -10, 0);
      double towardsLingual = upper ? -10 : 10;
      Point turned =
          new Point(
              mesial.x() * Math.cos(Math.toRadians(30)),
              towardsLingual * Math.sin(Math.toRadians(30)));
      ArchChart chart = ArchChart.full(tooth.arch());
      ArchChart next = new RotationTouch(right == upper).drag(chart, tooth, mesial, turned, false);
      assertThat(next.tooth(tooth).rotationDegrees()).as(tooth.toString()).contains(30.0);
      PlacedTooth placed = ArchForm.of(next).tooth(tooth);
      assertThat(placed.mesial().dot(placed.outward())).as(tooth + " on the sheet").isNegative();
    }
  }

  /** Wheeler's mean sizes of a lower first molar: 7.5 mm tall, 11 mm wide (from memory). */
  @Test
  void the_elevation_has_the_height_and_width_of_the_crown() {
    CrownFace mean = new CrownFace(LOWER, ArchForm.of(LOWER).tooth(T), Face.BUCCAL);
    Box b = mean.crown().box();
    assertThat(b.maxY()).isBetween(7.4, 7.8);
    assertThat(b.width()).isBetween(10.9, 11.3);
    ArchChart tall = Items.CROWN_HEIGHT.put(LOWER, T, Optional.of(9.0));
    CrownFace measured = new CrownFace(tall, ArchForm.of(tall).tooth(T), Face.BUCCAL);
    assertThat(measured.crown().box().maxY()).isBetween(8.9, 9.3);
  }

  @Test
  void every_tooth_has_its_elevations() {
    for (Tooth t : Tooth.values()) {
      ArchChart chart = ArchChart.full(t.arch());
      PlacedTooth placed = ArchForm.of(chart).tooth(t);
      double height = CrownSize.mean(t).height();
      for (Face f : Face.values()) {
        Box b = new CrownFace(chart, placed, f).crown().box();
        assertThat(b.maxY()).as(t + " " + f).isBetween(0.95 * height, 1.06 * height);
      }
      Box side = new CrownSide(chart, placed).crown().box();
      assertThat(side.width())
          .as(t.toString())
          .isBetween(0.95 * CrownSize.mean(t).depth(), 1.06 * CrownSize.mean(t).depth());
    }
  }
}
