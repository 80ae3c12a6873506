package saddlewright.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import saddlewright.casefile.Case;
import saddlewright.casefile.json.CaseStore;
import saddlewright.dentition.Arch;
import saddlewright.design.Component;
import saddlewright.design.MajorConnector;
import saddlewright.design.Rest;
import saddlewright.design.Subject;

/** Handles dragged and nudged in the window. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class HandlesOnTheSheetTest {
  private OnStage w;
  private Case demo;

  @BeforeAll
  void open(@TempDir Path settings) throws Exception {
    w = OnStage.open(settings);
    demo = CaseStore.load(Path.of("demo-cases/01-lower-class-1-rpi.json"));
  }

  @AfterAll
  void close() throws Exception {
    w.close();
  }

  private <C extends Component> C select(Class<C> kind) throws Exception {
    C found = demo.design(Arch.LOWER).all(kind).get(0);
    OnStage.run(
        () -> {
          w.table().lay(demo, Optional.empty());
          w.table().select(Subject.of(Arch.LOWER, found));
          return null;
        });
    w.settle();
    return found;
  }

  private MajorConnector bar() {
    return w.table().current().lowerDesign().majorConnector().orElseThrow();
  }

  @Test
  void a_border_that_comes_too_close_warns_in_the_words_of_the_finding_and_is_one_undo()
      throws Exception {
    select(MajorConnector.class);
    double before = bar().shape().clearance().orElse(3.0);
    // The lower arch opens upwards on the page: downwards on the screen is towards the teeth.
    w.pull("clearance", 0, 2, false);
    String held = w.caption();
    assertThat(bar().shape().clearance().orElse(3.0))
        .as("not before it is let go")
        .isEqualTo(before);
    assertThat(w.find("ghost-caption", Label.class).getGraphic()).as("a sign").isNotNull();
    w.letGo("clearance");
    assertThat(bar().shape().clearance()).hasValue(1.0);
    var finding =
        w.table().assessment().report().standing().stream()
            .filter(f -> f.ruleId().equals("connectors-clear-the-gingival-margins"))
            .findFirst()
            .orElseThrow();
    assertThat(held).contains(finding.sentence()).contains(finding.comparison().actual());
    OnStage.run(
        () -> {
          w.table().undo();
          return null;
        });
    assertThat(w.table().current()).isEqualTo(demo);
  }

  @Test
  void with_a_key_held_it_goes_by_tenths_and_escape_puts_it_back() throws Exception {
    select(MajorConnector.class);
    w.pull("height", 0, -1.23, true);
    w.letGo("height");
    assertThat(bar().shape().height()).hasValue(5.2);

    select(MajorConnector.class);
    w.pull("height", 0, -3, false);
    Node handle = w.handle("height");
    w.key(handle, KeyCode.ESCAPE, false);
    assertThat(w.caption()).isEmpty();
    w.letGo("height");
    assertThat(w.table().current()).isEqualTo(demo);
  }

  @Test
  void presses_of_an_arrow_that_follow_each_other_are_one_undo() throws Exception {
    select(MajorConnector.class);
    Node handle = w.handle("height");
    OnStage.run(
        () -> {
          handle.requestFocus();
          return null;
        });
    w.key(handle, KeyCode.UP, false);
    w.key(handle, KeyCode.UP, false);
    w.key(handle, KeyCode.UP, true);
    assertThat(bar().shape().height()).hasValue(5.1);
    assertThat(w.handle("height")).as("the focus stays where it was").isSameAs(handle);
    OnStage.run(
        () -> {
          w.table().undo();
          return null;
        });
    assertThat(w.table().current()).isEqualTo(demo);
  }

  @Test
  void a_rest_goes_to_another_site_of_its_tooth() throws Exception {
    Rest rest = select(Rest.class);
    Node handle = w.handle("site");
    // In the lower left premolars distal is up on the page, in the right ones as well.
    w.key(handle, KeyCode.UP, false);
    Rest now = (Rest) w.table().current().lowerDesign().find(rest.id()).orElseThrow();
    if (now.equals(rest)) {
      w.key(handle, KeyCode.DOWN, false);
      now = (Rest) w.table().current().lowerDesign().find(rest.id()).orElseThrow();
    }
    assertThat(now).isEqualTo(rest.withSite(now.site())).isNotEqualTo(rest);
  }

  @Test
  void handles_can_be_hit_and_are_named() throws Exception {
    select(MajorConnector.class);
    Node all = w.find("handles", Node.class);
    OnStage.run(
        () -> {
          all.lookupAll(".grip")
              .forEach(
                  n -> {
                    assertThat(n.getLayoutBounds().getWidth()).isGreaterThanOrEqualTo(24);
                    assertThat(n.getLayoutBounds().getHeight()).isGreaterThanOrEqualTo(24);
                    assertThat(n.getAccessibleText()).isNotBlank();
                    assertThat(n.isFocusTraversable()).isTrue();
                  });
          return null;
        });
  }
}
