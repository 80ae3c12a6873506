package saddlewright.prescription.pdf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.ShrinkingMode;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import saddlewright.casefile.ArbitraryCases;
import saddlewright.casefile.Assessment;
import saddlewright.casefile.Case;
import saddlewright.casefile.Cautions;
import saddlewright.casefile.json.CaseStore;
import saddlewright.casefile.order.Item;
import saddlewright.casefile.order.PrescriptionDetails;
import saddlewright.chart.ArchChart;
import saddlewright.chart.GapDecision;
import saddlewright.chart.ToothFindings;
import saddlewright.chart.ToothStatus;
import saddlewright.dentition.Arch;
import saddlewright.dentition.Notation;
import saddlewright.dentition.Tooth;
import saddlewright.design.ComponentId;
import saddlewright.design.Note;
import saddlewright.design.Subject;
import saddlewright.drawing.Palette;
import saddlewright.prescription.MouthPreparations;
import saddlewright.prescription.Mouths;
import saddlewright.prescription.Preparation;
import saddlewright.prescription.Schedule;
import saddlewright.rules.Comparison;
import saddlewright.rules.Finding;
import saddlewright.rules.Profile;
import saddlewright.rules.Quantity;
import saddlewright.rules.Report;
import saddlewright.rules.Severity;
import saddlewright.rules.Source;
import saddlewright.rules.Tally;
import saddlewright.rules.Threshold;
import saddlewright.rules.Waiver;

/** The document is written, read back by a PDF reader, and measured. */
class PrescriptionPdfTest {
  private static final LocalDate DAY = LocalDate.of(2026, 11, 25);

  /** ISO 216: A4 is 210 mm by 297 mm; a point is 1/72 inch, an inch 25.4 mm. */
  private static final double A4_WIDTH = 210 * 72 / 25.4;

  private static final double A4_HEIGHT = 297 * 72 / 25.4;
  private static final double TWENTY_MM = 20 * 72 / 25.4;

  private static byte[] print(Case c) {
    return PrescriptionPdf.toBytes(Assessment.of(c), DAY);
  }

  static Stream<Path> demoCases() throws IOException {
    try (Stream<Path> files = Files.list(Path.of("demo-cases"))) {
      return files.filter(f -> f.toString().endsWith(".json")).sorted().toList().stream();
    }
  }

  @ParameterizedTest
  @MethodSource("demoCases")
  void a_demo_case_prints_on_a4_at_true_scale_with_every_component_in_words(Path file)
      throws Exception {
    Assessment a = Assessment.of(CaseStore.load(file));
    byte[] bytes = PrescriptionPdf.toBytes(a, DAY);
    try (PDDocument d = PrintedPage.read(bytes)) {
      for (PDPage p : d.getPages()) {
        assertThat(p.getMediaBox().getWidth()).isCloseTo((float) A4_WIDTH, within(0.05f));
        assertThat(p.getMediaBox().getHeight()).isCloseTo((float) A4_HEIGHT, within(0.05f));
      }
      assertThat(PrintedPage.levelLines(d.getPage(1)))
          .as("the scale bar on the design sheet")
          .anySatisfy(l -> assertThat(l).isCloseTo(TWENTY_MM, within(0.02)));
      assertThat(PrintedPage.fonts(d)).isNotEmpty().allMatch(PDFont::isEmbedded);
      assertNothingCutOff(d);
    }
    String words = PrintedPage.packed(bytes);
    for (Schedule.Line l : Schedule.of(a, Notation.FDI).lines()) {
      assertThat(words).contains(PrintedPage.packed(l.number() + l.place() + l.text()));
    }
    for (Preparation p : MouthPreparations.of(a)) {
      assertThat(words).containsIgnoringCase(PrintedPage.packed(p.target()));
    }
    for (Finding f : a.report().standing()) {
      assertThat(words).contains(PrintedPage.packed(f.sentence()));
    }
    for (String sentence : Cautions.FULL) {
      assertThat(words).contains(PrintedPage.packed(sentence));
    }
    assertThat(words)
        .contains(PrintedPage.packed(a.upper().classification().label()))
        .contains(PrintedPage.packed(a.lower().classification().label()))
        .contains(PrintedPage.packed(a.subject().prescription().text(Item.LABORATORY_NAME)));
  }

