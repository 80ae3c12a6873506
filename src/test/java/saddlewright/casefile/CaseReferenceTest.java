package saddlewright.casefile;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** References drawn by chance. */
class CaseReferenceTest {
  @Test
  void a_reference_has_two_groups_of_four_signs() {
    for (int i = 0; i < 1000; i++) {
      assertThat(CaseReference.fresh()).matches("SW-[2-9A-Z]{4}-[2-9A-Z]{4}");
    }
  }

  // Sets that are taken for one another by hand and by ear; common practice.
  @Test
  void no_sign_is_taken_for_another_and_no_word_comes_out() {
    for (String alike : new String[] {"0OQ", "1IL", "2Z", "5S", "6G", "8B", "UV"}) {
      assertThat(alike.chars().filter(c -> CaseReference.SIGNS.indexOf(c) >= 0).count())
          .as(alike)
          .isLessThanOrEqualTo(1);
    }
    assertThat(CaseReference.SIGNS).doesNotContainPattern("[AEIOU]");
  }

  @Test
  void two_references_are_not_alike_and_do_not_follow_one_another() {
    Set<String> seen = new HashSet<>();
    for (int i = 0; i < 20_000; i++) {
      seen.add(CaseReference.fresh());
    }
    assertThat(seen).hasSize(20_000);
  }

  @Test
  void every_sign_is_drawn() {
    Random chance = new Random(4);
    Set<Integer> seen = new HashSet<>();
    for (int i = 0; i < 500; i++) {
      CaseReference.drawn(chance).substring(3).chars().filter(c -> c != '-').forEach(seen::add);
    }
    assertThat(seen).hasSize(CaseReference.SIGNS.length());
  }
}
