package saddlewright.desktop.inks;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import saddlewright.drawing.Ink;
import saddlewright.drawing.Palette;

class InkCheckTest {

  @ParameterizedTest
  @EnumSource(Ink.class)
  void the_programs_own_inks_can_be_seen_on_both_desks(Ink ink) {
    assertThat(new InkCheck(Palette.PAPER).standings(ink))
        .isNotEmpty()
        .allSatisfy(s -> assertThat(s.passes()).as("on paper: " + s).isTrue());
    assertThat(new InkCheck(Palette.DARK).standings(ink))
        .allSatisfy(s -> assertThat(s.passes()).as("on the dark desk: " + s).isTrue());
  }

  @Test
  void the_programs_own_parts_are_told_apart_without_red_or_green() {
    assertThat(new InkCheck(Palette.PAPER).alike()).isEmpty();
    assertThat(new InkCheck(Palette.DARK).alike()).isEmpty();
  }

  @Test
  void red_and_green_of_one_lightness_are_found_to_be_alike() {
    // On the line of colours that a deuteranope confuses: equal 0.29275 R + 0.70725 G of light.
    Palette p = Palette.PAPER.with(Map.of(Ink.REST, "#a05000", Ink.RECIPROCAL, "#546c00"));

    assertThat(new InkCheck(p).alike())
        .contains(new InkCheck.Alike(Ink.REST, Ink.RECIPROCAL, ColourVision.DEUTERANOPIA));
  }

  @Test
  void a_pale_line_is_refused_and_the_nearest_that_passes_is_just_dark_enough() {
    Palette pale = Palette.PAPER.with(Map.of(Ink.REST, "#f0b080"));
    InkCheck check = new InkCheck(pale);
    assertThat(check.passes(Ink.REST)).isFalse();

    String better = check.nearest(Ink.REST).orElseThrow();

    InkCheck after = new InkCheck(pale.with(Map.of(Ink.REST, better)));
    assertThat(after.passes(Ink.REST)).isTrue();
    assertThat(after.standings(Ink.REST).get(0).ratio()).isBetween(3.0, 3.2);
  }

  @Test
  void words_want_more_than_lines() {
    // 3.03:1 on white: enough for a line, too little for words.
    Palette p = Palette.PAPER.with(Map.of(Ink.FAINT, "#949494", Ink.LABEL, "#949494"));

    assertThat(new InkCheck(p).passes(Ink.FAINT)).isTrue();
    assertThat(new InkCheck(p).passes(Ink.LABEL)).isFalse();
  }

  @Test
  void a_surface_is_judged_by_what_stands_on_it() {
    InkCheck check = new InkCheck(Palette.PAPER.with(Map.of(Ink.METAL, "#3a464f")));

    assertThat(check.passes(Ink.METAL)).isFalse();
    assertThat(check.standings(Ink.METAL).get(0).ground()).isEqualTo(Ink.METAL);
  }

  @Test
  void paper_takes_the_inks_that_can_be_seen_on_white_and_no_others() {
    Inks inks =
        new Inks(Map.of(Ink.PAPER, "#101010", Ink.REST, "#7a3000", Ink.NOTE, "#eeeeee"), Map.of());

    Palette printed = inks.onPaper();

    assertThat(printed.hex(Ink.PAPER)).isEqualTo("#ffffff");
    assertThat(printed.hex(Ink.REST)).isEqualTo("#7a3000");
    assertThat(printed.hex(Ink.NOTE)).isEqualTo(Palette.PAPER.hex(Ink.NOTE));
    assertThat(inks.on(false).hex(Ink.NOTE)).isEqualTo("#eeeeee");
  }
}