  @Test
  void the_sheet_names_the_school_and_lists_what_it_holds_otherwise() throws Exception {
    Case c = Case.blank("R-1");
    assertThat(PrintedPage.packed(print(c)))
        .contains(PrintedPage.packed("Judged by the school profile: UK teaching, version 1."));
    Profile own =
        Profile.UK_TEACHING
            .withName("Our school", "2026")
            .with(
                Quantity.LINGUAL_BAR_DEPTH,
                Threshold.of(7, Source.read("Course book, page 12"))
                    .because("our laboratory casts low bars"));
    assertThat(PrintedPage.packed(print(c.withProfile(own))))
        .contains(PrintedPage.packed("Our school, version 2026"))
        .contains(PrintedPage.packed("Our school departs from UK teaching"))
        .contains(PrintedPage.packed("Lingual depth for a lingual bar"))
        .contains(PrintedPage.packed("Course book, page 12 (read in the source)"))
        .contains(PrintedPage.packed("Our laboratory casts low bars."));
  }

  private static void assertNothingCutOff(PDDocument d) throws IOException {
    assertThat(PrintedPage.letters(d))
        .allSatisfy(
            l -> {
              assertThat(l[0]).as("left edge of a letter").isGreaterThan(14);
              assertThat(l[1]).as("right edge of a letter").isLessThan(l[3] - 14);
              assertThat(l[2]).as("base line of a letter").isBetween(14.0, l[4] - 14);
            });
  }

  @Test
  void every_foot_bears_the_caution_the_reference_and_the_page() throws Exception {
    byte[] bytes = print(Mouths.lowerMissing(36, 37));
    try (PDDocument d = PrintedPage.read(bytes)) {
      int pages = d.getNumberOfPages();
      assertThat(pages).isGreaterThan(1);
      for (int i = 1; i <= pages; i++) {
        var one = new org.apache.pdfbox.text.PDFTextStripper();
        one.setStartPage(i);
        one.setEndPage(i);
        assertThat(PrintedPage.packed(one.getText(d)))
            .contains(PrintedPage.packed(Cautions.LINE))
            .contains("T-1·Page" + i + "of" + pages);
      }
    }
  }

  @Test
  void the_same_case_and_day_give_the_same_bytes() {
    Case c = Mouths.lowerMissing(36, 37);
    assertThat(print(c)).isEqualTo(print(c));
    assertThat(PrescriptionPdf.toBytes(Assessment.of(c), DAY.plusDays(1))).isNotEqualTo(print(c));
  }

  @Test
  void the_file_says_its_title_and_language_and_is_tagged() throws Exception {
    try (PDDocument d = PrintedPage.read(print(Mouths.lowerMissing(36)))) {
      assertThat(d.getDocumentInformation().getTitle()).isEqualTo("Laboratory prescription, T-1");
      assertThat(d.getDocumentCatalog().getLanguage()).isEqualTo("en-GB");
      assertThat(d.getDocumentCatalog().getMarkInfo().isMarked()).isTrue();
      assertThat(d.getDocumentCatalog().getStructureTreeRoot().getKids()).hasSize(1);
      assertThat(d.getDocumentCatalog().getViewerPreferences().getPrintScaling())
          .as("a viewer must not fit the page to the paper")
          .isEqualTo("None");
    }
  }

  @Test
  void an_empty_case_prints_ruled_lines_to_fill_in() throws Exception {
    byte[] bytes = print(Case.blank(""));
    assertThat(PrintedPage.packed(bytes))
        .contains("Signatureoftheprescriber")
        .contains("Saddles,support,retentionandconnectors:none.")
        .contains("Missing:Casereference;Prescriber;");
    try (PDDocument d = PrintedPage.read(bytes)) {
      // Eight single-line fields and more, each a rule as wide as its column.
      List<Double> rules = PrintedPage.levelLines(d.getPage(0));
      assertThat(rules)
          .anySatisfy(
              column ->
                  assertThat(rules.stream().filter(l -> Math.abs(l - column) < 0.02).count())
                      .isGreaterThanOrEqualTo(8));
      assertNothingCutOff(d);
    }
  }

  @Test
  void an_edentulous_arch_prints() throws Exception {
    ArchChart upper = ArchChart.full(Arch.UPPER);
    for (Tooth t : Tooth.in(Arch.UPPER)) {
      upper = upper.with(t, ToothFindings.of(ToothStatus.MISSING, GapDecision.REPLACED));
    }
    assertThat(PrintedPage.packed(print(Case.blank("E").with(upper))))
        .contains("edentulousarch(completedenture)");
  }

