package saddlewright.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import saddlewright.casefile.Assessment;
import saddlewright.casefile.json.CaseStore;
import saddlewright.casefile.json.PatientStore;
import saddlewright.casefile.order.PatientIdentity;
import saddlewright.interchange.FhirBundle;

/** The export command; what stands in a bundle is looked at in {@code FhirBundleTest}. */
class ExportCommandTest {
  private static final Path CASE = Path.of("demo-cases", "01-lower-class-1-rpi.json");
  private static final LocalDate DAY = LocalDate.of(2026, 3, 2);
  private static final String SEE = ". See saddlewright export --help.";

  @TempDir Path folder;
  private Path out;

  @BeforeEach
  void name() {
    out = folder.resolve("order.json");
  }

  @Test
  void writes_the_bundle_of_the_day() throws Exception {
    assertThat(Run.of("export", CASE, "--fhir", "--out", out, "--date", "2026-03-02"))
        .isEqualTo(new Run(0, "", ""));
    assertThat(Files.readAllBytes(out)).isEqualTo(FhirBundle.toBytes(assessment(), DAY));
  }

  @Test
  void tells_whose_case_it_is_only_from_a_patient_file() throws Exception {
    PatientIdentity ada =
        new PatientIdentity(
            assessment().subject().reference(), "Ada Fenwick", Optional.empty(), "");
    Path patient = folder.resolve("ada.patient.json");
    PatientStore.save(ada, patient);
    assertThat(
            Run.of(
                "export",
                CASE,
                "--fhir",
                "--out",
                out,
                "--date",
                "2026-03-02",
                "--patient",
                patient))
        .isEqualTo(new Run(0, "", ""));
    assertThat(Files.readAllBytes(out))
        .isEqualTo(FhirBundle.toBytes(assessment(), DAY, Optional.of(ada)));
    assertThat(Files.readString(out)).contains("Ada Fenwick");
  }

  @Test
  void refuses_a_patient_of_another_case() throws Exception {
    Path patient = folder.resolve("p.patient.json");
    PatientStore.save(new PatientIdentity("X-1", "Ada", Optional.empty(), ""), patient);
    Run run = Run.of("export", CASE, "--fhir", "--out", out, "--patient", patient);
    assertThat(run.code()).isEqualTo(2);
    assertThat(run.err())
        .isEqualToIgnoringNewLines(
            "--patient "
                + patient
                + " belongs to case X-1, not to HTC-0101; name the file of this patient"
                + SEE);
    assertThat(out).doesNotExist();
  }

  @Test
  void never_writes_over_what_it_reads() throws Exception {
    Path file = Files.copy(CASE, folder.resolve("case.json"));
    Run run = Run.of("export", file, "--fhir", "--out", file);
    assertThat(run.code()).isEqualTo(2);
    assertThat(run.err())
        .isEqualToIgnoringNewLines(
            "--out " + file + " is the case itself and would be lost; name another file" + SEE);
    assertThat(file).hasSameBinaryContentAs(CASE);
    Path patient = folder.resolve("p.json");
    PatientStore.save(PatientIdentity.none("HTC-0101"), patient);
    byte[] before = Files.readAllBytes(patient);
    assertThat(Run.of("export", file, "--fhir", "--out", patient, "--patient", patient).code())
        .isEqualTo(2);
    assertThat(patient).hasBinaryContent(before);
  }

  @Test
  void wants_to_be_told_the_form_and_the_file() {
    assertThat(Run.of("export", CASE, "--out", out).err()).contains("'--fhir'");
    assertThat(Run.of("export", CASE, "--fhir").err()).contains("'--out=FILE'");
    assertThat(Run.of("export", CASE, "--fhir", "--out", folder.resolve("o.xml")).err())
        .isEqualToIgnoringNewLines(
            "--out " + folder.resolve("o.xml") + ": the name must end in .json" + SEE);
  }

  @Test
  void an_existing_file_survives_a_case_that_cannot_be_read() throws Exception {
    Files.writeString(out, "old");
    Path broken = Files.writeString(folder.resolve("broken.json"), "[]");
    Run run = Run.of("export", broken, "--fhir", "--out", out);
    assertThat(run.code()).isEqualTo(2);
    assertThat(run.err()).contains("broken.json").doesNotContain("\tat ");
    assertThat(out).hasContent("old");
  }

  private static Assessment assessment() throws Exception {
    return Assessment.of(CaseStore.load(CASE));
  }
}
