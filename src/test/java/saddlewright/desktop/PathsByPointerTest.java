package saddlewright.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Hyperlink;
import javafx.scene.control.Labeled;
import javafx.scene.control.TableView;
import javafx.scene.control.TextField;
import javafx.scene.control.TextInputControl;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import saddlewright.casefile.Case;
import saddlewright.casefile.json.CaseStore;
import saddlewright.casefile.order.PreparationMark;
import saddlewright.casefile.order.Preparations;
import saddlewright.classification.KennedyClass;
import saddlewright.dentition.Arch;
import saddlewright.dentition.Tooth;
import saddlewright.design.ComponentId;
import saddlewright.design.Saddle;
import saddlewright.desktop.actions.Action;
import saddlewright.desktop.actions.Actions;
import saddlewright.layout.Layout;
import saddlewright.rules.Finding;
import saddlewright.rules.RuleBook;

/**
 * What each of the four users comes for, from the welcome page to the paper, by pointer: buttons
 * and menus are pressed, the sheet is clicked, and keys are only used to write words.
 */
class PathsByPointerTest {
  @TempDir Path folder;
  private OnStage w;

  @BeforeEach
  void open() throws Exception {
    w = OnStage.open(folder.resolve("settings"));
    w.settle();
  }

  @AfterEach
  void close() throws Exception {
    answer(Optional.empty());
    w.close();
  }

  private void answer(Optional<FileQuestion.Answering> by) throws Exception {
    OnStage.run(
        () -> {
          FileQuestion.answerBy(by);
          return null;
        });
  }

  private static Case demo(String name) throws Exception {
    return CaseStore.load(Path.of("demo-cases", name + ".json"));
  }

  /** Opens a demo case by its card on the welcome page. */
  private void openDemo(Case demo) throws Exception {
    for (int i = 0; i < 200; i++) {
      boolean done =
          OnStage.run(
              () -> {
                Optional<Button> card =
                    w.find("demo-cases", Node.class).lookupAll(".demo").stream()
                        .map(Button.class::cast)
                        .filter(b -> demo.title().equals(b.getAccessibleText()))
                        .findFirst();
                card.ifPresent(Button::fire);
                return card.isPresent();
              });
      if (done) {
        w.settle();
        assertThat(w.table().current()).isEqualTo(demo);
        return;
      }
      Thread.sleep(50);
    }
    throw new AssertionError("no card of " + demo.title());
  }

  private void menu(String key) throws Exception {
    String name = Words.of(key).replace("_", "");
    OnStage.run(
        () -> {
          Action a =
              Actions.of(w.window.menus()).stream()
                  .filter(x -> x.name().equals(name) && x.ready())
                  .findFirst()
                  .orElseThrow(() -> new AssertionError("no " + name));
          a.run();
          return null;
        });
    w.settle();
  }

  /** Clicks into a field, writes into it, and leaves it. */
  private void write(String id, String words) throws Exception {
    OnStage.run(
        () -> {
          TextInputControl field = w.find(id, TextInputControl.class);
          if (field == null) {
            throw new AssertionError("no field " + id);
          }
          field.requestFocus();
          field.selectAll();
          field.replaceSelection(words);
          if (field instanceof TextField line && line.getOnAction() != null) {
            line.getOnAction().handle(null);
          }
          return null;
        });
    w.settle();
  }

  /** Presses a button of the list of findings by its style. */
  private boolean pressIn(String pane, String style) throws Exception {
    boolean pressed =
        OnStage.run(
            () -> {
              Optional<Node> button =
                  w.find(pane, Node.class).lookupAll(style).stream().findFirst();
              button.ifPresent(b -> ((ButtonBase) b).fire());
              return button.isPresent();
            });
    w.settle();
    return pressed;
  }

  private void openFinding(Finding f) throws Exception {
    OnStage.run(
        () -> {
          w.find("findings", Node.class).lookupAll(".finding-head").stream()
              .map(ButtonBase.class::cast)
              .filter(b -> b.getText().equals(f.sentence()))
              .findFirst()
              .orElseThrow(() -> new AssertionError("not listed: " + f.sentence()))
              .fire();
          return null;
        });
    w.settle();
    assertThat(w.table().findingProperty().get()).contains(f.key());
  }

