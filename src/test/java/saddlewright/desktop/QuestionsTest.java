package saddlewright.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import javafx.scene.Node;
import javafx.scene.control.TextField;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import saddlewright.casefile.json.CaseStore;
import saddlewright.chart.ChartField;
import saddlewright.dentition.Arch;
import saddlewright.dentition.RestSite;
import saddlewright.dentition.Side;
import saddlewright.dentition.Tooth;
import saddlewright.dentition.Zone;
import saddlewright.design.Subject;

/** What can't be judged leads to the very field in which the answer is written. */
class QuestionsTest {
  private static final Path CASE = Path.of("demo-cases/10-fault-lower-class-2.json");

  @TempDir Path folder;
  private OnStage w;

  @BeforeEach
  void open() throws Exception {
    w = OnStage.open(folder.resolve("settings"));
    var c = CaseStore.load(CASE);
    act(() -> w.table().lay(c, Optional.empty()));
  }

  @AfterEach
  void close() throws Exception {
    w.close();
  }

  private void act(Runnable action) throws Exception {
    OnStage.run(
        () -> {
          action.run();
          return null;
        });
    w.settle();
  }

  private Node focused() throws Exception {
    return OnStage.run(() -> w.find("subject", Node.class).getScene().getFocusOwner());
  }

  /** 46 stands and has a distobuccal undercut with its height; 36 is lost; 46 is not tilted. */
  private static Map<ChartField, String> fields() {
    List<Tooth> t46 = List.of(Tooth.T46);
    Map<ChartField, String> m = new LinkedHashMap<>();
    m.put(ChartField.lingualDepth(t46), "soft-lingual");
    m.put(ChartField.buccalDepth(t46), "soft-buccal");
    m.put(ChartField.tissueUndercut(t46), "soft-undercut");
    m.put(ChartField.undercut(Tooth.T46, Zone.MESIOLINGUAL), "undercut-" + Zone.MESIOLINGUAL);
    m.put(
        ChartField.undercutHeight(Tooth.T46, Zone.DISTOBUCCAL),
        "undercut-height-" + Zone.DISTOBUCCAL);
    m.put(
        ChartField.clearance(Tooth.T46, RestSite.MESIAL_OCCLUSAL),
        "clearance-" + RestSite.MESIAL_OCCLUSAL);
    m.put(ChartField.mobility(t46), "tooth-mobility");
    m.put(ChartField.boneSupport(t46), "tooth-bone");
    m.put(ChartField.crownRoot(t46), "tooth-crown-root");
    m.put(ChartField.crownHeight(t46), "tooth-height");
    m.put(ChartField.condition(t46), "tooth-condition");
    m.put(ChartField.tiltDegrees(Tooth.T46), "tooth-tilt");
    m.put(ChartField.saddleSpace(List.of(Tooth.T36)), "tooth-saddle-space");
    m.put(ChartField.ridge(Arch.LOWER, Side.LEFT), "ridge-" + Arch.LOWER + Side.LEFT);
    m.put(ChartField.palateForm(), "palate");
    m.put(ChartField.palateLimit(), "palate-limit");
    return m;
  }

  @Test
  void every_kind_of_value_has_a_field_that_the_question_goes_to() throws Exception {
    Set<ChartField.Kind> kinds = EnumSet.noneOf(ChartField.Kind.class);
    for (Map.Entry<ChartField, String> e : fields().entrySet()) {
      ChartField f = e.getKey();
      kinds.add(f.kind());
      act(() -> w.table().stepProperty().set(Step.REVIEW));
      act(() -> w.table().goTo(f));
      assertThat(focused().getId()).as(f.words()).isEqualTo(e.getValue());
      assertThat(w.table().stepProperty().get()).isEqualTo(Step.SURVEY);
      assertThat(w.table().selected())
          .contains(f.teeth().isEmpty() ? Subject.of(f.arch()) : Subject.of(f.teeth().get(0)));
    }
    assertThat(kinds).as("every kind is tried").containsExactly(ChartField.Kind.values());
  }

  @Test
  void the_height_of_an_undercut_waits_for_its_depth() throws Exception {
    act(() -> w.table().goTo(ChartField.undercutHeight(Tooth.T46, Zone.MESIOLINGUAL)));
    assertThat(focused().getId()).isEqualTo("undercut-" + Zone.MESIOLINGUAL);
  }

  @Test
  void an_answer_for_one_tooth_leads_on_to_the_next_that_wants_it() throws Exception {
    List<Tooth> teeth = List.of(Tooth.T45, Tooth.T44, Tooth.T43);
    act(() -> w.table().goTo(ChartField.buccalDepth(teeth)));
    for (Tooth t : teeth) {
      assertThat(w.table().selected()).contains(Subject.of(t));
      TextField field = (TextField) focused();
      act(
          () -> {
            field.setText("6");
            field.getOnAction().handle(null);
          });
    }
    assertThat(w.table().current().lowerChart().softTissues().buccalDepth())
        .containsKeys(Tooth.T45, Tooth.T44, Tooth.T43);
    assertThat(w.table().selected()).as("nothing more is wanted").contains(Subject.of(Tooth.T43));
  }

  @Test
  void outlook_crown_to_root_and_saddle_space_are_charted() throws Exception {
    act(() -> w.table().goTo(ChartField.crownRoot(List.of(Tooth.T46))));
    TextField ratio = (TextField) focused();
    act(
        () -> {
          ratio.setText("1.2");
          ratio.getOnAction().handle(null);
        });
    act(() -> w.find("tooth-doubtful", javafx.scene.control.CheckBox.class).fire());
    act(() -> w.table().goTo(ChartField.saddleSpace(List.of(Tooth.T36))));
    TextField space = (TextField) focused();
    act(
        () -> {
          space.setText("5.5");
          space.getOnAction().handle(null);
        });
    var chart = w.table().current().lowerChart();
    assertThat(chart.tooth(Tooth.T46).crownRoot()).contains(1.2);
    assertThat(chart.tooth(Tooth.T46).doubtful()).isTrue();
    assertThat(chart.tooth(Tooth.T36).saddleSpace()).contains(5.5);
  }
}
