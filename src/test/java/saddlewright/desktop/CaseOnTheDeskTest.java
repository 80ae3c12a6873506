package saddlewright.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.control.Labeled;
import javafx.scene.layout.Pane;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import saddlewright.casefile.Case;
import saddlewright.casefile.json.CaseStore;
import saddlewright.chart.ToothStatus;
import saddlewright.dentition.Tooth;
import saddlewright.drawing.Background;
import saddlewright.rules.Report;

/** Welcome page, new, open, save, undo, findings and their waivers, through the window. */
class CaseOnTheDeskTest {
  @TempDir Path folder;
  private OnStage w;

  @BeforeEach
  void open() throws Exception {
    w = OnStage.open(folder.resolve("settings"));
  }

  @AfterEach
  void close() throws Exception {
    w.close();
  }

  private ToothStatus status(int fdi) {
    Tooth t = Tooth.of(fdi);
    return w.table().current().chart(t.arch()).tooth(t).status();
  }

  @Test
  void the_welcome_page_is_drawn_and_offers_the_demo_cases() throws Exception {
    Pane demos = w.find("demo-cases", Pane.class);
    // They are read while the page is already shown.
    for (int i = 0; i < 200 && demos.getChildren().size() < 12; i++) {
      Thread.sleep(50);
      w.settle();
    }
    assertThat(demos.getChildren()).hasSize(12);
    long colours = OnStage.coloursOf(w.picture());
    assertThat(colours).as("a drawing and text, not a blank page").isGreaterThan(100);

    OnStage.run(
        () -> {
          ((javafx.scene.control.Button) demos.getChildren().get(0)).fire();
          return null;
        });
    w.settle();
    assertThat(w.table().openProperty().get()).isTrue();
    assertThat(w.find("welcome", Node.class).isVisible()).isFalse();
    assertThat(w.find("status-lower", Labeled.class).getText()).isEqualTo("Lower: Kennedy Class I");
  }

  @Test
  void a_case_is_charted_undone_redone_saved_and_opened_again() throws Exception {
    w.press("welcome-new");
    w.press("show-LOWER");
    w.drag(36, 37, 38);
    assertThat(status(36)).isEqualTo(ToothStatus.MISSING);
    assertThat(status(38)).isEqualTo(ToothStatus.MISSING);
    assertThat(w.table().unsavedProperty().get()).isTrue();

    OnStage.run(
        () -> {
          w.table().undo();
          return null;
        });
    assertThat(status(36)).as("one drag is one edit").isEqualTo(ToothStatus.STANDING);
    assertThat(w.table().redoNameProperty().get()).isPresent();
    OnStage.run(
        () -> {
          w.table().redo();
          return null;
        });
    assertThat(status(38)).isEqualTo(ToothStatus.MISSING);

    Path file = folder.resolve("patient.json");
    assertThat(OnStage.run(() -> w.window.files().write(file))).isTrue();
    assertThat(w.table().unsavedProperty().get()).isFalse();
    Case charted = w.table().current();
    assertThat(CaseStore.load(file)).isEqualTo(charted);
    assertThat(Files.readString(folder.resolve("settings/recent.txt"))).contains("patient.json");

    OnStage.run(
        () -> {
          w.table().close();
          w.window.files().create();
          w.window.files().load(file);
          return null;
        });
    assertThat(w.table().current()).isEqualTo(charted);
  }

  @Test
  void a_file_that_is_no_case_is_refused_in_words_and_the_case_stays() throws Exception {
    w.press("welcome-new");
    Case before = w.table().current();
    Path wrong = Files.writeString(folder.resolve("wrong.json"), "not json");
    OnStage.run(
        () -> {
          w.window.files().load(wrong);
          return null;
        });
    w.settle();
    assertThat(w.table().current()).isEqualTo(before);
    assertThat(w.find("notice", Node.class).isVisible()).isTrue();
    assertThat(w.find("notice-text", Labeled.class).getText()).contains("wrong.json");
  }

  @Test
  void the_drawing_is_exported_as_svg_and_png() throws Exception {
    w.press("welcome-new");
    Path svg = folder.resolve("sheet.svg");
    Path png = folder.resolve("sheet.png");
    Path clear = folder.resolve("clear.svg");
    OnStage.run(
        () -> {
          w.window.files().writeDrawing(svg, Background.PAPER);
          w.window.files().writeDrawing(clear, Background.CLEAR);
          w.window.files().writeDrawing(png, Background.PAPER);
          return null;
        });
    assertThat(Files.readString(svg)).startsWith("<svg").contains("mm\"").contains("<rect");
    assertThat(Files.readString(clear)).startsWith("<svg").doesNotContain("<rect");
    assertThat(Files.readAllBytes(png)).startsWith(0x89, 'P', 'N', 'G');
  }

  @Test
  void the_prescription_is_exported_as_pdf() throws Exception {
    w.press("welcome-new");
    Path pdf = folder.resolve("prescription.pdf");
    OnStage.run(
        () -> {
          w.window.prescriptions().write(pdf);
          return null;
        });
    assertThat(
            new String(Files.readAllBytes(pdf), 0, 5, java.nio.charset.StandardCharsets.US_ASCII))
        .isEqualTo("%PDF-");
  }