  private List<Finding> standing() {
    return w.table().assessment().report().standing();
  }

  static String text(Path pdf) throws Exception {
    try (var d = Loader.loadPDF(pdf.toFile())) {
      return new PDFTextStripper().getText(d).replaceAll("[\\s\u00a0\u202f]+", " ");
    }
  }

  @Test
  void a_student_hands_in_coursework() throws Exception {
    openDemo(demo("06-lower-class-3-third-molar"));

    w.press("step-CHART");
    w.press("tool-chart-missing");
    w.click(32, 0, 0);
    w.click(42, 0, 0);
    assertThat(w.table().assessment().lower().classification().label()).contains("modification 3");
    w.press("step-SADDLES");
    w.with(
        OnStage.Held.ALT,
        () -> {
          w.click(32, 0, 0);
          return null;
        });
    ComponentId saddle =
        w.table().current().lowerDesign().saddleAt(Tooth.T32).map(Saddle::id).orElseThrow();
    assertThat(w.table().current().lowerDesign().saddleAt(Tooth.T42)).isPresent();

    w.press("step-REVIEW");
    assertThat(standing()).isNotEmpty();
    Finding f = standing().stream().filter(x -> !x.remedies().isEmpty()).findFirst().orElseThrow();
    openFinding(f);
    assertThat(w.texts("findings"))
        .as("the finding says what is claimed, measured and required")
        .contains(RuleBook.find(f.ruleId()).orElseThrow().claim())
        .contains(f.comparison().actual(), f.comparison().required());
    OnStage.run(
        () -> {
          w.find("findings", Node.class).lookupAll(".hyperlink").stream()
              .map(Hyperlink.class::cast)
              .filter(h -> h.getText().equals(Words.of("finding.page")))
              .findFirst()
              .orElseThrow()
              .fire();
          return null;
        });
    w.settle();
    assertThat(OnStage.run(() -> w.find("rule-page", Node.class).isVisible())).isTrue();
    w.press("rule-page-back");
    assertThat(pressIn("findings", ".remedy")).isTrue();
    assertThat(standing()).extracting(Finding::key).doesNotContain(f.key());

    w.press("step-PRESCRIPTION");
    write("justification-lower-" + saddle, "Replaces 32 where the smile shows it.");
    Path pdf = folder.resolve("handed-in.pdf");
    answer(Optional.of(Answers.saving(pdf)));
    w.press("save-pdf");
    assertThat(text(pdf))
        .containsIgnoringCase("coursework")
        .contains("C-2047", "Replaces 32 where the smile shows it.");
  }

