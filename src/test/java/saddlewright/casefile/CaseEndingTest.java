package saddlewright.casefile;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import saddlewright.casefile.json.PatientStore;

class CaseEndingTest {
  @Test
  void a_case_is_known_by_either_ending_in_any_case_of_letters() {
    assertThat(CaseEnding.isOn("one.saddle")).isTrue();
    assertThat(CaseEnding.isOn("ONE.JSON")).isTrue();
    assertThat(CaseEnding.isOn("one.saddle.pdf")).isFalse();
    assertThat(CaseEnding.isOn("saddle")).isFalse();
  }

  @Test
  void a_name_without_an_ending_gets_the_usual_one() {
    assertThat(CaseEnding.on(Path.of("a", "one"))).isEqualTo(Path.of("a", "one.saddle"));
    assertThat(CaseEnding.on(Path.of("one.json"))).isEqualTo(Path.of("one.json"));
    assertThat(CaseEnding.on(Path.of("one.v2"))).isEqualTo(Path.of("one.v2.saddle"));
  }

  @Test
  void the_identity_lies_beside_a_case_of_either_ending() {
    assertThat(PatientStore.beside(Path.of("one.saddle"))).isEqualTo(Path.of("one.patient.json"));
    assertThat(PatientStore.beside(Path.of("one.json"))).isEqualTo(Path.of("one.patient.json"));
  }
}
