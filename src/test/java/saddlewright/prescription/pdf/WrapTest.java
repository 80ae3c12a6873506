package saddlewright.prescription.pdf;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.StringLength;
import org.junit.jupiter.api.Test;

class WrapTest {
  private static List<String> lines(String text, double width) {
    return Wrap.lines(text, Weight.REGULAR, 10, width);
  }

  @Test
  void words_stay_whole_and_a_number_keeps_its_unit() {
    assertThat(lines("tip in 0.25 mm undercut", 62))
        .allMatch(l -> TypeFace.width(l, Weight.REGULAR, 10) <= 62)
        .noneMatch(l -> l.startsWith("mm"));
  }

  @Test
  void line_breaks_of_the_writer_are_kept_and_trailing_ones_dropped() {
    assertThat(lines("2 Quay Lane\nHarrowmere\n\n", 400))
        .containsExactly("2 Quay Lane", "Harrowmere");
    assertThat(lines("   ", 400)).isEmpty();
  }

  @Property(tries = 200)
  void no_line_is_wider_than_its_column_and_no_letter_is_lost(
      @ForAll @StringLength(max = 80) String text,
      @ForAll @DoubleRange(min = 20, max = 300) double width) {
    List<String> lines = lines(text, width);
    assertThat(lines).allMatch(l -> TypeFace.width(l, Weight.REGULAR, 10) <= width);
    assertThat(PrintedPage.packed(Directions.withoutSigns(String.join("", lines))))
        .isEqualTo(PrintedPage.packed(Directions.withoutSigns(TypeFace.printable(text))));
  }
}
