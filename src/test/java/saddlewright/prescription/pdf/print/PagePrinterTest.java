package saddlewright.prescription.pdf.print;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.awt.geom.Rectangle2D;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.print.StreamPrintService;
import javax.print.attribute.standard.MediaSizeName;
import org.apache.pdfbox.contentstream.operator.Operator;
import org.apache.pdfbox.cos.COSNumber;
import org.apache.pdfbox.pdfparser.PDFStreamParser;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import saddlewright.casefile.Assessment;
import saddlewright.casefile.json.CaseStore;
import saddlewright.prescription.pdf.PrescriptionPdf;
import saddlewright.prescription.pdf.PrintedPage;

/** Pages are printed to the JDK's PostScript printer, and what it is sent is measured. */
class PagePrinterTest {
  /** A point is 1/72 inch, an inch 25.4 mm (ISO 32000-1, 8.3.2.3). */
  private static final double MM = 72 / 25.4;

  private static final double TWENTY_MM = 20 * MM;

  private static byte[] pdf;

  @BeforeAll
  static void write() throws Exception {
    Assessment a = Assessment.of(CaseStore.load(Path.of("demo-cases/01-lower-class-1-rpi.json")));
    pdf = PrescriptionPdf.toBytes(a, LocalDate.of(2026, 11, 25));
  }

  private static PrintOrder pages(int first, int last) {
    return new PrintOrder("prescription", first, last, 1, false);
  }

  private static PrintedPostScript printed(byte[] document, PrintOrder order) throws Exception {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    PagePrinter.print(document, PaperPrinter.into(out), order);
    return new PrintedPostScript(out.toByteArray());
  }

  /** Left, right and height above the foot of the level lines of a page, in points. */
  private static List<double[]> levelLines(byte[] document, int page) throws IOException {
    List<double[]> out = new ArrayList<>();
    try (PDDocument d = PrintedPage.read(document)) {
      List<Double> n = new ArrayList<>();
      double[] from = {0, 0};
      for (Object t : new PDFStreamParser(d.getPage(page)).parse()) {
        if (t instanceof COSNumber c) {
          n.add((double) c.floatValue());
        } else if (t instanceof Operator o) {
          if (o.getName().equals("m") || o.getName().equals("l")) {
            double[] to = {n.get(n.size() - 2), n.get(n.size() - 1)};
            if (o.getName().equals("l") && to[1] == from[1]) {
              out.add(new double[] {Math.min(from[0], to[0]), Math.max(from[0], to[0]), to[1]});
            }
            from = to;
          }
          n.clear();
        }
      }
    }
    return out;
  }

  @Test
  void the_scale_bar_is_20_mm_on_the_printed_page_and_lies_where_the_document_has_it()
      throws Exception {
    double[] bar =
        levelLines(pdf, 1).stream()
            .filter(l -> Math.abs(l[1] - l[0] - TWENTY_MM) < 0.02)
            .findFirst()
            .orElseThrow();
    PrintedPostScript ps = printed(pdf, pages(1, 1));

    assertThat(ps.pages()).isEqualTo(1);
    assertThat(ps.sheets())
        .allSatisfy(
            s -> {
              assertThat(s[0]).isCloseTo(210 * MM, within(0.1));
              assertThat(s[1]).isCloseTo(297 * MM, within(0.1));
            });
    double[] seen = ps.isPicture(0) ? barInDots(ps.dots(0), bar) : barInLines(ps.filled(0), bar);
    assertThat(seen[1] - seen[0])
        .as("length of the bar on paper, in points; a dot is 0.24")
        .isCloseTo(TWENTY_MM, within(0.75));
    assertThat(seen[0]).as("its left end").isCloseTo(bar[0], within(0.75));
  }