  @Test
  void long_names_words_and_lists_flow_over_pages_and_lose_nothing() throws Exception {
    String word = "Wolfeschlegelsteinhausenbergerdorff".repeat(12);
    String paragraph = "Please ring before altering the design. ".repeat(120).strip();
    Case c =
        Mouths.lowerMissing(36, 37)
            .withIdentity("R-" + "0123456789".repeat(12), "A title " + word, "")
            .with(
                PrescriptionDetails.EMPTY
                    .with(Item.PRESCRIBER_NAME, word)
                    .with(Item.PRACTICE, paragraph)
                    .with(Item.LABORATORY_NAME, word)
                    .with(Item.DATE_ISSUED, "2026-11-02")
                    .with(Item.DATE_REQUIRED, "when the moon is full")
                    .with(Item.FRAMEWORK_ALLOY, word)
                    .with(Item.BASE_POLYMER, word)
                    .with(Item.TOOTH_MATERIAL, word)
                    .with(Item.TOOTH_SHADE, word)
                    .with(Item.ENCLOSED, paragraph)
                    .with(Item.DISINFECTED, paragraph)
                    .with(Item.SPECIAL_INSTRUCTIONS, paragraph));
    Assessment a = Assessment.of(c);
    List<Report.Entry> entries = new ArrayList<>();
    for (int i = 0; i < 60; i++) {
      Finding f =
          new Finding(
              "rule-" + i,
              Severity.SHOULD,
              Arch.LOWER,
              List.of(Subject.of(Tooth.T35)),
              "35: finding number "
                  + i
                  + " is as long as findings come, and then a little longer"
                  + " still, so that it needs two lines at least (1 against 2).",
              new Comparison("1", "2"),
              List.of());
      boolean waived = i % 3 == 0;
      entries.add(
          new Report.Entry(
              f,
              waived ? Report.State.WAIVED : Report.State.OPEN,
              waived
                  ? Optional.of(
                      new Waiver(
                          f.key(), "Agreed, see note " + i + ".", "prescriber", DAY, "1 / 2"))
                  : Optional.empty()));
    }
    byte[] bytes =
        PrescriptionPdf.toBytes(
            a.with(new Report(entries, List.of(), List.of(), new Tally(0, 0, 0, 0), List.of())),
            DAY);
    String words = PrintedPage.packed(bytes);
    assertThat(words).contains(word, "whenthemoonisfull");
    for (int i = 0; i < 60; i++) {
      assertThat(words).contains("findingnumber" + i + "is");
      if (i % 3 == 0) {
        assertThat(words)
            .contains("Acceptedbytheprescriberon25November2026:Agreed,seenote" + i + ".");
      }
    }
    String packed = PrintedPage.packed("Please ring before altering the design.");
    assertThat(words.split(packed, -1).length - 1).isEqualTo(4 * 120);
    try (PDDocument d = PrintedPage.read(bytes)) {
      assertNothingCutOff(d);
    }
  }

  @Test
  void accents_print_and_what_the_face_lacks_is_shown_as_a_square() throws Exception {
    Case c =
        Mouths.lowerMissing(36)
            .withIdentity("Ž-1", "Łódź – Ångström, Čapková: žluťoučký kůň; e\u0301té 漢 🦷", "");
    assertThat(PrintedPage.packed(print(c))).contains("Łódź–Ångström,Čapková:žluťoučkýkůň;été□□");
  }

  /** Crowns of 14 mm throughout make an arch that A4 cannot hold at true scale. */
  @Test
  void an_arch_too_large_for_the_page_gets_a_larger_page_and_is_never_shrunk() throws Exception {
    ArchChart lower = ArchChart.full(Arch.LOWER);
    for (Tooth t : Tooth.in(Arch.LOWER)) {
      lower =
          lower.with(
              t,
              Mouths.standing().withCrown(Optional.empty(), Optional.of(15.0), Optional.of(15.0)));
    }
    Case c = Case.blank("BIG").with(lower);
    c =
        c.with(
            c.lowerDesign()
                .plus(
                    new Note(
                        ComponentId.of("n"),
                        "far out",
                        150,
                        150,
                        Optional.empty(),
                        Optional.empty())));
    try (PDDocument d = PrintedPage.read(print(c))) {
      boolean bar = false;
      for (PDPage p : d.getPages()) {
        bar |= PrintedPage.levelLines(p).stream().anyMatch(l -> Math.abs(l - TWENTY_MM) < 0.02);
      }
      assertThat(bar).isTrue();
      assertNothingCutOff(d);
    }
  }

  @Test
  void other_notations_are_named_and_used() throws Exception {
    byte[] bytes =
        PrescriptionPdf.toBytes(
            Assessment.of(Mouths.lowerMissing(36)),
            PrintOptions.on(DAY).with(Notation.UNIVERSAL).with(Palette.MONO));
    assertThat(PrintedPage.packed(bytes)).contains("TeetharenumberedbytheUniversalsystem(1–32).");
  }

  @Property(tries = 50, shrinking = ShrinkingMode.OFF)
  void any_case_at_all_prints(@ForAll("cases") Case c) throws IOException {
    try (PDDocument d = PrintedPage.read(print(c))) {
      assertThat(d.getNumberOfPages()).isPositive();
      assertNothingCutOff(d);
    }
  }

  @Provide
  Arbitrary<Case> cases() {
    return ArbitraryCases.cases();
  }
}
