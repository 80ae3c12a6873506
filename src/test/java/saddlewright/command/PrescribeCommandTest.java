package saddlewright.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import saddlewright.casefile.Case;
import saddlewright.casefile.json.CaseStore;
import saddlewright.casefile.json.PatientStore;
import saddlewright.casefile.order.Item;
import saddlewright.casefile.order.PatientIdentity;
import saddlewright.casefile.order.PrescriptionDetails;
import saddlewright.casefile.order.Regime;

/** The prescribe and schedule commands. */
class PrescribeCommandTest {
  private static final Path CASE = Path.of("demo-cases", "01-lower-class-1-rpi.json");

  @TempDir Path folder;

  @Test
  void writes_a4_pages() throws Exception {
    Path out = folder.resolve("p.pdf");
    assertThat(Run.of("prescribe", CASE, "--out", out)).isEqualTo(new Run(0, "", ""));
    try (var pdf = Loader.loadPDF(out.toFile())) {
      // ISO 216: A4 is 210 mm by 297 mm, at 72 points to 25.4 mm.
      assertThat(pdf.getPage(0).getMediaBox().getWidth()).isCloseTo(595.28f, within());
      assertThat(pdf.getPage(0).getMediaBox().getHeight()).isCloseTo(841.89f, within());
    }
  }

  private static org.assertj.core.data.Offset<Float> within() {
    return org.assertj.core.api.Assertions.within(0.05f);
  }

  @Test
  void the_same_case_and_date_give_the_same_bytes() {
    Path one = folder.resolve("1.pdf");
    Path two = folder.resolve("2.pdf");
    Run.of("prescribe", CASE, "--out", one, "--date", "2026-11-02");
    Run.of("prescribe", CASE, "--out", two, "--date", "2026-11-02");
    assertThat(one).hasSameBinaryContentAs(two);
  }

  @Test
  void an_existing_file_survives_a_case_that_cannot_be_read() throws Exception {
    Path out = Files.writeString(folder.resolve("p.pdf"), "old");
    Path broken = Files.writeString(folder.resolve("broken.json"), "[]");
    Run run = Run.of("prescribe", broken, "--out", out);
    assertThat(run.code()).isEqualTo(2);
    assertThat(run.err()).contains("broken.json").doesNotContain("\tat ");
    assertThat(out).hasContent("old");
  }

  @Test
  void says_in_plain_words_that_a_date_is_none() {
    Path out = folder.resolve("p.pdf");
    Run run = Run.of("prescribe", CASE, "--out", out, "--date", "2026-13-40");
    assertThat(run.code()).isEqualTo(2);
    assertThat(run.err()).contains("\"2026-13-40\" is no date").doesNotContain("java");
    assertThat(out).doesNotExist();
  }

  @Test
  void never_writes_over_the_case() throws Exception {
    Path file = Files.copy(CASE, folder.resolve("case.pdf"));
    assertThat(Run.of("prescribe", file, "--out", file).code()).isEqualTo(2);
    assertThat(file).hasSameBinaryContentAs(CASE);
  }

  @Test
  void every_command_takes_the_prescription_where_it_takes_the_case() {
    Path pdf = folder.resolve("p.pdf");
    Run.of("prescribe", CASE, "--out", pdf, "--date", "2026-11-02");
    assertThat(Run.of("schedule", pdf)).isEqualTo(Run.of("schedule", CASE));
    Run checked = Run.of("check", CASE);
    assertThat(Run.of("check", pdf))
        .isEqualTo(
            new Run(checked.code(), checked.out().replace(CASE.toString(), pdf.toString()), ""));
    Path svg = folder.resolve("1.svg");
    Path same = folder.resolve("2.svg");
    Run.of("draw", CASE, "--out", svg);
    assertThat(Run.of("draw", pdf, "--out", same)).isEqualTo(new Run(0, "", ""));
    assertThat(same).hasSameBinaryContentAs(svg);
    Path again = folder.resolve("again.pdf");
    Run.of("prescribe", pdf, "--out", again, "--date", "2026-11-02");
    assertThat(again).hasSameBinaryContentAs(pdf);
    assertThat(Run.of("prescribe", pdf, "--out", pdf).code()).isEqualTo(2);
    assertThat(pdf).hasSameBinaryContentAs(again);
  }

