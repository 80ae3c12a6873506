package saddlewright.classification;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import saddlewright.dentition.Span;
import saddlewright.dentition.Tooth;

/**
 * Craddock's three classes of saddle support (from memory); the limit of three teeth is common
 * teaching in British revision notes: a sound abutment carries one and a half teeth besides itself.
 */
class SupportClassTest {

  @ParameterizedTest
  @CsvSource({
    "false, 1, true,  true,  TOOTH",
    "false, 3, true,  true,  TOOTH",
    "false, 4, true,  true,  TOOTH_AND_MUCOSA",
    "false, 2, true,  false, TOOTH_AND_MUCOSA",
    "false, 2, false, true,  TOOTH_AND_MUCOSA",
    "false, 2, false, false, MUCOSA",
    "true,  2, true,  false, TOOTH_AND_MUCOSA",
    "true,  2, false, true,  TOOTH_AND_MUCOSA",
    "true,  1, true,  true,  TOOTH_AND_MUCOSA",
    "true,  3, false, false, MUCOSA"
  })
  void follows_from_the_ends_that_are_rested_and_the_length(
      boolean freeEnd, int replaced, boolean before, boolean after, SupportClass expected) {
    assertThat(SupportClass.of(freeEnd, replaced, before, after)).isEqualTo(expected);
  }

  @Test
  void counts_the_teeth_replaced_and_not_the_places_lost() {
    EdentulousArea area =
        new EdentulousArea(Span.of(23, 26), List.of(Tooth.T23, Tooth.T24, Tooth.T26), false, false);
    assertThat(SupportClass.of(area, true, true)).isEqualTo(SupportClass.TOOTH);
    assertThat(SupportClass.TOOTH_AND_MUCOSA.words()).isEqualTo("tooth-and-mucosa-borne");
  }
}
