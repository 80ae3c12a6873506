package saddlewright.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.imageio.ImageIO;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Element;

/** The draw command: true scale, both formats, clear refusals. */
class DrawCommandTest {
  private static final Path CASE = Path.of("demo-cases", "01-lower-class-1-rpi.json");

  @TempDir Path folder;

  private Element svg(Path file) throws Exception {
    return DocumentBuilderFactory.newInstance()
        .newDocumentBuilder()
        .parse(new ByteArrayInputStream(Files.readAllBytes(file)))
        .getDocumentElement();
  }

  @Test
  void an_svg_is_in_millimetres_one_unit_each() throws Exception {
    Path out = folder.resolve("sheet.svg");
    assertThat(Run.of("draw", CASE, "--out", out)).isEqualTo(new Run(0, "", ""));
    Element root = svg(out);
    String[] box = root.getAttribute("viewBox").split(" ");
    assertThat(root.getAttribute("width")).isEqualTo(box[2] + "mm");
    assertThat(root.getAttribute("height")).isEqualTo(box[3] + "mm");
    // An upper arch is some 65 mm wide over the molars and the sheet has margins.
    assertThat(Double.parseDouble(box[2])).isBetween(70.0, 120.0);
  }

  @Test
  void one_arch_takes_less_paper_than_two() throws Exception {
    Path both = folder.resolve("both.svg");
    Path lower = folder.resolve("lower.svg");
    Run.of("draw", CASE, "--out", both);
    Run.of("draw", CASE, "--out", lower, "--arch", "lower");
    assertThat(height(lower)).isLessThan(0.7 * height(both));
  }

  private double height(Path file) throws Exception {
    return Double.parseDouble(svg(file).getAttribute("viewBox").split(" ")[3]);
  }

  @Test
  void findings_are_marked_on_request_with_shape_letter_and_number() throws Exception {
    Path faulty = Path.of("demo-cases", "10-fault-lower-class-2.json");
    Path plain = folder.resolve("plain.svg");
    Path marked = folder.resolve("marked.svg");
    Run.of("draw", faulty, "--out", plain);
    assertThat(Run.of("draw", faulty, "--out", marked, "--findings")).isEqualTo(new Run(0, "", ""));
    assertThat(Files.readString(plain)).doesNotContain("must be put right");
    assertThat(Files.readString(marked)).contains(">must be put right<").contains(">M<");
  }

  @Test
  void a_png_has_the_pixels_that_its_resolution_asks_for() throws Exception {
    Path svg = folder.resolve("sheet.svg");
    Path png = folder.resolve("sheet.png");
    Run.of("draw", CASE, "--out", svg);
    assertThat(Run.of("draw", CASE, "--out", png, "--dpi", "100").code()).isZero();
    // 100 pixels an inch of 25.4 mm.
    assertThat(ImageIO.read(png.toFile()).getHeight())
        .isBetween((int) (height(svg) * 100 / 25.4), (int) (height(svg) * 100 / 25.4) + 1);
  }

  /** The case would be lost: neither its own name nor a link to it may be written over. */
  @Test
  void the_case_is_never_drawn_over_itself() throws Exception {
    Path file = Files.copy(CASE, folder.resolve("case.svg"));
    Path link = Files.createSymbolicLink(folder.resolve("link.svg"), file);
    for (Path out : new Path[] {file, link}) {
      Run run = Run.of("draw", file, "--out", out);
      assertThat(run.code()).isEqualTo(2);
      assertThat(run.err()).contains(out + " is the case itself").hasLineCount(1);
      assertThat(file).hasSameBinaryContentAs(CASE);
    }
  }

  @Test
  void mono_uses_no_colour() throws Exception {
    Path out = folder.resolve("mono.svg");
    Run.of("draw", CASE, "--out", out, "--mono");
    java.util.regex.Matcher colours =
        java.util.regex.Pattern.compile("#([0-9a-f]{2})([0-9a-f]{2})([0-9a-f]{2})")
            .matcher(Files.readString(out));
    int found = 0;
    while (colours.find()) {
      found++;
      assertThat(colours.group(1)).isEqualTo(colours.group(2)).isEqualTo(colours.group(3));
    }
    assertThat(found).isGreaterThan(20);
  }

  @Test
  void the_same_case_gives_the_same_bytes() throws Exception {
    Path one = folder.resolve("one.svg");
    Path two = folder.resolve("two.svg");
    Run.of("draw", CASE, "--out", one);
    Run.of("draw", CASE, "--out", two);
    assertThat(one).hasSameBinaryContentAs(two);
  }

  @Test
  void a_clear_background_has_no_paper_in_either_format() throws Exception {
    Path svg = folder.resolve("clear.svg");
    Path png = folder.resolve("clear.png");
    Run.of("draw", CASE, "--out", svg, "--transparent");
    Run.of("draw", CASE, "--out", png, "--transparent", "--dpi", "60");
    assertThat(svg(svg).getElementsByTagName("rect").getLength()).isZero();
    assertThat(ImageIO.read(png.toFile()).getRGB(0, 0) >>> 24).as("opacity of a corner").isZero();
    Run.of("draw", CASE, "--out", png, "--dpi", "60");
    assertThat(ImageIO.read(png.toFile()).getRGB(0, 0)).as("white").isEqualTo(0xffffffff);
  }

  @Test
  void components_bear_the_numbers_of_the_schedule_on_request() throws Exception {
    Path plain = folder.resolve("plain.svg");
    Path numbered = folder.resolve("numbered.svg");
    Run.of("draw", CASE, "--out", plain);
    assertThat(Run.of("draw", CASE, "--out", numbered, "--numbers")).isEqualTo(new Run(0, "", ""));
    assertThat(Files.readString(plain)).doesNotContain("component number");
    String svg = Files.readString(numbered);
    assertThat(svg).contains(">component number<");
    // The schedule of this case has 23 lines; a lower arch has no tooth of such a number.
    for (int n = 1; n <= 23; n++) {
      assertThat(svg).contains(">" + n + "</text>");
    }
  }

  @Test
  void refuses_in_a_sentence_what_it_cannot_do() {
    assertThat(Run.of("draw", CASE, "--out", folder.resolve("x.gif")))
        .satisfies(r -> assertThat(r.code()).isEqualTo(2))
        .satisfies(r -> assertThat(r.err()).contains(".svg or .png"));
    assertThat(Run.of("draw", CASE, "--out", folder.resolve("x.png"), "--dpi", "5").err())
        .contains("from 10 to 2400");
    assertThat(Run.of("draw", CASE, "--out", folder.resolve("x.png"), "--dpi", "abc").err())
        .contains("\"abc\" is no whole number; use dots per inch from 10 to 2400")
        .doesNotContain("Exception");
    assertThat(Run.of("draw", CASE, "--out", folder.resolve("none/x.svg")).err())
        .contains("does not exist");
    assertThat(Run.of("draw", folder, "--out", folder.resolve("x.svg")).err())
        .contains("is a folder");
    assertThat(Run.of("draw", CASE).code()).isEqualTo(2);
  }
}
