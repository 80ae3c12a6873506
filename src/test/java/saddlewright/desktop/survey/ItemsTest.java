package saddlewright.desktop.survey;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import saddlewright.chart.ArchChart;
import saddlewright.chart.Tilt;
import saddlewright.chart.ToothFindings;
import saddlewright.chart.ToothStatus;
import saddlewright.chart.Undercut;
import saddlewright.dentition.Arch;
import saddlewright.dentition.Tooth;
import saddlewright.dentition.Zone;

class ItemsTest {
  private static final ArchChart LOWER = ArchChart.full(Arch.LOWER);
  private static final Item UNDERCUT = Items.undercut(Zone.MESIOBUCCAL);

  private static ArchChart taken(Item item, ArchChart chart, Tooth tooth, String text) {
    Entry e = item.enter(chart, tooth, text);
    assertThat(e).as(text).isInstanceOf(Entry.Taken.class);
    return ((Entry.Taken) e).chart();
  }

  private static String refused(Item item, ArchChart chart, Tooth tooth, String text) {
    Entry e = item.enter(chart, tooth, text);
    assertThat(e).as(text).isInstanceOf(Entry.Refused.class);
    return ((Entry.Refused) e).sentence();
  }

  @ParameterizedTest
  @CsvSource({
    "25, 0.25",
    "50, 0.5",
    "075, 0.75",
    "100, 1",
    "0, 0",
    "0.25, 0.25",
    ".5, 0.5",
    "'0,75', 0.75",
    "0.25 mm, 0.25",
    "0.25mm, 0.25",
    "0.025 cm, 0.25",
    "0.01 in, 0.254",
    "1, 1",
  })
  void an_undercut_is_read_as_people_write_it(String text, double depth) {
    ArchChart next = taken(UNDERCUT, LOWER, Tooth.T46, text);
    assertThat(next.tooth(Tooth.T46).undercuts().get(Zone.MESIOBUCCAL).depth()).isEqualTo(depth);
  }

  @Test
  void figures_without_a_point_are_said_to_be_hundredths() {
    Entry.Taken e = (Entry.Taken) UNDERCUT.enter(LOWER, Tooth.T46, "25");
    assertThat(e.remark()).contains("25 is read as 0.25 mm.");
    assertThat(((Entry.Taken) UNDERCUT.enter(LOWER, Tooth.T46, "0.25")).remark()).isEmpty();
  }

  @Test
  void figures_of_other_items_are_what_they_say() {
    ArchChart next = taken(Items.LINGUAL_DEPTH, LOWER, Tooth.T41, "12");
    assertThat(next.softTissues().lingualDepth()).containsEntry(Tooth.T41, 12.0);
  }

  @ParameterizedTest
  @ValueSource(strings = {"abc", "1..2", "0.25 kg", "--1", "1 2", "NaN", "1e3"})
  void what_is_no_number_is_refused_with_a_sentence(String text) {
    assertThat(refused(UNDERCUT, LOWER, Tooth.T46, text))
        .contains("“" + text + "” is not a number")
        .contains("0 to 5 mm");
  }

  @Test
  void what_is_impossible_is_refused_and_the_likely_slip_named() {
    assertThat(refused(Items.WIDTH, LOWER, Tooth.T46, "1.14"))
        .contains("from 2 to 16")
        .contains("1.14 cm would be 11.4 mm");
    assertThat(refused(Items.WIDTH, LOWER, Tooth.T46, "114"))
        .contains("Without its decimal point it may be 11.4 mm");
    assertThat(refused(Items.BONE, LOWER, Tooth.T46, "-3")).contains("0 to 100");
  }

  @Test
  void what_is_unlikely_is_taken_with_what_was_published() {
    ArchChart next = taken(Items.WIDTH, LOWER, Tooth.T46, "15");
    assertThat(next.tooth(Tooth.T46).mesiodistal()).contains(15.0);
    // 11.4 mm (9.8 to 14.5): Woelfel's tables, from memory.
    assertThat(Items.WIDTH.caution(next, Tooth.T46))
        .contains(
            "Mesiodistal width 15 mm: published 11.4 mm (range 9.8 to 14.5)."
                + " Check the value and its unit.");
    assertThat(Items.WIDTH.published(Tooth.T46).orElseThrow())
        .contains("from memory")
        .contains("Woelfel");
  }

  @Test
  void slips_of_the_unit_are_named() {
    assertThat(Items.undercut(Zone.MID_BUCCAL).caution(Tooth.T46, 0.01).orElseThrow())
        .endsWith("0.01 inch would be 0.254 mm.");
    assertThat(Items.undercut(Zone.MID_BUCCAL).caution(Tooth.T46, 2.5).orElseThrow())
        .endsWith("Without its decimal point it may be 0.25 mm.");
    assertThat(Items.LINGUAL_DEPTH.caution(Tooth.T41, 0.8).orElseThrow())
        .endsWith("0.8 cm would be 8 mm.");
    assertThat(Items.BONE.caution(Tooth.T41, 0.8).orElseThrow())
        .endsWith("A share of 0.8 would be 80 %.");
  }

