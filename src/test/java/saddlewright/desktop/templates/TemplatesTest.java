package saddlewright.desktop.templates;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import saddlewright.casefile.Assessment;
import saddlewright.casefile.Case;
import saddlewright.casefile.json.CaseCodec;
import saddlewright.casefile.json.CaseStore;
import saddlewright.casefile.order.PrescriptionDetails;
import saddlewright.chart.ToothFindings;
import saddlewright.classification.KennedyClass;
import saddlewright.dentition.Arch;
import saddlewright.dentition.Tooth;
import saddlewright.design.Clasp;
import saddlewright.design.MajorConnector;
import saddlewright.design.Rest;
import saddlewright.rules.Finding;
import saddlewright.rules.Profile;
import saddlewright.rules.Severity;

/** The templates that come with the program are sound, and what begins from one is a new case. */
class TemplatesTest {
  private static final Path FOLDER = Path.of("src/main/resources/saddlewright/templates");

  static Stream<Template> builtIn() {
    return Templates.builtIn().stream();
  }

  private static List<String> grave(Case c) {
    return Assessment.of(c).report().standing().stream()
        .filter(f -> f.severity() == Severity.MUST)
        .map(Finding::sentence)
        .toList();
  }

  @Test
  void there_is_one_for_each_class_of_each_arch() {
    Set<String> classes =
        builtIn()
            .map(t -> t.arches().get(0) + " " + t.classification(t.arches().get(0)).kennedy())
            .collect(Collectors.toSet());
    for (Arch arch : Arch.values()) {
      for (KennedyClass k :
          List.of(KennedyClass.I, KennedyClass.II, KennedyClass.III, KennedyClass.IV)) {
        assertThat(classes).contains(arch + " " + k);
      }
    }
  }

  @ParameterizedTest(name = "[{index}]")
  @MethodSource("builtIn")
  void each_is_judged_sound_by_the_school_that_it_names(Template t) {
    assertThat(t.subject().profile()).isEqualTo(Profile.UK_TEACHING);
    assertThat(grave(t.subject())).isEmpty();
    assertThat(Assessment.of(t.subject()).report().questions()).isEmpty();
    assertThat(
            Assessment.of(t.subject()).report().standing().stream()
                .filter(f -> f.severity() == Severity.SHOULD))
        .isEmpty();
  }

  /** What has not been measured must be asked for; it must not be taken for a fault. */
  @ParameterizedTest(name = "[{index}]")
  @MethodSource("builtIn")
  void without_its_survey_each_asks_and_does_not_object(Template t) {
    Case c = t.begin(false);
    assertThat(grave(c)).isEmpty();
    assertThat(Assessment.of(c).report().questions()).isNotEmpty();
    for (Arch arch : Arch.values()) {
      for (Tooth tooth : Tooth.in(arch)) {
        ToothFindings f = c.chart(arch).tooth(tooth);
        assertThat(f.undercuts()).isEmpty();
        assertThat(f.boneSupportPercent()).isEmpty();
        assertThat(f.clearances()).isEmpty();
      }
      assertThat(c.chart(arch).softTissues().lingualDepth()).isEmpty();
    }
  }

  @ParameterizedTest(name = "[{index}]")
  @MethodSource("builtIn")
  void each_has_the_class_and_the_parts_that_its_name_and_words_claim(Template t) {
    assertThat(t.arches()).hasSize(1);
    Arch arch = t.arches().get(0);
    String label = t.classification(arch).label().replace("Kennedy ", "");
    String claimed = t.name().substring(0, t.name().indexOf(':'));
    assertThat(claimed.toLowerCase(Locale.ROOT))
        .isEqualTo((arch.code() + " " + label).toLowerCase(Locale.ROOT));
    assertThat(t.subject().design(arch).all(Rest.class)).isNotEmpty();
    assertThat(t.subject().design(arch).all(Clasp.class)).isNotEmpty();
    assertThat(t.subject().design(arch).all(MajorConnector.class)).hasSize(1);
    assertThat(t.subject().story()).hasSizeBetween(60, 260);
    assertThat(t.source()).matches("(demo case|worked design W)[ 0-9].*");
  }