  /** The dark run of dots along the bar, in points. */
  private static double[] barInDots(PrintedPostScript.Dots dots, double[] bar) {
    double perPoint = dots.width() / (210 * MM);
    int row = (int) Math.round((297 * MM - bar[2]) * perPoint);
    int middle = (int) Math.round((bar[0] + TWENTY_MM / 4) * perPoint);
    for (int y = row - 2; y <= row + 2; y++) {
      if (dots.isDark(middle, y)) {
        int left = middle;
        int right = middle;
        while (dots.isDark(left - 1, y)) {
          left--;
        }
        while (dots.isDark(right + 1, y)) {
          right++;
        }
        return new double[] {left / perPoint, (right + 1) / perPoint};
      }
    }
    throw new AssertionError("there is no bar at its place on the page");
  }

  private static double[] barInLines(List<Rectangle2D> filled, double[] bar) {
    return filled.stream()
        .filter(r -> r.getHeight() < 2 && Math.abs(r.getCenterY() - bar[2]) < 1)
        .filter(r -> r.getMinX() < bar[0] + 1 && r.getMaxX() > bar[1] - 1)
        .map(r -> new double[] {r.getMinX(), r.getMaxX()})
        .findFirst()
        .orElseThrow(() -> new AssertionError("there is no bar at its place on the page"));
  }

  @Test
  void every_rule_of_a_page_of_words_comes_out_as_long_as_it_is_and_where_it_is() throws Exception {
    List<double[]> rules = levelLines(pdf, 2);
    PrintedPostScript ps = printed(pdf, pages(2, 2));

    assertThat(rules).isNotEmpty();
    List<Rectangle2D> filled = ps.filled(0);
    for (double[] rule : rules) {
      assertThat(filled)
          .as("a rule of %.2f points", rule[1] - rule[0])
          .anySatisfy(
              r -> {
                assertThat(r.getWidth()).isCloseTo(rule[1] - rule[0], within(0.05));
                assertThat(r.getMinX()).isCloseTo(rule[0], within(0.05));
                // The printer counts from the top of its paper, which is cut to whole dots.
                assertThat(r.getCenterY()).isCloseTo(rule[2], within(0.25));
              });
    }
  }

  @Test
  void only_the_pages_that_were_asked_for_are_printed() throws Exception {
    assertThat(printed(pdf, pages(1, 2)).pages()).isEqualTo(2);
  }

  @Test
  void a_large_page_is_printed_on_large_paper_and_not_made_to_fit() throws Exception {
    byte[] mixed = blankPages(PDRectangle.A4, PDRectangle.A3);
    List<double[]> sheets = printed(mixed, pages(0, 1)).sheets();
    assertThat(sheets.get(sheets.size() - 1)[1]).isCloseTo(420 * MM, within(0.1));
  }

  @Test
  void an_office_printer_with_narrow_margins_prints_the_prescription_whole() {
    Printer printer =
        PaperPrinter.taking(
            new ByteArrayOutputStream(),
            Optional.of(new Margins(4.2, 4.2, 4.2, 4.2)),
            MediaSizeName.ISO_A4);
    PrintFit fit = fit(printer, pdf, pages(0, 0));
    assertThat(fit).isEqualTo(new PrintFit(PrintFit.Verdict.TRUE, List.of()));
  }

  @Test
  void a_margin_that_is_too_wide_for_the_page_is_told_in_millimetres() throws Exception {
    // A bar from 10 to 200 mm across and 5 mm above the foot.
    byte[] document = barNearTheFoot();
    Printer printer =
        PaperPrinter.taking(
            new ByteArrayOutputStream(),
            Optional.of(new Margins(4, 4, 4, 12)),
            MediaSizeName.ISO_A4,
            MediaSizeName.NA_LETTER);
    PrintFit fit = fit(printer, document, pages(0, 0));
    assertThat(fit.verdict()).isEqualTo(PrintFit.Verdict.CUT);
    assertThat(fit.sentences())
        .containsExactly(
            "Front desk leaves 12.0 mm blank at the bottom edge, and page 1 is printed up to 5.0 mm"
                + " from it: 7.0 mm would be cut off. Choose a printer with narrower margins, or"
                + " save the PDF and print it elsewhere.");
  }

