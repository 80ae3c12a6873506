package saddlewright.prescription.pdf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSObject;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import saddlewright.casefile.Assessment;
import saddlewright.casefile.Case;
import saddlewright.casefile.json.CaseStore;
import saddlewright.casefile.order.DocumentKind;
import saddlewright.casefile.order.Item;
import saddlewright.dentition.Arch;
import saddlewright.dentition.Notation;
import saddlewright.dentition.Tooth;
import saddlewright.design.Subject;
import saddlewright.drawing.Palette;
import saddlewright.prescription.FindingSign;
import saddlewright.prescription.Mouths;
import saddlewright.prescription.Schedule;
import saddlewright.prescription.pdf.reading.CaseDocument;
import saddlewright.rules.Comparison;
import saddlewright.rules.Finding;
import saddlewright.rules.Report;
import saddlewright.rules.Severity;
import saddlewright.rules.Tally;

/**
 * Documents are judged by veraPDF against PDF/A-3a (ISO 19005-3) and PDF/UA-1 (ISO 14289-1); spoilt
 * ones must fail by the clause that they break.
 */
class ConformanceTest {
  private static final LocalDate DAY = LocalDate.of(2026, 11, 25);
  private static byte[] sound;

  @BeforeAll
  static void print() {
    sound = PrescriptionPdf.toBytes(Assessment.of(Mouths.lowerMissing(36, 37)), DAY);
  }

  private static void assertConforms(byte[] pdf) throws Exception {
    for (Validator v : Validator.values()) {
      assertThat(v.brokenClauses(pdf)).as(v.name()).isEmpty();
    }
  }

  static Stream<Path> demoCases() throws IOException {
    try (Stream<Path> files = Files.list(Path.of("demo-cases"))) {
      return files.filter(f -> f.toString().endsWith(".json")).sorted().toList().stream();
    }
  }

  @ParameterizedTest
  @MethodSource("demoCases")
  void a_demo_case_keeps_both_standards_on_either_paper(Path file) throws Exception {
    Assessment a = Assessment.of(CaseStore.load(file));
    for (Paper paper : Paper.values()) {
      assertConforms(PrescriptionPdf.toBytes(a, PrintOptions.on(DAY).with(paper)));
    }
  }

  @Test
  void so_does_a_case_with_signs_in_black_and_white_and_other_numbers() throws Exception {
    Assessment a = Assessment.of(CaseStore.load(Path.of("demo-cases/10-fault-lower-class-2.json")));
    assertConforms(
        PrescriptionPdf.toBytes(
            a,
            PrintOptions.on(DAY)
                .with(Notation.UNIVERSAL)
                .with(Palette.MONO)
                .withSigns(FindingSign.callouts(a.report()))));
  }

  @Test
  void so_does_a_case_in_which_nothing_is_filled_in() throws Exception {
    assertConforms(PrescriptionPdf.toBytes(Assessment.of(Case.blank("")), DAY));
  }

  @Test
  void so_does_a_case_with_long_names_accents_and_characters_that_no_face_has() throws Exception {
    Case c =
        Mouths.lowerMissing(36, 37)
            .withIdentity(
                "Ž-1 <&> \"" + "0123456789".repeat(12),
                "Łódź, e\u0301té, Ἀθῆναι, Чехов, \u0001\uFFFE\uD800 漢 🦷 "
                    + "Wolfeschlegelsteinhausenbergerdorff".repeat(12),
                "");
    assertConforms(PrescriptionPdf.toBytes(Assessment.of(c), DAY));
  }