  @Test
  void an_undercut_that_was_looked_for_and_not_found_is_nothing_odd() {
    assertThat(Items.undercut(Zone.MID_BUCCAL).caution(Tooth.T46, 0)).isEmpty();
  }

  @Test
  void how_low_an_undercut_lies_keeps_its_depth_and_the_reverse() {
    ArchChart deep = taken(UNDERCUT, LOWER, Tooth.T46, "25");
    ArchChart low = taken(Items.undercutHeight(Zone.MESIOBUCCAL), deep, Tooth.T46, "1.5");
    ArchChart deeper = taken(UNDERCUT, low, Tooth.T46, "50");
    assertThat(deeper.tooth(Tooth.T46).undercuts())
        .containsEntry(Zone.MESIOBUCCAL, new Undercut(0.5, Optional.of(1.5)));
  }

  @Test
  void how_low_is_asked_only_where_there_is_an_undercut() {
    Item height = Items.undercutHeight(Zone.MESIOBUCCAL);
    assertThat(height.isAskedOf(LOWER, Tooth.T46)).isFalse();
    assertThat(height.notAsked(LOWER, Tooth.T46)).contains("once the undercut itself is");
    assertThat(height.isAskedOf(taken(UNDERCUT, LOWER, Tooth.T46, "25"), Tooth.T46)).isTrue();
  }

  @ParameterizedTest
  @CsvSource({
    "mesial 15, MESIAL, 15",
    "m15, MESIAL, 15",
    "M 15, MESIAL, 15",
    "15 lingual, LINGUAL, 15",
    "'d 7,5', DISTAL, 7.5",
    "buccal 10°, BUCCAL, 10",
  })
  void a_tilt_is_a_way_and_degrees(String text, Tilt way, double degrees) {
    ToothFindings f = taken(Items.TILT, LOWER, Tooth.T47, text).tooth(Tooth.T47);
    assertThat(f.tilt()).contains(way);
    assertThat(f.tiltDegrees()).contains(degrees);
  }

  @Test
  void a_tilt_without_degrees_is_taken_and_nought_is_upright() {
    ArchChart leaning = taken(Items.TILT, LOWER, Tooth.T47, "mesial");
    assertThat(Items.TILT.text(leaning, Tooth.T47)).isEqualTo("mesial");
    assertThat(taken(Items.TILT, leaning, Tooth.T47, "0").tooth(Tooth.T47).tilt()).isEmpty();
    assertThat(refused(Items.TILT, LOWER, Tooth.T47, "15")).contains("“mesial 15”");
    assertThat(refused(Items.TILT, LOWER, Tooth.T47, "mesial 200")).contains("0 to 90");
  }

  @Test
  void a_word_is_known_by_its_beginning() {
    Item state = Items.find("tooth-status").orElseThrow();
    assertThat(taken(state, LOWER, Tooth.T36, "m").tooth(Tooth.T36).status())
        .isEqualTo(ToothStatus.MISSING);
    Item condition = Items.find("tooth-condition").orElseThrow();
    assertThat(refused(condition, LOWER, Tooth.T36, "r")).contains("several");
    assertThat(refused(condition, LOWER, Tooth.T36, "x")).contains("sound, restored, amalgam");
    assertThat(condition.text(taken(condition, LOWER, Tooth.T36, "res"), Tooth.T36))
        .isEqualTo("restored");
  }

  @Test
  void every_text_that_is_shown_can_be_entered_again() {
    ArchChart chart = taken(Items.TILT, LOWER, Tooth.T47, "m15");
    chart = taken(UNDERCUT, chart, Tooth.T47, "25");
    chart = taken(Items.ROTATION, chart, Tooth.T47, "-12.5");
    for (Items.Group g : Items.of(Arch.LOWER)) {
      for (Item i : g.items()) {
        if (i.isAskedOf(chart, Tooth.T47)) {
          String text = i.text(chart, Tooth.T47);
          assertThat(taken(i, chart, Tooth.T47, text)).as(i.id()).isEqualTo(chart);
        }
      }
    }
  }

  @Test
  void the_possible_range_that_is_told_is_that_of_the_chart() {
    for (Items.Group g : Items.of(Arch.LOWER)) {
      for (Item i : g.items()) {
        if (i instanceof NumberItem n) {
          ArchChart chart = LOWER;
          Tooth tooth = n.isAskedOf(LOWER, Tooth.T46) ? Tooth.T46 : Tooth.T43;
          if (i.id().startsWith("undercut-height")) {
            for (Zone z : Zone.values()) {
              chart = taken(Items.undercut(z), chart, tooth, "25");
            }
          }
          ArchChart at = chart;
          n.put(at, tooth, Optional.of(n.least()));
          n.put(at, tooth, Optional.of(n.most()));
          assertThatThrownBy(() -> n.put(at, tooth, Optional.of(n.most() + 0.01)))
              .as(n.id())
              .isInstanceOf(IllegalArgumentException.class);
          assertThatThrownBy(() -> n.put(at, tooth, Optional.of(n.least() - 0.01)))
              .as(n.id())
              .isInstanceOf(IllegalArgumentException.class);
        }
      }
    }
  }
}
