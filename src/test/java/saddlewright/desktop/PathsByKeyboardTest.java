package saddlewright.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Hyperlink;
import javafx.scene.control.Labeled;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import saddlewright.casefile.Case;
import saddlewright.casefile.json.CaseStore;
import saddlewright.casefile.order.Preparations;
import saddlewright.dentition.Tooth;
import saddlewright.dentition.ToothNames;
import saddlewright.dentition.Zone;
import saddlewright.design.ComponentId;
import saddlewright.design.MajorConnector;
import saddlewright.design.Saddle;
import saddlewright.prescription.growth.GrowthStage;
import saddlewright.rules.Finding;
import saddlewright.rules.Severity;

/** What each of the four users comes for, from the welcome page to the paper, by keys alone. */
class PathsByKeyboardTest {
  @TempDir Path folder;
  private OnStage w;
  private ByKeys keys;

  @BeforeEach
  void open() throws Exception {
    w = OnStage.open(folder.resolve("settings"));
    w.settle();
    keys = new ByKeys(w);
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

  /** Goes to the card of a demo case on the welcome page, and opens it. */
  private void openDemo(Case demo) throws Exception {
    for (int i = 0; i < 200 && !areDemosShown(); i++) {
      Thread.sleep(50);
    }
    keys.walkTo(
            demo.title(),
            n -> n instanceof Button && demo.title().equals(n.getAccessibleText()),
            "Tab")
        .press("Space");
    assertThat(w.table().current()).isEqualTo(demo);
  }

  private boolean areDemosShown() throws Exception {
    return OnStage.run(() -> !w.find("demo-cases", Node.class).lookupAll(".demo").isEmpty());
  }

  private List<Finding> standing() {
    return w.table().assessment().report().standing();
  }

  private Optional<Finding> opened() {
    return w.table()
        .findingProperty()
        .get()
        .flatMap(k -> standing().stream().filter(f -> f.key().equals(k)).findFirst());
  }

  private String says() throws Exception {
    return OnStage.run(() -> w.window.sheet().getAccessibleText());
  }

  /** Walks within the tooth until the sheet says that one stands at a site. */
  private void site(String name) throws Exception {
    for (String way : List.of("Up", "Down", "Left", "Right", "Up", "Left", "Down", "Right")) {
      if (says().contains(name)) {
        return;
      }
      keys.press("Shift+" + way);
    }
    assertThat(says()).contains(name);
  }

  @Test
  void a_student_hands_in_coursework() throws Exception {
    openDemo(demo("06-lower-class-3-third-molar"));
    keys.press("1", "End").times(6, "Left");
    assertThat(says()).contains("32");
    keys.press("Alt+Enter");
    assertThat(w.table().current().lowerChart().isLost(Tooth.T32)).isTrue();
    assertThat(w.table().current().lowerChart().isLost(Tooth.T42)).isTrue();
    keys.press("3", "Alt+Enter");
    ComponentId saddle =
        w.table().current().lowerDesign().saddleAt(Tooth.T32).map(Saddle::id).orElseThrow();

    for (int i = 0; i < 10 && opened().filter(f -> !f.remedies().isEmpty()).isEmpty(); i++) {
      keys.press("F8");
    }
    Finding f = opened().orElseThrow();
    assertThat(w.texts("findings")).contains(f.comparison().required());
    keys.walkTo(
            "the page of the rule",
            n -> n instanceof Hyperlink h && h.getText().equals(Words.of("finding.page")),
            "Tab")
        .press("Space");
    assertThat(OnStage.run(() -> w.find("rule-page", Node.class).isVisible())).isTrue();
    assertThat(keys.focus().getId()).as("the page has the focus").isEqualTo("rule-page-back");
    keys.press("Space");
    assertThat(isIn("findings")).as("one is where one came from").isTrue();
    assertThat(keys.focus()).isInstanceOf(Hyperlink.class);
    keys.press("R");
    assertThat(standing()).extracting(Finding::key).doesNotContain(f.key());

    keys.press("Ctrl+R");
    String words = "justification-lower-" + saddle;
    keys.walkTo(words, "Tab").type("Replaces 32 where the smile shows it.");
    Path pdf = folder.resolve("handed-in.pdf");
    answer(Optional.of(Answers.saving(pdf)));
    keys.press("Ctrl+Shift+P");
    assertThat(PathsByPointerTest.text(pdf))
        .containsIgnoringCase("coursework")
        .contains("C-2047", "Replaces 32 where the smile shows it.");
    System.out.println("A student by keyboard: " + keys.keys() + " keys.");
  }

  @Test
  void a_clinician_prescribes() throws Exception {
    keys.press("Ctrl+N", "Ctrl+2");
    keys.press("End", "Alt+Enter", "Left", "Alt+Enter", "Left", "Alt+Enter");
    assertThat(w.table().assessment().lower().classification().label())
        .isEqualTo("Kennedy Class I");
    keys.press("2", "Left");
    site(ToothNames.zone(Tooth.T35, Zone.MID_BUCCAL));
    keys.press("Alt+Enter");
    assertThat(w.table().current().lowerChart().tooth(Tooth.T45).undercuts())
        .containsKey(Zone.MID_BUCCAL);
    for (int i = 0; i < 9 && !isIn("subject"); i++) {
      keys.press("F6");
    }
    keys.walkTo("tooth-height", "Tab");
    keys.type("8.5").press("Enter", "Esc");
    assertThat(w.table().current().lowerChart().tooth(Tooth.T35).crownHeight()).contains(8.5);
    keys.press("3", "Right", "Alt+Enter");
    keys.press("5", "Left");
    site(ToothNames.zone(Tooth.T35, Zone.MID_BUCCAL));
    keys.press("Alt+Enter");
    keys.press("8", "Left", "Left");
    site("cingulum");
    keys.press("Alt+Enter");
    keys.press("7", "Ctrl+K").type("lingual bar").press("Enter", "Enter");
    assertThat(w.table().current().lowerDesign().all(MajorConnector.class))
        .extracting(c -> c.form().name())
        .containsExactly("LINGUAL_BAR");

    keys.press("9");
    int waived = 0;
    Set<String> tried = new HashSet<>();
    for (int i = 0; i < 40 && !standing().isEmpty(); i++) {
      keys.press("F8");
      Finding f = opened().orElseThrow();
      if (!f.remedies().isEmpty() && tried.add(f.key())) {
        keys.press("R");
      } else {
        keys.press("W").type("Agreed with the patient.").press("Enter");
        waived++;
      }
    }
    assertThat(standing()).isEmpty();
    assertThat(w.table().assessment().report().count(Severity.MUST)).isZero();

    keys.press("Ctrl+R", "F9").type("Dr A. Wainfleet");
    keys.walkTo("preparations", "Tab").press("Home", "D");
    assertThat(w.table().current().prescription().preparations()).isNotEqualTo(Preparations.NONE);
    Path pdf = folder.resolve("prescription.pdf");
    answer(Optional.of(Answers.saving(pdf)));
    keys.press("Ctrl+Shift+P");
    String text = PathsByPointerTest.text(pdf);
    assertThat(text).contains("Lingual bar", "Dr A. Wainfleet", "done");
    if (waived > 0) {
      assertThat(text).contains("Agreed with the patient.");
    }
    System.out.println("A clinician by keyboard: " + keys.keys() + " keys.");
  }

  private boolean isIn(String pane) throws Exception {
    Node at = keys.focus();
    return OnStage.run(
        () -> {
          for (Node n = at; n != null; n = n.getParent()) {
            if (pane.equals(n.getId())) {
              return true;
            }
          }
          return false;
        });
  }

  @Test
  void a_tutor_shows_a_design_grow() throws Exception {
    Case demo = demo("01-lower-class-1-rpi");
    openDemo(demo);
    List<Optional<GrowthStage>> stages = new ArrayList<>();
    for (int i = 0; i < 8; i++) {
      keys.press("Ctrl+]");
      stages.add(w.table().stageProperty().get());
    }
    assertThat(stages).doesNotHaveDuplicates().doesNotContain(Optional.empty());
    keys.press("Ctrl+[");
    assertThat(w.table().stageProperty().get()).isEqualTo(stages.get(6));
    keys.press("F11", "Home", "Right");
    assertThat(w.table().stageProperty().get()).isEqualTo(stages.get(1));
    keys.press("W", "Esc");
    assertThat(w.table().stageProperty().get()).isEmpty();
    keys.press("F8");
    assertThat(opened()).isPresent();
    assertThat(w.table().current()).isEqualTo(demo);
    System.out.println("A tutor by keyboard: " + keys.keys() + " keys.");
  }

  @Test
  void a_technician_reads_the_pdf_alone() throws Exception {
    Path pdf = folder.resolve("for-the-laboratory.pdf");
    openDemo(demo("01-lower-class-1-rpi"));
    answer(Optional.of(Answers.saving(pdf)));
    keys.press("Ctrl+Shift+P", "Ctrl+W");
    assertThat(w.table().openProperty().get()).isFalse();
    answer(Optional.of(Answers.opening(pdf)));
    keys.press("Ctrl+O");
    assertThat(w.table().current().title()).isEqualTo(demo("01-lower-class-1-rpi").title());
    if (!OnStage.run(() -> w.table().preferences().listShownProperty().get())) {
      keys.press("Ctrl+B");
    }
    for (int i = 0; i < 9 && !isIn("roll"); i++) {
      keys.press("F6");
    }
    keys.walkTo("roll-tree", "Tab").press("Home");
    Set<String> read = new HashSet<>();
    for (int i = 0; i < 60; i++) {
      read.addAll(
          OnStage.run(
              () ->
                  w.find("roll-tree", Node.class).lookupAll(".tree-cell").stream()
                      .map(n -> n.getAccessibleText() + " " + ((Labeled) n).getText())
                      .toList()));
      keys.press("Right", "Down");
    }
    assertThat(read.toString()).contains("Lingual bar", "I-bar");
    keys.press("Ctrl+P");
    assertThat(OnStage.run(() -> w.window.preview().orElseThrow().stage().isShowing())).isTrue();
    keys.press("Esc");
    assertThat(OnStage.run(() -> w.window.preview().orElseThrow().stage().isShowing())).isFalse();
    System.out.println("A technician by keyboard: " + keys.keys() + " keys.");
  }
}