  @Test
  void so_does_a_case_in_scripts_that_turn_and_join_and_its_words_are_there_as_written()
      throws Exception {
    List<String> written = List.of("R-עברית-7", "مختبر الأسنان (A) 12", "Հայերեն ქართული ລາວ");
    Case c = Mouths.lowerMissing(36).withIdentity(written.get(0), written.get(1), "");
    c = c.with(c.prescription().with(Item.LABORATORY_NAME, written.get(2)));
    byte[] pdf = PrescriptionPdf.toBytes(Assessment.of(c), DAY);
    assertConforms(pdf);
    try (PDDocument d = PrintedPage.read(pdf)) {
      COSDictionary spans =
          d.getPage(0).getResources().getCOSObject().getCOSDictionary(COSName.PROPERTIES);
      List<String> said = new ArrayList<>();
      for (COSName name : spans.keySet()) {
        said.add(spans.getCOSDictionary(name).getString(COSName.ACTUAL_TEXT));
      }
      assertThat(said).contains(written.get(0), written.get(1));
    }
    assertThat(PrintedPage.packed(pdf)).contains(PrintedPage.packed(written.get(2)));
  }

  @Test
  void so_does_a_case_with_sixty_findings() throws Exception {
    Assessment a = Assessment.of(Mouths.lowerMissing(36, 37));
    List<Report.Entry> entries = new ArrayList<>();
    for (int i = 0; i < 60; i++) {
      entries.add(
          new Report.Entry(
              new Finding(
                  "rule-" + i,
                  Severity.SHOULD,
                  Arch.LOWER,
                  List.of(Subject.of(Tooth.T35)),
                  "35: finding number " + i + " (1 against 2).",
                  new Comparison("1", "2"),
                  List.of()),
              Report.State.OPEN,
              Optional.empty()));
    }
    assertConforms(
        PrescriptionPdf.toBytes(
            a.with(new Report(entries, List.of(), List.of(), new Tally(0, 0, 0, 0), List.of())),
            DAY));
  }

  @Test
  void so_does_sealed_coursework_which_has_no_case_inside() throws Exception {
    Case c = Mouths.lowerMissing(36);
    var sealed =
        c.prescription()
            .withKind(DocumentKind.COURSEWORK)
            .with(c.prescription().coursework().withSealed(true));
    byte[] pdf = PrescriptionPdf.toBytes(Assessment.of(c.with(sealed)), DAY);
    assertConforms(pdf);
    assertThatThrownBy(() -> CaseDocument.fromPdf(pdf, "p.pdf"))
        .hasMessageContaining("a PDF without a case in it");
    byte[] prescription =
        PrescriptionPdf.toBytes(
            Assessment.of(c.with(sealed.withKind(DocumentKind.PRESCRIPTION))), DAY);
    assertThat(CaseDocument.fromPdf(prescription, "p.pdf").reference()).isEqualTo(c.reference());
  }

  @Test
  void the_drawing_says_in_words_what_the_schedule_says_and_where_it_lies() throws Exception {
    Assessment a = Assessment.of(CaseStore.load(Path.of("demo-cases/01-lower-class-1-rpi.json")));
    try (PDDocument d = PrintedPage.read(PrescriptionPdf.toBytes(a, DAY))) {
      List<COSDictionary> figures = elements(d, "Figure");
      assertThat(figures).hasSize(1);
      for (Schedule.Line l : Schedule.of(a, Notation.FDI).lines()) {
        assertThat(figures.get(0).getString(COSName.ALT))
            .contains("no. " + l.number() + ", " + l.place() + ", " + l.text());
      }
      COSDictionary attributes = (COSDictionary) figures.get(0).getDictionaryObject(COSName.A);
      assertThat(attributes.getCOSArray(COSName.BBOX).toFloatArray())
          .hasSize(4)
          .satisfies(
              box -> {
                assertThat(box[2] - box[0]).isGreaterThan(60 * 72 / 25.4f);
                assertThat(box[3]).isLessThan(842);
              });
    }
  }

  // What follows must fail: a validator that passes everything would prove nothing.

  /** Changes a document that conforms. */
  private interface Spoiling {
    void spoil(PDDocument d) throws IOException;
  }

  private static byte[] spoilt(Spoiling spoiling) throws IOException {
    try (PDDocument d = PrintedPage.read(sound)) {
      spoiling.spoil(d);
      ByteArrayOutputStream out = new ByteArrayOutputStream();
      d.save(out);
      return out.toByteArray();
    }
  }

