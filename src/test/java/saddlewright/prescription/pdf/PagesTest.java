package saddlewright.prescription.pdf;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import saddlewright.casefile.Assessment;
import saddlewright.casefile.Case;
import saddlewright.casefile.Cautions;
import saddlewright.casefile.json.CaseStore;
import saddlewright.casefile.order.Answer;
import saddlewright.casefile.order.DocumentKind;
import saddlewright.casefile.order.IssuedRevision;
import saddlewright.casefile.order.Item;
import saddlewright.casefile.order.PatientIdentity;
import saddlewright.casefile.order.Regime;
import saddlewright.dentition.Arch;
import saddlewright.prescription.Dates;
import saddlewright.prescription.DesignStatement;
import saddlewright.prescription.FormField;
import saddlewright.prescription.Level;
import saddlewright.prescription.Mouths;
import saddlewright.prescription.Revision;
import saddlewright.prescription.Schedule;

/** What stands on the pages of a prescription and of a coursework sheet, read back. */
class PagesTest {
  private static final LocalDate DAY = LocalDate.of(2026, 11, 25);

  /** Fields of the form that stand on paper under other words than their title. */
  private static final java.util.Map<String, String> ELSEWHERE =
      java.util.Map.ofEntries(
          java.util.Map.entry("document-kind", "Laboratory prescription"),
          java.util.Map.entry("case-reference", "HTC-"),
          java.util.Map.entry("candidate-number", "Candidate number"),
          java.util.Map.entry("patient-name", "Patient"),
          java.util.Map.entry("patient-born", "Patient"),
          java.util.Map.entry("patient-record", "Patient"),
          java.util.Map.entry("revision", "Content hash"),
          java.util.Map.entry("arches-and-notation", "Teeth are numbered by"),
          java.util.Map.entry("teeth", "Missing, replaced"),
          java.util.Map.entry("class-upper", "Class, upper"),
          java.util.Map.entry("class-lower", "Class, lower"),
          java.util.Map.entry("class-reason", "Class, lower"),
          java.util.Map.entry("design-drawing", "Drawn at true scale"),
          java.util.Map.entry("component-schedule", "Component schedule"),
          java.util.Map.entry("stage-plan", "Stages"),
          java.util.Map.entry("preparations", "Mouth preparations"),
          java.util.Map.entry("enclosed", "Enclosures"),
          java.util.Map.entry("disinfected", "Disinfection"),
          java.util.Map.entry("countersigned-on", "Countersign"),
          java.util.Map.entry("countersigned-by", "Countersign"),
          java.util.Map.entry("laboratory-return", "Laboratory return"),
          java.util.Map.entry("open-findings", "Unresolved findings"));

  static Stream<Arguments> demoCasesOnBothPapers() throws IOException {
    try (Stream<Path> files = Files.list(Path.of("demo-cases"))) {
      return files
          .filter(f -> f.toString().endsWith(".json"))
          .sorted()
          .flatMap(f -> Stream.of(Paper.values()).map(p -> Arguments.of(f, p)))
          .toList()
          .stream();
    }
  }

  private static byte[] print(Case c) {
    return PrescriptionPdf.toBytes(Assessment.of(c), DAY);
  }

  private static String packed(String words) {
    return PrintedPage.packed(words);
  }

  /** The thirty-four fields of a work authorisation; the four audited variables (Lynch 2003). */
  @ParameterizedTest
  @MethodSource("demoCasesOnBothPapers")
  void every_field_of_the_form_and_every_audited_variable_is_spoken_of(Path file, Paper paper)
      throws Exception {
    Assessment a = Assessment.of(CaseStore.load(file));
    byte[] bytes = PrescriptionPdf.toBytes(a, PrintOptions.on(DAY).with(paper));
    String words = PrintedPage.packed(bytes);
    var details = a.subject().prescription();
    for (FormField f : FormField.ALL) {
      boolean idle =
          f.level(details) == Level.OPTIONAL && details.kind() == DocumentKind.COURSEWORK;
      if (f.level(details) == Level.NOT_ASKED || idle || f.key().startsWith("stage")) {
        continue;
      }
      String shown =
          f.key().equals("document-kind")
              ? details.kind().title()
              : ELSEWHERE.getOrDefault(f.key(), f.title());
      assertThat(words).as(f.number() + " " + f.key()).contains(packed(shown));
      f.item()
          .map(details::text)
          .filter(t -> !t.isBlank())
          .ifPresent(t -> assertThat(words).as(f.key()).contains(packed(Dates.words(t))));
    }
    Schedule schedule = Schedule.of(a, saddlewright.dentition.Notation.FDI);
    for (Arch arch : Arch.values()) {
      for (DesignStatement v : DesignStatement.of(a.arch(arch), schedule)) {
        assertThat(words).contains(packed(v.category().title() + v.words()));
      }
    }
    for (Schedule.Line l : schedule.lines()) {
      assertThat(words)
          .as(l.number() + " " + l.text())
          .contains(packed(l.number() + l.place() + l.text()));
    }
  }

