package saddlewright.desktop.survey.tissue;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import saddlewright.rules.Profile;

class BarRoomTest {
  /**
   * British undergraduate teaching notes: 8 mm is 3 mm clear of the margin, 4 mm of bar and 1 mm
   * above the raised floor; 5 to 7 mm take a sublingual bar, 4 mm and less a plate. Stratton and
   * Wiebelt put the least for a lingual bar at 7 mm.
   */
  @ParameterizedTest
  @CsvSource({
    "10, 6, LINGUAL_BAR",
    "8, 4, LINGUAL_BAR",
    "7.5, 3.5, LINGUAL_BAR_JUST",
    "7, 3, LINGUAL_BAR_JUST",
    "6, 2, SUBLINGUAL_BAR",
    "5, 1, SUBLINGUAL_BAR",
    "4, 0, PLATE",
    "2, 0, PLATE",
  })
  void a_depth_leaves_what_teaching_says(double depth, double left, BarRoom.Kind kind) {
    BarRoom room = BarRoom.of(depth, Profile.UK_TEACHING);
    assertThat(room.left()).isEqualTo(left);
    assertThat(room.kind()).isEqualTo(kind);
  }

  @Test
  void a_bar_of_the_usual_height_needs_eight_millimetres() {
    assertThat(BarRoom.of(8, Profile.UK_TEACHING).takesBar()).isTrue();
    assertThat(BarRoom.of(7.9, Profile.UK_TEACHING).takesBar()).isFalse();
  }
}