  @Test
  void a_clinician_prescribes() throws Exception {
    w.press("welcome-new");
    w.press("show-LOWER");
    bothSides(() -> w.drag(36, 37, 38));
    assertThat(w.table().assessment().lower().classification().kennedy()).isEqualTo(KennedyClass.I);
    w.press("step-SURVEY");
    bothSides(() -> w.click(35, 0, 1.1));
    w.press("tool-survey-select");
    w.click(35, 0, 0);
    write("tooth-height", "8.5");
    assertThat(w.table().current().lowerChart().tooth(Tooth.T35).crownHeight()).contains(8.5);
    w.press("step-SADDLES");
    bothSides(() -> w.click(37, 0, 0));
    w.press("step-RETENTION");
    bothSides(() -> w.click(35, 0, 1.1));
    w.press("step-INDIRECT_RETENTION");
    bothSides(() -> w.click(33, 0, -0.5));
    w.press("step-CONNECTORS");
    w.press("tool-connector-LINGUAL_BAR");
    w.clickMidline(Arch.LOWER, 25);

    w.press("step-REVIEW");
    int waived = 0;
    Set<String> remedied = new LinkedHashSet<>();
    List<String> told = new ArrayList<>();
    for (int i = 0; i < 30 && !standing().isEmpty(); i++) {
      Finding f = standing().get(0);
      told.add(f.key());
      openFinding(f);
      if (remedied.add(f.key()) && pressIn("findings", ".remedy")) {
        continue;
      }
      write("waiver-reason", "Agreed with the patient on the day.");
      waived++;
    }
    assertThat(standing()).as(told.toString()).isEmpty();
    assertThat(w.table().current().waivers()).hasSize(waived);

    w.press("step-PRESCRIPTION");
    TableView<?> list = w.find("preparations", TableView.class);
    assertThat(OnStage.run(() -> list.getItems().size())).isPositive();
    OnStage.run(
        () -> {
          list.getSelectionModel().select(0);
          return null;
        });
    @SuppressWarnings("unchecked")
    ComboBox<PreparationMark.State> state = w.find("preparation-state", ComboBox.class);
    OnStage.run(
        () -> {
          state.setValue(PreparationMark.State.DONE);
          return null;
        });
    assertThat(w.table().current().prescription().preparations()).isNotEqualTo(Preparations.NONE);
    write("rx-prescriber-name", "Dr A. Wainfleet");
    w.press("next-gap");
    Path pdf = folder.resolve("prescription.pdf");
    answer(Optional.of(Answers.saving(pdf)));
    w.press("save-pdf");
    String text = text(pdf);
    assertThat(text).contains("Lingual bar", "Dr A. Wainfleet", "done");
    if (waived > 0) {
      assertThat(text).contains("Agreed with the patient on the day.");
    }
  }

  private interface Deed {
    void run() throws Exception;
  }

  private void bothSides(Deed deed) throws Exception {
    w.with(
        OnStage.Held.ALT,
        () -> {
          deed.run();
          return null;
        });
  }

  @Test
  void a_tutor_shows_a_design_grow() throws Exception {
    Case demo = demo("01-lower-class-1-rpi");
    openDemo(demo);
    menu("view.step-on");
    List<String> captions = new ArrayList<>();
    for (int i = 0; i < 8; i++) {
      captions.add(String.join(" | ", w.texts("step-strip")));
      if (!OnStage.run(() -> w.find("steps-on", Button.class).isDisabled())) {
        w.press("steps-on");
      }
    }
    assertThat(captions).as("each step says something else").doesNotHaveDuplicates();
    assertThat(captions.get(2)).contains("Support");
    w.press("steps-leave");
    assertThat(w.table().stageProperty().get()).isEmpty();
    assertThat(w.table().current()).isEqualTo(demo);
    assertThat(w.table().unsavedProperty().get()).isFalse();
    w.press("step-REVIEW");
    openFinding(standing().get(0));
    assertThat(w.texts("findings")).contains(standing().get(0).comparison().required());
  }

  @Test
  void a_technician_reads_the_pdf_alone() throws Exception {
    Case demo = demo("01-lower-class-1-rpi");
    openDemo(demo);
    w.press("step-PRESCRIPTION");
    Path pdf = folder.resolve("for-the-laboratory.pdf");
    answer(Optional.of(Answers.saving(pdf)));
    w.press("save-pdf");
    menu("file.close");
    String text = text(pdf);
    assertThat(text)
        .contains("Lingual bar", "I-bar", "0.25 mm", "Altered cast impression for the free ends")
        .as("the key beside the drawing, and its scale")
        .contains("retentive arm", "relief", "20 mm", "Seen from the");

    answer(Optional.of(Answers.opening(pdf)));
    byte[] sent = Files.readAllBytes(pdf);
    w.press("welcome-open");
    Layout seen = w.table().assessment().lower().layout();
    assertThat(DrawingText.of(seen))
        .isEqualTo(DrawingText.of(saddlewright.casefile.Assessment.of(demo).lower().layout()));
    assertThat(w.find("notice-text", Labeled.class).getText()).contains("for-the-laboratory.pdf");
    menu("view.numbers");
    assertThat(w.table().numbersProperty().get()).isTrue();
    menu("file.preview");
    assertThat(OnStage.run(() -> w.window.preview().orElseThrow().stage().isShowing())).isTrue();
    assertThat(Files.readAllBytes(pdf)).as("what was sent stays as it was").isEqualTo(sent);
  }
}
