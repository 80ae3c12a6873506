package saddlewright.desktop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.Labeled;
import javafx.scene.layout.Region;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import saddlewright.casefile.json.CaseStore;

/** Text grows to twice and three times its size, and no tool is pushed out of the window. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class TextSizeTest {
  private OnStage w;

  @BeforeAll
  void open(@TempDir Path settings) throws Exception {
    w = OnStage.open(settings);
    w.settle();
    var c = CaseStore.load(Path.of("demo-cases", "10-fault-lower-class-2.json"));
    OnStage.run(
        () -> {
          w.table().lay(c, Optional.empty());
          return null;
        });
    w.settle();
  }

  @AfterAll
  void close() throws Exception {
    w.close();
  }

  private void size(double size) throws Exception {
    OnStage.run(
        () -> {
          w.table().textSizeProperty().set(size);
          Parent root = w.window.sheet().getScene().getRoot();
          root.applyCss();
          root.layout();
          return null;
        });
    w.settle();
  }

  private double type(String id) throws Exception {
    return OnStage.run(() -> w.find(id, Labeled.class).getFont().getSize());
  }

  @Test
  void all_text_grows_with_it_and_goes_back() throws Exception {
    size(1);
    double usual = type("status-zoom");
    size(2);
    assertThat(type("status-zoom")).isCloseTo(2 * usual, within(0.01));
    assertThat(type("status-findings")).isCloseTo(2 * usual, within(0.01));
    size(3);
    assertThat(type("status-zoom")).isCloseTo(3 * usual, within(0.01));
    size(1);
    assertThat(type("status-zoom")).isCloseTo(usual, within(0.01));
  }

  @Test
  void at_twice_the_size_every_button_of_every_step_lies_within_the_window() throws Exception {
    size(2);
    for (Step step : Step.values()) {
      OnStage.run(
          () -> {
            w.table().stepProperty().set(step);
            Parent root = w.window.sheet().getScene().getRoot();
            root.applyCss();
            root.layout();
            return null;
          });
      w.settle();
      List<String> outside = new ArrayList<>();
      OnStage.run(
          () -> {
            Parent root = w.window.sheet().getScene().getRoot();
            root.applyCss();
            root.layout();
            double width = root.getScene().getWidth();
            for (Node strip : root.lookupAll(".tool-strip")) {
              for (Node n : strip.lookupAll(".tool")) {
                Bounds b = n.localToScene(n.getLayoutBounds());
                boolean narrow = n.prefWidth(-1) > ((Region) n).getWidth() + 1;
                if (strip.isVisible() && (b.getMaxX() > width || narrow)) {
                  outside.add(((ButtonBase) n).getText());
                }
              }
            }
            for (String id : List.of("status-findings", "status-notation", "status-saved")) {
              Bounds b =
                  w.find(id, Labeled.class)
                      .localToScene(w.find(id, Labeled.class).getLayoutBounds());
              if (b.getMaxX() > width) {
                outside.add(id);
              }
            }
            return null;
          });
      assertThat(outside).as(step.name()).isEmpty();
    }
    size(1);
  }

  @Test
  void what_stays_with_fdi_numbers_says_so() throws Exception {
    for (saddlewright.dentition.Notation n : saddlewright.dentition.Notation.values()) {
      List<Boolean> said =
          OnStage.run(
              () -> {
                w.table().notationProperty().set(n);
                return w.window.sheet().getScene().getRoot().lookupAll(".fdi-note").stream()
                    .map(Node::isVisible)
                    .toList();
              });
      assertThat(said).hasSize(2).containsOnly(n != saddlewright.dentition.Notation.FDI);
    }
    OnStage.run(
        () -> {
          w.table().notationProperty().set(saddlewright.dentition.Notation.FDI);
          return null;
        });
  }
}