  @Test
  void a_case_taken_from_a_prescription_has_no_file_that_saving_could_spoil() throws Exception {
    w.press("welcome-new");
    w.drag(36, 37);
    Case charted = w.table().current();
    Path pdf = folder.resolve("prescription.pdf");
    OnStage.run(
        () -> {
          w.window.prescriptions().write(pdf);
          return null;
        });
    byte[] written = Files.readAllBytes(pdf);
    OnStage.run(
        () -> {
          w.table().undo();
          w.window.files().load(pdf);
          return null;
        });
    w.settle();
    assertThat(w.table().current()).isEqualTo(charted);
    assertThat(w.table().fileProperty().get()).isEmpty();
    assertThat(w.find("notice-text", Labeled.class).getText())
        .isEqualTo(
            "The case was taken out of prescription.pdf. Saving asks for a case file of its own;"
                + " the prescription stays as it was.");
    Path own = folder.resolve("prescription.json");
    assertThat(OnStage.run(() -> w.window.files().write(own))).isTrue();
    assertThat(Files.readAllBytes(pdf)).isEqualTo(written);
    assertThat(w.table().fileProperty().get()).contains(own);
  }

  @Test
  void the_bundle_for_other_systems_never_takes_the_place_of_the_case() throws Exception {
    w.press("welcome-new");
    Path file = folder.resolve("case.json");
    Path bundle = folder.resolve("case.fhir.json");
    OnStage.run(
        () -> {
          w.window.files().write(file);
          w.window.files().writeFhir(file);
          w.window.files().writeFhir(bundle);
          return null;
        });
    assertThat(Files.readString(file)).contains("saddlewright-case");
    assertThat(Files.readString(bundle)).contains("\"resourceType\": \"Bundle\"");
  }

  @Test
  void letters_that_cannot_be_printed_are_named_beside_the_meter_and_after_writing()
      throws Exception {
    w.press("welcome-new");
    OnStage.run(
        () -> {
          w.table().stepProperty().set(Step.PRESCRIPTION);
          return null;
        });
    w.settle();
    assertThat(w.find("squares", Labeled.class).isVisible()).isFalse();
    Case c = w.table().current();
    String said =
        "This character cannot be printed and stands as a square: 山 U+5C71 in Title."
            + " Write it in by hand.";
    OnStage.run(
        () -> {
          w.table().apply("title", c.withIdentity(c.reference(), "山", c.story()));
          return null;
        });
    w.settle();
    assertThat(w.find("squares", Labeled.class).getText()).isEqualTo(said);
    OnStage.run(
        () -> {
          w.window.prescriptions().write(folder.resolve("p.pdf"));
          return null;
        });
    assertThat(w.find("notice-text", Labeled.class).getText())
        .isEqualTo("p.pdf has been written. " + said);
  }

  @Test
  void a_finding_selects_its_subjects_and_a_remedy_is_one_edit() throws Exception {
    w.press("welcome-new");
    w.press("show-LOWER");
    w.drag(36, 37, 38);
    Report.Entry e =
        w.table().assessment().report().entries().stream()
            .filter(x -> !x.finding().remedies().isEmpty())
            .findFirst()
            .orElseThrow();
    OnStage.run(
        () -> {
          w.table().selectionProperty().set(e.finding().subjects());
          w.table().findingProperty().set(Optional.of(e.finding().key()));
          return null;
        });
    w.settle();
    Case before = w.table().current();
    OnStage.run(
        () -> {
          w.find("findings", Node.class).lookupAll(".remedy").stream()
              .findFirst()
              .map(n -> (javafx.scene.control.Button) n)
              .orElseThrow()
              .fire();
          return null;
        });
    assertThat(w.table().current()).isNotEqualTo(before);
    assertThat(w.table().assessment().report().standing())
        .extracting(saddlewright.rules.Finding::key)
        .doesNotContain(e.finding().key());
    OnStage.run(
        () -> {
          w.table().undo();
          return null;
        });
    assertThat(w.table().current()).isEqualTo(before);
  }

  @Test
  void an_impossible_number_is_refused_beside_its_field() throws Exception {
    w.press("welcome-new");
    w.press("show-LOWER");
    w.press("tool-chart-select");
    w.click(35, 0, 0);
    OnStage.run(
        () -> {
          var field = w.find("tooth-height", javafx.scene.control.TextField.class);
          field.setText("99");
          field.getOnAction().handle(null);
          return null;
        });
    w.settle();
    assertThat(w.texts("subject"))
        .anySatisfy(t -> assertThat(t).contains("99").contains("0 to 20"));
    assertThat(w.table().current().lowerChart().tooth(Tooth.T35).crownHeight()).isEmpty();
  }

  @Test
  void settings_lie_where_each_platform_keeps_them() {
    Path home = Path.of("/home/a");
    assertThat(Remembered.folder("Linux", Map.of(), home))
        .isEqualTo(Path.of("/home/a/.config/saddlewright"));
    assertThat(Remembered.folder("Linux", Map.of("XDG_CONFIG_HOME", "/cfg"), home))
        .isEqualTo(Path.of("/cfg/saddlewright"));
    assertThat(Remembered.folder("Mac OS X", Map.of(), home).toString())
        .isEqualTo("/home/a/Library/Application Support/Saddlewright");
    assertThat(Remembered.folder("Windows 11", Map.of("APPDATA", "/roaming"), home))
        .isEqualTo(Path.of("/roaming/Saddlewright"));
  }
}