  @Test
  void says_on_one_line_which_characters_stand_as_squares_and_where() throws Exception {
    Path file = folder.resolve("c.json");
    CaseStore.save(
        Case.blank("R-1")
            .withIdentity("R-1", "山 and 山", "")
            .with(PrescriptionDetails.EMPTY.with(Item.PRESCRIBER_NAME, "山 🦷")),
        file);
    Path pdf = folder.resolve("p.pdf");
    Run run = Run.of("prescribe", file, "--out", pdf);
    assertThat(run.code()).isZero();
    assertThat(run.err())
        .isEqualToIgnoringNewLines(
            pdf
                + ": These characters cannot be printed and stand as squares: 山 U+5C71 in Title and"
                + " Prescriber; 🦷 U+1F9B7 in Prescriber. Write them in by hand.");
  }

  @Test
  void refuses_another_kind_of_file() {
    assertThat(Run.of("prescribe", CASE, "--out", folder.resolve("p.doc")).err())
        .isEqualToIgnoringNewLines(
            "--out "
                + folder.resolve("p.doc")
                + ": the name must end in .pdf."
                + " See saddlewright prescribe --help.");
  }

  @Test
  void the_schedule_names_every_component_of_the_case() {
    Run run = Run.of("schedule", CASE);
    assertThat(run.code()).isZero();
    assertThat(run.out())
        .contains("LOWER ARCH")
        .contains("Free-end saddle")
        .contains("Mesial occlusal rest")
        .contains("I-bar")
        .contains("Lingual bar")
        .contains("Indirect retainer");
  }

  @Test
  void the_schedule_is_printed_with_reasons_on_request() {
    Run plain = Run.of("schedule", CASE);
    Run run = Run.of("schedule", CASE, "--reasons");
    assertThat(run.code()).isZero();
    assertThat(run.out())
        .startsWith(plain.out())
        .contains("REASONS FOR EACH COMPONENT")
        .contains("Mesial rest on 35");
    assertThat(plain.out()).doesNotContain("REASONS");
  }

  @Test
  void a_prescription_is_marked_with_its_findings_on_request() throws Exception {
    Path faulty = Path.of("demo-cases", "10-fault-lower-class-2.json");
    Path plain = folder.resolve("plain.pdf");
    Path marked = folder.resolve("marked.pdf");
    assertThat(Run.of("prescribe", faulty, "--out", plain).code()).isZero();
    assertThat(Run.of("prescribe", faulty, "--out", marked, "--findings").code()).isZero();
    assertThat(Files.size(marked)).isGreaterThan(Files.size(plain));
  }

  @Test
  void issuing_writes_the_document_and_then_records_the_revision_in_the_case() throws Exception {
    Path file = Files.copy(CASE, folder.resolve("case.json"));
    Run run = Run.of("prescribe", file, "--out", folder, "--issue", "--date", "2026-11-03");
    assertThat(run.err()).isEmpty();
    assertThat(run.code()).isZero();
    Path pdf = folder.resolve("HTC-0101-revision-1.pdf");
    assertThat(run.out())
        .startsWith(pdf + ": Revision 1, issued 3 November 2026 · ")
        .contains("Signed by Dr A. Wainfleet");
    assertThat(pdf).exists();
    assertThat(CaseStore.load(file).prescription().issued())
        .singleElement()
        .satisfies(r -> assertThat(r.on()).isEqualTo(LocalDate.of(2026, 11, 3)));

    assertThat(words(pdf))
        .contains("Revision 1")
        .doesNotContain("draft, not issued", "Revision 1, draft");

    byte[] first = Files.readAllBytes(pdf);
    byte[] recorded = Files.readAllBytes(file);
    Run again = Run.of("prescribe", file, "--out", folder, "--issue", "--date", "2026-11-20");
    assertThat(again.out()).contains("written once more; nothing has changed since");
    assertThat(pdf).as("the same revision is the same document").hasBinaryContent(first);
    assertThat(file).hasBinaryContent(recorded);
  }