  @ParameterizedTest(name = "[{index}]")
  @MethodSource("builtIn")
  void each_tells_of_no_patient_and_is_written_as_the_program_writes(Template t) throws Exception {
    Case c = t.subject();
    assertThat(c.prescription()).isEqualTo(PrescriptionDetails.EMPTY);
    assertThat(c.waivers()).isEmpty();
    assertThat(c.extras()).isEmpty();
    assertThat(c.reference()).isEqualTo(Beginning.NO_CASE);
  }

  @Test
  void every_file_is_in_the_index_and_is_written_as_the_program_writes() throws Exception {
    try (Stream<Path> files = Files.list(FOLDER)) {
      List<Path> cases = files.filter(f -> f.toString().endsWith(".json")).sorted().toList();
      assertThat(cases).hasSameSizeAs(Templates.builtIn());
      for (Path f : cases) {
        if (Boolean.getBoolean("saddlewright.write-expected")) {
          CaseStore.save(CaseStore.load(f), f);
        }
        assertThat(Files.readString(f))
            .as(f.toString())
            .isEqualTo(new String(CaseCodec.toBytes(CaseStore.load(f)), StandardCharsets.UTF_8));
      }
    }
  }

  @Test
  void what_begins_from_another_case_carries_nothing_of_its_patient() throws Exception {
    Case signed = CaseStore.load(Path.of("demo-cases/03-both-arches.json"));
    assertThat(signed.prescription().signature()).isPresent();
    Case c = Beginning.of(signed);
    assertThat(c.reference()).isNotEqualTo(signed.reference()).startsWith("SW-");
    assertThat(c.upperDesign()).isEqualTo(signed.upperDesign());
    assertThat(c.lowerChart()).isEqualTo(signed.lowerChart());
    assertThat(c.prescription()).isEqualTo(PrescriptionDetails.EMPTY);
    assertThat(c.waivers()).isEmpty();
    assertThat(c.title() + c.story()).isEmpty();
    assertThat(Beginning.of(signed).reference()).isNotEqualTo(c.reference());
  }

  @Test
  void ones_own_are_kept_renamed_removed_and_put_back(@TempDir Path settings) throws Exception {
    Templates templates = new Templates(settings);
    Case c = CaseStore.load(Path.of("demo-cases/01-lower-class-1-rpi.json"));
    Template own = templates.save(c, "  Möller’s way: RPI  ", "as we do it");
    templates.save(c, "Another", "");
    assertThat(own.file().orElseThrow())
        .isEqualTo(settings.resolve("templates/m-ller-s-way-rpi.saddle"));
    assertThat(Files.readString(own.file().get()))
        .doesNotContain(c.reference())
        .doesNotContain("ferryman");
    assertThat(templates.all().templates().stream().filter(Template::isOwn).map(Template::name))
        .containsExactly("Another", "Möller’s way: RPI");
    templates.rename(own, "Back");
    Template renamed = templates.all().templates().get(1);
    assertThat(renamed.name()).isEqualTo("Back");
    assertThat(renamed.subject().story()).isEqualTo("as we do it");
    templates.remove(renamed);
    assertThat(templates.all().templates().stream().filter(Template::isOwn)).hasSize(1);
    templates.putBack(renamed);
    assertThat(templates.all().templates().get(1)).isEqualTo(renamed);
  }

  @Test
  void two_of_one_name_are_kept_apart_and_a_broken_one_is_said(@TempDir Path settings)
      throws Exception {
    Templates templates = new Templates(settings);
    Case c = CaseStore.load(Path.of("demo-cases/01-lower-class-1-rpi.json"));
    assertThat(templates.save(c, "../../x", "").file())
        .isNotEqualTo(templates.save(c, "../../x", "").file())
        .get()
        .satisfies(f -> assertThat(f.getParent()).isEqualTo(templates.folder()));
    Files.writeString(templates.folder().resolve("bad.json"), "{");
    Templates.Found found = templates.all();
    assertThat(found.templates()).hasSize(2 + Templates.builtIn().size());
    assertThat(found.troubles()).singleElement().asString().contains("bad.json");
  }
}
