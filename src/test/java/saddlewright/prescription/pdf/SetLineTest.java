package saddlewright.prescription.pdf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.Font;
import java.awt.font.FontRenderContext;
import java.awt.font.GlyphVector;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import org.apache.fontbox.ttf.CmapLookup;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** How a line of any script stands on paper. */
class SetLineTest {
  private static String seen(String words) {
    return SetLine.of(TypeFace.printable(words)).seen();
  }

  /** Hebrew letters for the capitals of the examples in Unicode Standard Annex 9, section 3.4. */
  private static String hebrew(String example) {
    StringBuilder out = new StringBuilder();
    example
        .chars()
        .forEach(c -> out.append(c >= 'A' && c <= 'Z' ? (char) (0x05D0 + (c - 'A')) : (char) c));
    return out.toString();
  }

  @Test
  void words_that_run_from_right_to_left_stand_as_the_annex_shows() {
    assertThat(seen(hebrew("car is THE CAR in arabic")))
        .isEqualTo(hebrew("car is RAC EHT in arabic"));
    assertThat(seen("\u200e" + hebrew("he said \"THE VALUES ARE 123, 456, 789, OK\".")))
        .isEqualTo(hebrew("he said \"KO ,789 ,456 ,123 ERA SEULAV EHT\"."));
    assertThat(seen(hebrew("CAR (A) 12"))).isEqualTo(hebrew("12 (A) RAC"));
  }

  @Test
  void every_line_of_a_paragraph_runs_as_the_paragraph_does() {
    assertThat(seenLines("AB CD, and EF")).containsExactly("BA", ",DC", "and", "FE");
    assertThat(seenLines("and AB, CD EF")).containsExactly("and", "BA,", "DC", "FE");
    assertThat(Wrap.lines("of cobalt", Weight.REGULAR, 10, 32))
        .as("words of one direction need no sign")
        .containsExactly("of", "cobalt");
  }

  private static List<String> seenLines(String example) {
    return Wrap.lines(hebrew(example), Weight.REGULAR, 10, 20).stream()
        .map(l -> SetLine.of(l).seen())
        .map(SetLineTest::example)
        .toList();
  }

  private static String example(String hebrew) {
    StringBuilder out = new StringBuilder();
    hebrew
        .chars()
        .forEach(c -> out.append(c >= 0x05D0 && c < 0x05EA ? (char) ('A' + c - 0x05D0) : (char) c));
    return out.toString();
  }

  /** The Java library shapes by HarfBuzz and the tables of the font itself. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "مختبر اسنان",
        "طبيب",
        "السلام عليكم",
        "لا إله",
        "پژوهشگاه دندان‌سازی گچ",
        "بـيت",
        "ءآدم"
      })
  void arabic_letters_join_as_harfbuzz_joins_them(String words) throws Exception {
    CmapLookup glyphs = Face.DEJAVU_SANS.cut(Weight.REGULAR).font().getUnicodeCmapLookup();
    List<Integer> ours = new ArrayList<>();
    seen(words).codePoints().filter(c -> c != ' ').forEach(c -> ours.add(glyphs.getGlyphId(c)));
    Font font;
    try (InputStream in =
        SetLineTest.class.getResourceAsStream("/saddlewright/face/DejaVuSans.ttf")) {
      font = Font.createFont(Font.TRUETYPE_FONT, in);
    }
    String text = words.replace(" ", "");
    List<Integer> theirs = new ArrayList<>();
    for (String word : reversed(words.split(" "))) {
      GlyphVector v =
          font.layoutGlyphVector(
              new FontRenderContext(null, true, true),
              word.toCharArray(),
              0,
              word.length(),
              Font.LAYOUT_RIGHT_TO_LEFT);
      for (int i = 0; i < v.getNumGlyphs(); i++) {
        int g = v.getGlyphCode(i);
        if (g != 0xFFFF && g != glyphs.getGlyphId(' ')) {
          theirs.add(g);
        }
      }
    }
    assertThat(ours).as(text).isEqualTo(theirs);
  }

  /**
   * Unicode code chart FE70: U+FEFB is lam with alef alone, U+FEF8 lam with alef and hamza joined.
   */
  @Test
  void lam_and_alef_become_one() {
    assertThat(seen("لا")).isEqualTo("\uFEFB");
    assertThat(seen("بلأ")).isEqualTo("\uFEF8\uFE91");
  }

  private static List<String> reversed(String[] words) {
    List<String> out = new ArrayList<>(List.of(words));
    java.util.Collections.reverse(out);
    return out;
  }

  @Test
  void a_letter_is_set_in_the_first_face_that_has_it_and_measured_in_that() {
    assertThat(Face.of('a')).contains(Face.LIBERATION_SANS);
    assertThat(Face.of('Ж')).contains(Face.LIBERATION_SANS);
    assertThat(Face.of('ω')).contains(Face.LIBERATION_SANS);
    assertThat(Face.of('ש')).contains(Face.LIBERATION_SANS);
    assertThat(Face.of('ع')).contains(Face.DEJAVU_SANS);
    assertThat(Face.of('Ա')).contains(Face.DEJAVU_SANS);
    assertThat(Face.of('ა')).contains(Face.DEJAVU_SANS);
    assertThat(Face.of('山')).isEmpty();
    double both = TypeFace.width("aა", Weight.BOLD, 10);
    assertThat(both)
        .isCloseTo(
            10
                * (Face.LIBERATION_SANS.cut(Weight.BOLD).advance('a')
                    + Face.DEJAVU_SANS.cut(Weight.BOLD).advance('ა')),
            within(1e-6));
  }

  @Test
  void a_mark_stays_on_its_letter() {
    assertThat(seen("שָׁלוֹם")).isEqualTo("םוֹלשָׁ");
    assertThat(TypeFace.printable("e\u0301")).isEqualTo("é");
  }
}
