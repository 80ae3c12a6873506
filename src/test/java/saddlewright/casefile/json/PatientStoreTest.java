package saddlewright.casefile.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import saddlewright.casefile.Case;
import saddlewright.casefile.CaseFileException;
import saddlewright.casefile.order.PatientIdentity;

class PatientStoreTest {
  private static final PatientIdentity SOMEONE =
      new PatientIdentity(
          "SW-1", "Iphigenia Qüll", Optional.of(LocalDate.of(1951, 2, 3)), "H-0042");

  @Test
  void an_identity_lies_beside_its_case_and_comes_back(@TempDir Path folder) throws Exception {
    Path file = folder.resolve("mouth.json");
    CaseStore.save(Case.blank("SW-1"), file);
    assertThat(PatientStore.findBeside(file)).isEmpty();
    PatientStore.save(SOMEONE, PatientStore.beside(file));
    assertThat(PatientStore.beside(file).getFileName()).hasToString("mouth.patient.json");
    assertThat(PatientStore.findBeside(file)).contains(SOMEONE);
    assertThat(Files.readString(file)).doesNotContain("Iphigenia", "H-0042");
  }

  @Test
  void a_case_is_no_identity_and_an_identity_is_no_case(@TempDir Path folder) throws Exception {
    Path mouth = folder.resolve("mouth.json");
    Path who = folder.resolve("who.json");
    CaseStore.save(Case.blank("SW-1"), mouth);
    PatientStore.save(SOMEONE, who);
    assertThatThrownBy(() -> PatientStore.load(mouth))
        .isInstanceOf(CaseFileException.class)
        .hasMessageContaining("mouth.json is JSON but not a patient identity");
    assertThatThrownBy(() -> CaseStore.load(who))
        .isInstanceOf(CaseFileException.class)
        .hasMessageContaining("who.json is JSON but not a case");
  }
}