  @ParameterizedTest
  @MethodSource("demoCasesOnBothPapers")
  void no_words_lie_over_others_and_none_outside_the_margins(Path file, Paper paper)
      throws Exception {
    byte[] bytes =
        PrescriptionPdf.toBytes(
            Assessment.of(CaseStore.load(file)), PrintOptions.on(DAY).with(paper));
    assertClearOfEachOther(bytes);
  }

  @Test
  void long_answers_lie_over_nothing() throws Exception {
    Case c = Mouths.lowerMissing(36, 37);
    String word = "Wolfeschlegelsteinhausenbergerdorff".repeat(3);
    for (Item i : Item.values()) {
      String text =
          i.form() == Item.Form.LINES ? "Please ring before altering it. ".repeat(30) : word;
      c = c.with(c.prescription().with(i, text.strip()));
    }
    for (Paper paper : Paper.values()) {
      assertClearOfEachOther(
          PrescriptionPdf.toBytes(Assessment.of(c), PrintOptions.on(DAY).with(paper)));
    }
  }

  /** Letters of a page as boxes of a letter's body; drawings may set letters closer. */
  private static void assertClearOfEachOther(byte[] bytes) throws IOException {
    try (PDDocument d = PrintedPage.read(bytes)) {
      for (int page = 1; page <= d.getNumberOfPages(); page++) {
        List<double[]> runs = runs(d, page);
        double width = d.getPage(page - 1).getMediaBox().getWidth();
        double height = d.getPage(page - 1).getMediaBox().getHeight();
        for (int i = 0; i < runs.size(); i++) {
          double[] r = runs.get(i);
          assertThat(r[0]).as("left edge on page " + page).isGreaterThan(14);
          assertThat(r[2]).as("right edge on page " + page).isLessThan(width - 14);
          assertThat(r[1]).as("upper edge on page " + page).isGreaterThan(14);
          assertThat(r[3]).as("lower edge on page " + page).isLessThan(height - 14);
          for (int j = i + 1; j < runs.size(); j++) {
            double[] o = runs.get(j);
            boolean apart =
                r[2] <= o[0] + 0.2 || o[2] <= r[0] + 0.2 || r[3] <= o[1] || o[3] <= r[1];
            if (!apart) {
              throw new AssertionError(
                  "words lie over others on page " + page + " at " + r[0] + ", " + r[1]);
            }
          }
        }
      }
    }
  }

  /**
   * The boxes of the level runs of words of a page, from the height of small letters above the base
   * line to the base line, for type larger than that of the drawing.
   */
  private static List<double[]> runs(PDDocument d, int page) throws IOException {
    List<double[]> out = new ArrayList<>();
    PDFTextStripper reader =
        new PDFTextStripper() {
          private double[] run;
          private double end = Double.NaN;

          @Override
          protected void processTextPosition(TextPosition p) {
            if (Math.abs(p.getTextMatrix().getShearY()) > 1e-3) {
              return; // A stamp across the page or along its edge.
            }
            double x = p.getXDirAdj();
            double y = p.getYDirAdj();
            boolean on = run != null && run[3] == y && Math.abs(x - end) < 0.6;
            if (!on) {
              run = new double[] {x, y - 0.5 * p.getFontSizeInPt(), x, y};
              out.add(run);
            }
            end = x + p.getWidthDirAdj();
            run[2] = end;
          }
        };
    reader.setStartPage(page);
    reader.setEndPage(page);
    reader.getText(d);
    return out;
  }

  @Test
  void every_head_bears_kind_reference_revision_and_hash() throws Exception {
    Case c = Mouths.lowerMissing(36, 37);
    String hash = Revision.of(c).hash().substring(0, 8);
    try (PDDocument d = PrintedPage.read(print(c))) {
      for (int i = 1; i <= d.getNumberOfPages(); i++) {
        PDFTextStripper one = new PDFTextStripper();
        one.setStartPage(i);
        one.setEndPage(i);
        assertThat(packed(one.getText(d)))
            .contains("Laboratoryprescription·T-1Revision1,draft·" + hash)
            .contains(packed(Cautions.LINE))
            .contains("TeethbyISO3950(FDI)")
            .contains("Page" + i + "of" + d.getNumberOfPages());
      }
    }
  }

  @Test
  void a_later_revision_names_the_one_that_it_replaces() throws Exception {
    Case c = Mouths.lowerMissing(36, 37);
    c =
        c.with(
            c.prescription()
                .withIssued(
                    List.of(new IssuedRevision(1, LocalDate.of(2026, 11, 3), "0123456789abcdef"))));
    assertThat(PrintedPage.packed(print(c)))
        .contains("Revision2–draft,notissued")
        .contains("Replacesrevision1of3November2026(0123456789abcdef)");
  }