  private static void assertBreaks(Validator v, String clause, Spoiling spoiling) throws Exception {
    assertThat(v.brokenClauses(spoilt(spoiling)))
        .as("what veraPDF finds by " + v)
        .isNotEmpty()
        .allSatisfy(found -> assertThat(found).startsWith(clause + " test"));
  }

  @Test
  void saving_it_anew_spoils_nothing() throws Exception {
    assertConforms(spoilt(d -> {}));
  }

  @Test
  void a_drawing_without_words_is_no_pdf_ua() throws Exception {
    assertBreaks(
        Validator.PDF_UA_1,
        "7.3",
        d -> elements(d, "Figure").forEach(f -> f.removeItem(COSName.ALT)));
  }

  @Test
  void words_of_no_language_are_no_pdf_ua() throws Exception {
    assertBreaks(
        Validator.PDF_UA_1,
        "7.2",
        d -> d.getDocumentCatalog().getCOSObject().removeItem(COSName.LANG));
  }

  @Test
  void a_table_head_without_scope_is_no_pdf_ua() throws Exception {
    assertBreaks(
        Validator.PDF_UA_1, "7.5", d -> elements(d, "TH").forEach(h -> h.removeItem(COSName.A)));
  }

  @Test
  void a_document_without_structure_is_no_pdf_a_3a() throws Exception {
    assertThat(
            Validator.PDF_A_3A.brokenClauses(
                spoilt(d -> d.getDocumentCatalog().setStructureTreeRoot(null))))
        .anyMatch(f -> f.startsWith("6.7.3"));
  }

  @Test
  void colours_of_no_meaning_are_no_pdf_a() throws Exception {
    assertThat(
            Validator.PDF_A_3A.brokenClauses(
                spoilt(
                    d -> d.getDocumentCatalog().getCOSObject().removeItem(COSName.OUTPUT_INTENTS))))
        .anyMatch(f -> f.startsWith("6.2.4.3 "));
  }

  @Test
  void an_attachment_of_no_relation_is_no_pdf_a() throws Exception {
    assertBreaks(
        Validator.PDF_A_3A,
        "6.8",
        d ->
            d.getDocumentCatalog()
                .getNames()
                .getEmbeddedFiles()
                .getNames()
                .get("case.json")
                .getCOSObject()
                .removeItem(COSName.getPDFName("AFRelationship")));
  }

  @Test
  void a_face_that_is_not_embedded_is_no_pdf_a() throws Exception {
    assertThat(
            Validator.PDF_A_3A.brokenClauses(
                spoilt(
                    d ->
                        dictionaries(d, e -> e.containsKey(COSName.FONT_FILE2))
                            .forEach(e -> e.removeItem(COSName.FONT_FILE2)))))
        .anyMatch(f -> f.startsWith("6.2.11.4.1"));
  }

  private static List<COSDictionary> elements(PDDocument d, String type) {
    return dictionaries(d, e -> type.equals(e.getNameAsString(COSName.S)));
  }

  /** All dictionaries of a kind in the document. */
  private static List<COSDictionary> dictionaries(PDDocument d, Predicate<COSDictionary> wanted) {
    List<COSDictionary> out = new ArrayList<>();
    for (var key : d.getDocument().getXrefTable().keySet()) {
      COSObject object = d.getDocument().getObjectFromPool(key);
      collect(object.getObject(), wanted, out);
    }
    return out;
  }

  private static void collect(
      COSBase value, Predicate<COSDictionary> wanted, List<COSDictionary> out) {
    if (value instanceof COSDictionary e) {
      if (wanted.test(e)) {
        out.add(e);
      }
      e.getValues().forEach(v -> collect(v, wanted, out));
    } else if (value instanceof COSArray a) {
      a.forEach(v -> collect(v, wanted, out));
    }
  }
}