  @Test
  void a_paper_that_the_printer_has_not_is_named_with_its_pages() throws Exception {
    Printer printer =
        PaperPrinter.taking(
            new ByteArrayOutputStream(),
            Optional.of(new Margins(4, 4, 4, 4)),
            MediaSizeName.ISO_A4);
    byte[] document = blankPages(PDRectangle.A4, PDRectangle.A3, PDRectangle.A3);
    PrintFit fit = fit(printer, document, pages(0, 2));
    assertThat(fit.verdict()).isEqualTo(PrintFit.Verdict.NO_PAPER);
    assertThat(fit.sentences())
        .singleElement()
        .asString()
        .startsWith("Front desk has no paper of 297 × 420 mm, the size of pages 2 and 3,");
    assertThat(fit(printer, document, pages(0, 0)).verdict()).isEqualTo(PrintFit.Verdict.TRUE);
  }

  @Test
  void a_page_that_lies_across_the_sheet_is_compared_with_the_edges_where_it_comes_to_lie()
      throws Exception {
    // A bar 5 mm from the left edge of a page that is broader than high.
    ByteArrayOutputStream document = new ByteArrayOutputStream();
    try (PDDocument d = new PDDocument()) {
      PDPage page = new PDPage(new PDRectangle((float) (297 * MM), (float) (210 * MM)));
      d.addPage(page);
      try (PDPageContentStream c = new PDPageContentStream(d, page)) {
        c.addRect((float) (5 * MM), (float) (100 * MM), 20, 3);
        c.fill();
      }
      d.save(document);
    }
    List<Rectangle2D> filled = printed(document.toByteArray(), pages(0, 0)).filled(0);
    assertThat(filled)
        .as("the bar lies 5 mm above the foot of the sheet")
        .anySatisfy(
            r -> {
              assertThat(r.getHeight()).isCloseTo(20, within(0.1));
              assertThat(r.getMinY()).isCloseTo(5 * MM, within(0.3));
            });
    Printer broadFoot =
        PaperPrinter.taking(
            new ByteArrayOutputStream(),
            Optional.of(new Margins(4, 4, 4, 12)),
            MediaSizeName.ISO_A4);
    assertThat(fit(broadFoot, document.toByteArray(), pages(0, 0)).sentences())
        .singleElement()
        .asString()
        .contains("12.0 mm blank at the left edge", "7.0 mm would be cut off");
  }

  @Test
  void a_printer_that_does_not_tell_its_margins_is_not_trusted() {
    Printer printer =
        PaperPrinter.taking(new ByteArrayOutputStream(), Optional.empty(), MediaSizeName.ISO_A4);
    assertThat(fit(printer, pdf, pages(0, 0)).verdict()).isEqualTo(PrintFit.Verdict.UNSURE);
  }

  @Test
  void a_printer_that_does_not_take_the_pages_is_told_of_in_a_sentence() {
    StreamPrintService gone = PaperPrinter.postScript(new ByteArrayOutputStream());
    gone.dispose();
    assertThatThrownBy(() -> PagePrinter.print(pdf, Printer.of(gone), pages(0, 0)))
        .isInstanceOf(PagePrinter.NotPrinted.class)
        .hasMessageStartingWith(gone.getName() + " did not take the pages")
        .hasMessageEndingWith("or save the PDF and print it elsewhere.");
  }

  private static PrintFit fit(Printer printer, byte[] document, PrintOrder order) {
    try (PageImages images = PageImages.of(document)) {
      return PrintFit.of(printer, images, order);
    }
  }

  private static byte[] blankPages(PDRectangle... sizes) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (PDDocument d = new PDDocument()) {
      for (PDRectangle size : sizes) {
        d.addPage(new PDPage(size));
      }
      d.save(out);
    }
    return out.toByteArray();
  }

  private static byte[] barNearTheFoot() throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (PDDocument d = new PDDocument()) {
      PDPage page = new PDPage(PDRectangle.A4);
      d.addPage(page);
      try (PDPageContentStream c = new PDPageContentStream(d, page)) {
        c.addRect((float) (10 * MM), (float) (5 * MM), (float) (190 * MM), 3);
        c.fill();
      }
      d.save(out);
    }
    return out.toByteArray();
  }
}