  @Test
  void what_is_none_or_follows_is_said_and_what_is_blank_is_named_as_missing() throws Exception {
    Case c = Mouths.lowerMissing(36, 37);
    c =
        c.with(
            c.prescription()
                .with(Item.ALLERGIES, Answer.NONE)
                .with(Item.TOOTH_MOULD, Answer.NOT_APPLICABLE)
                .with(Item.TOOTH_SHADE, Answer.toFollow(Optional.of(LocalDate.of(2026, 12, 4)))));
    assertThat(PrintedPage.packed(print(c)))
        .contains("Knownallergiestomaterialsnone")
        .contains("Mouldoftheteethnotapplicable")
        .contains("Toothshadetofollowby4December2026")
        .contains("Frameworkmaterialandtyperequired")
        .containsPattern("Missing:[^.]*Frameworkmaterialandtype");
  }

  /** Florida four years; UK five, EU ten (years of the sources of field 31). */
  @Test
  void the_document_says_how_long_it_is_kept() throws Exception {
    Case c = Mouths.lowerMissing(36, 37);
    c = c.with(c.prescription().with(Item.DATE_ISSUED, "2026-11-02"));
    assertThat(PrintedPage.packed(print(c.with(c.prescription().withRegime(Regime.US)))))
        .contains("Keepuntilatleastuntil2November2030(4years");
    assertThat(PrintedPage.packed(print(c.with(c.prescription().withRegime(Regime.UK)))))
        .contains("Keepuntilatleastuntil2November2031(5years");
    assertThat(PrintedPage.packed(print(c.with(c.prescription().withRegime(Regime.EU)))))
        .contains("Keepuntilatleastuntil2November2036(10years");
  }

  @Test
  void the_patient_is_named_on_a_page_of_its_own_and_nowhere_else() throws Exception {
    Case c = Mouths.lowerMissing(36, 37);
    PatientIdentity who =
        new PatientIdentity("T-1", "Quillfeather", Optional.of(LocalDate.of(1950, 1, 2)), "R-77");
    byte[] bytes =
        PrescriptionPdf.toBytes(
            Assessment.of(c), PrintOptions.on(DAY).withPatient(Optional.of(who)));
    try (PDDocument d = PrintedPage.read(bytes)) {
      List<String> named = new ArrayList<>();
      for (int i = 1; i <= d.getNumberOfPages(); i++) {
        PDFTextStripper one = new PDFTextStripper();
        one.setStartPage(i);
        one.setEndPage(i);
        String words = packed(one.getText(d));
        if (words.contains("Quillfeather") || words.contains("R-77")) {
          named.add(words);
        }
      }
      assertThat(named).hasSize(1);
      assertThat(named.get(0))
          .contains("Patientidentityslip:keepapart", "T-1", "2January1950")
          .doesNotContain("Findings", "Cautions", "Signature");
    }
    assertThat(PrintedPage.packed(print(c))).doesNotContain("identityslip:keepapart");
  }

  @Test
  void coursework_cannot_be_taken_for_a_prescription() throws Exception {
    Case c = CaseStore.load(Path.of("demo-cases/06-lower-class-3-third-molar.json"));
    byte[] bytes = print(c);
    String words = PrintedPage.packed(bytes);
    assertThat(words)
        .contains("Candidatenumber:C-2047")
        .contains("Justification")
        .contains("Thedesignstepbystep:lowerarch")
        .contains("scale1:2")
        .doesNotContain("Laboratoryprescription", "Laboratoryreturn", "Labelstocutout")
        .doesNotContain("Signatureoftheprescriber", "Prescriber", "Disinfection");
    try (PDDocument d = PrintedPage.read(bytes)) {
      for (int i = 1; i <= d.getNumberOfPages(); i++) {
        assertThat(packed(String.join("", turned(d, i))))
            .as("stamps on page " + i)
            .contains(packed(Stamp.EXERCISE.repeat(7)));
        PDFTextStripper one = new PDFTextStripper();
        one.setStartPage(i);
        one.setEndPage(i);
        assertThat(packed(one.getText(d))).contains("Coursework–notaprescription");
      }
    }
    assertThat(PrintedPage.packed(print(Mouths.lowerMissing(36))))
        .doesNotContain(packed(Stamp.EXERCISE));
  }

  /** Letters that do not run level, in the order of the content. */
  private static List<String> turned(PDDocument d, int page) throws IOException {
    List<String> out = new ArrayList<>();
    PDFTextStripper reader =
        new PDFTextStripper() {
          @Override
          protected void processTextPosition(TextPosition p) {
            if (Math.abs(p.getTextMatrix().getShearY()) > 1e-3) {
              out.add(p.getUnicode());
            }
          }
        };
    reader.setStartPage(page);
    reader.setEndPage(page);
    reader.getText(d);
    return out;
  }

  @Test
  void words_of_justification_stand_beside_their_component() throws Exception {
    Case c = CaseStore.load(Path.of("demo-cases/06-lower-class-3-third-molar.json"));
    String id = c.lowerDesign().components().get(0).id().toString();
    c =
        c.with(
            c.prescription()
                .with(
                    c.prescription()
                        .coursework()
                        .withJustification("lower/" + id, "Because the ridge is firm")));
    assertThat(PrintedPage.packed(print(c))).contains("Becausetheridgeisfirm");
  }
}
