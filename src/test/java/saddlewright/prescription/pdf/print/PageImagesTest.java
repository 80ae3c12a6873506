package saddlewright.prescription.pdf.print;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.time.LocalDate;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import saddlewright.casefile.Assessment;
import saddlewright.casefile.json.CaseStore;
import saddlewright.prescription.pdf.PrescriptionPdf;

/** The pictures are those of the pages: their size, their ink and their words. */
class PageImagesTest {
  /** The margin that pages are set with, in mm. */
  private static final double SIDE = 18;

  private static PageImages pages;

  @BeforeAll
  static void open() throws Exception {
    Assessment a = Assessment.of(CaseStore.load(Path.of("demo-cases/01-lower-class-1-rpi.json")));
    pages = PageImages.of(PrescriptionPdf.toBytes(a, LocalDate.of(2026, 11, 25)));
  }

  @AfterAll
  static void close() {
    pages.close();
  }

  @Test
  void a_page_is_as_large_as_its_paper() {
    // ISO 216: A4 is 210 mm by 297 mm.
    assertThat(pages.sizes().get(0).width()).isCloseTo(210, within(0.1));
    assertThat(pages.sizes().get(0).height()).isCloseTo(297, within(0.1));
    PageImage image = pages.render(0, 4);
    assertThat(image.width()).isCloseTo(840, within(1));
    assertThat(image.height()).isCloseTo(1188, within(1));
  }

  @Test
  void paper_is_white_and_opaque_and_the_drawing_has_colours() {
    PageImage image = pages.render(1, 4);
    assertThat(image.argb()[0]).isEqualTo(0xffffffff);
    assertThat(java.util.Arrays.stream(image.argb()).distinct().count()).isGreaterThan(200);
    assertThat(java.util.Arrays.stream(image.argb()).map(p -> p >>> 24)).containsOnly(255);
  }

  @Test
  void a_page_is_blank_to_the_margins_that_it_is_set_with() {
    Margins blank = pages.blank(1);
    // Words begin 18 mm from the sides; the foot stands 10 mm from the bottom, with room for
    // descenders.
    assertThat(blank.left()).isCloseTo(SIDE, within(0.5));
    assertThat(blank.right()).isCloseTo(SIDE, within(0.5));
    assertThat(blank.bottom()).isBetween(4.0, 10.0);
  }

  @Test
  void the_words_of_a_page_can_be_heard() {
    assertThat(pages.words(0)).contains("HTC-0101", "Tarn Laboratory");
    assertThat(pages.words(1)).contains("20 mm");
  }
}