  @Test
  void an_incomplete_case_is_issued_only_when_asked_to_and_says_what_is_missing() throws Exception {
    Case c = CaseStore.load(CASE);
    Path file = folder.resolve("case.json");
    CaseStore.save(c.with(c.prescription().with(Item.TOOTH_SHADE, "")), file);
    byte[] before = Files.readAllBytes(file);
    Path pdf = folder.resolve("p.pdf");

    Run refused = Run.of("prescribe", file, "--out", pdf, "--issue");
    assertThat(refused.code()).isEqualTo(1);
    assertThat(refused.err().lines())
        .containsExactly(
            file + ": not issued, since one thing that must be filled in is missing:",
            "  Tooth shade: not filled in.",
            "Fill them in, or issue it all the same with --incomplete.");
    assertThat(pdf).doesNotExist();
    assertThat(file).hasBinaryContent(before);

    assertThat(Run.of("prescribe", file, "--out", pdf, "--issue", "--incomplete").code()).isZero();
    assertThat(pdf).exists();
    assertThat(CaseStore.load(file).prescription().issued()).hasSize(1);
  }

  @Test
  void nothing_is_recorded_when_the_document_cannot_be_written() throws Exception {
    Path file = Files.copy(CASE, folder.resolve("case.json"));
    Path nowhere = folder.resolve("nowhere").resolve("p.pdf");
    Run run = Run.of("prescribe", file, "--out", nowhere, "--issue");
    assertThat(run.code()).isEqualTo(2);
    assertThat(run.err()).startsWith("p.pdf was not saved: the folder");
    assertThat(file).hasSameBinaryContentAs(CASE);
  }

  @Test
  void the_patient_is_named_where_the_regime_asks_for_it_and_nowhere_else() throws Exception {
    Case c = CaseStore.load(CASE);
    Path file = folder.resolve("case.json");
    PatientStore.save(
        new PatientIdentity(c.reference(), "Ada Probe", Optional.empty(), "R-1"),
        PatientStore.beside(file));
    for (Regime regime : List.of(Regime.TEACHING, Regime.UK)) {
      CaseStore.save(c.with(c.prescription().withRegime(regime)), file);
      Path pdf = folder.resolve(regime + ".pdf");
      assertThat(Run.of("prescribe", file, "--out", pdf).code()).isZero();
      assertThat(words(pdf).contains("Ada Probe")).as(regime.name()).isEqualTo(regime == Regime.UK);
    }
  }

  @Test
  void a_draft_leaves_the_case_as_it_is() throws Exception {
    Path file = Files.copy(CASE, folder.resolve("case.json"));
    assertThat(Run.of("prescribe", file, "--out", folder)).isEqualTo(new Run(0, "", ""));
    assertThat(words(folder.resolve("HTC-0101-revision-1-draft.pdf")))
        .contains("Revision 1, draft");
    assertThat(file).hasSameBinaryContentAs(CASE);
  }

  @Test
  void a_document_is_not_issued_since_it_records_nothing() {
    Path pdf = folder.resolve("p.pdf");
    Run.of("prescribe", CASE, "--out", pdf);
    Run run = Run.of("prescribe", pdf, "--out", folder.resolve("q.pdf"), "--issue");
    assertThat(run.code()).isEqualTo(2);
    assertThat(run.err()).contains("p.pdf is a document", "save the case");
    assertThat(folder.resolve("q.pdf")).doesNotExist();
  }

  private static String words(Path pdf) throws Exception {
    try (var d = Loader.loadPDF(pdf.toFile())) {
      return new PDFTextStripper().getText(d);
    }
  }
}
