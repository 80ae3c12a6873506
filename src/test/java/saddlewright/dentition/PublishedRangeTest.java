package saddlewright.dentition;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PublishedRangeTest {
  /** Woelfel's tables of extracted teeth: mean and range, in mm (from memory of the tables). */
  @ParameterizedTest
  @CsvSource({
    "16, crown-width, 10.4, 8.8, 13.3",
    "26, crown-width, 10.4, 8.8, 13.3",
    "46, crown-width, 11.4, 9.8, 14.5",
    "46, crown-height, 7.7, 6.1, 9.6",
    "33, crown-height, 11.0, 6.8, 16.4",
    "11, crown-height, 11.2, 8.6, 14.7",
    "17, crown-depth, 11.4, 9.9, 14.3",
    "31, crown-depth, 5.7, 4.8, 6.8",
  })
  void the_size_of_a_crown_is_that_of_woelfels_tables(
      int fdi, String quantity, double mean, double least, double most) {
    PublishedRange r = PublishedRange.of(quantity, Tooth.of(fdi)).orElseThrow();
    assertThat(r.mean()).contains(mean);
    assertThat(r.least()).isEqualTo(least);
    assertThat(r.most()).isEqualTo(most);
    assertThat(r.evidence()).isEqualTo("from memory");
    assertThat(r.source()).contains("Woelfel");
  }

  /**
   * Gingival crest to the movable floor of the mouth in 80 subjects: 7.44 (1.59) mm at the central
   * incisors to 10.28 (2.55) mm at the second premolars (Cameron and others, abstract at
   * https://www.scribd.com/document/625238105).
   */
  @ParameterizedTest
  @CsvSource({"31, 7.44, 1.59", "41, 7.44, 1.59", "35, 10.28, 2.55", "45, 10.28, 2.55"})
  void the_lingual_sulcus_is_as_deep_as_was_measured(int fdi, double mean, double deviation) {
    PublishedRange r = PublishedRange.of("lingual-depth", Tooth.of(fdi)).orElseThrow();
    assertThat(r.mean()).contains(mean);
    assertThat(r.deviation()).contains(deviation);
    assertThat(r.evidence()).isEqualTo("seen");
    assertThat(r.holds(mean - 2 * deviation)).isTrue();
  }

  /**
   * Vestibular depth from the gingival margin in health, over 50 years of age: 12.06 (2.73) mm in
   * the upper and 10.08 (2.58) mm in the lower jaw
   * (https://staging.scite.ai/reports/cephalometry-and-cephalometric-analysis-AVQXLQ).
   */
  @ParameterizedTest
  @CsvSource({"26, 12.06, 2.73", "36, 10.08, 2.58"})
  void the_buccal_sulcus_is_as_deep_as_was_measured(int fdi, double mean, double deviation) {
    PublishedRange r = PublishedRange.of("buccal-depth", Tooth.of(fdi)).orElseThrow();
    assertThat(r.mean()).contains(mean);
    assertThat(r.deviation()).contains(deviation);
  }

  /** The undercuts for cast alloy, wrought gold and wrought steel (British teaching notes). */
  @ParameterizedTest
  @CsvSource({"0.25, true", "0.50, true", "0.75, true", "0.01, false", "2.5, false"})
  void the_undercuts_that_gauges_measure_are_likely(double depth, boolean likely) {
    assertThat(PublishedRange.of("undercut", Tooth.T46).orElseThrow().holds(depth))
        .isEqualTo(likely);
  }

  @Test
  void every_range_says_where_it_stands_and_how_far_it_was_checked() {
    Set<String> seen = new HashSet<>();
    for (Map<String, String> r : DataTable.rows("survey-ranges")) {
      String where = r.get("quantity") + " " + r.get("tooth_key");
      assertThat(seen.add(where)).as(where + " stands twice").isTrue();
      assertThat(r.get("source")).as(where).hasSizeGreaterThan(20);
      assertThat(r.get("evidence"))
          .as(where)
          .isIn("seen", "derived", "common practice", "from memory");
      assertThat(r.get("sd").isEmpty() || !r.get("mean").isEmpty()).as(where).isTrue();
    }
    assertThat(seen).hasSizeGreaterThan(40);
  }

  @Test
  void the_mean_lies_within_the_range() {
    for (Tooth t : Tooth.values()) {
      for (String q : new String[] {"crown-height", "crown-width", "crown-depth", "crown-root"}) {
        PublishedRange r = PublishedRange.of(q, t).orElseThrow();
        assertThat(r.holds(r.mean().orElseThrow())).as(q + " of " + t).isTrue();
      }
    }
  }

  @Test
  void nothing_is_said_where_nothing_was_published() {
    assertThat(PublishedRange.of("lingual-depth", Tooth.T16)).isEmpty();
    assertThat(PublishedRange.of("phase-of-the-moon", Tooth.T46)).isEmpty();
  }
}
