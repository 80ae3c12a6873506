package saddlewright.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.Labeled;
import javafx.scene.text.Text;
import javafx.stage.Window;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** No words of the window are cut short, at the usual size of its type and at twice that. */
class NothingClippedTest {

  @ParameterizedTest
  @ValueSource(doubles = {1, 2})
  void every_label_shows_all_its_words(double size, @TempDir Path settings) throws Exception {
    Set<String> cut = new TreeSet<>();
    int[] seen = new int[1];
    try (OnStage w = OnStage.open(settings)) {
      w.settle();
      OnStage.run(
          () -> {
            w.table().textSizeProperty().set(size);
            return null;
          });
      new Screens(w)
          .walk(
              screen ->
                  OnStage.run(
                      () -> {
                        for (Window win : List.copyOf(Window.getWindows())) {
                          if (win.isShowing() && win.getScene() != null) {
                            Parent root = win.getScene().getRoot();
                            root.applyCss();
                            root.layout();
                            look(root, screen, cut, seen);
                          }
                        }
                        return null;
                      }));
    }
    assertThat(cut).isEmpty();
    assertThat(seen[0]).isGreaterThan(500);
  }

  private static void look(Node n, String screen, Set<String> cut, int[] seen) {
    if (!n.isVisible() || n.getOpacity() == 0) {
      return;
    }
    if (n instanceof Labeled l && l.getText() != null && !l.getText().isBlank()) {
      for (Node c : l.getChildrenUnmodifiable()) {
        if (c instanceof Text t) {
          seen[0]++;
          if (l.getWidth() < 1 && l.isManaged()) {
            // A label with no room at all shows not even a sign that it is cut.
            cut.add("no room for \"" + l.getText().replace('\n', ' ') + "\" on " + screen);
          }
          boolean shortened =
              t.getText().endsWith(l.getEllipsisString())
                  && !l.getText().endsWith(l.getEllipsisString());
          // What may be shortened tells its words in full when pointed at.
          boolean toldInFull =
              l.getTooltip() != null && l.getTooltip().getText().contains(l.getText());
          if (shortened && !toldInFull) {
            cut.add(
                "\""
                    + l.getText().replace('\n', ' ')
                    + "\" ("
                    + l.getId()
                    + " "
                    + l.getStyleClass()
                    + ") on "
                    + screen);
          }
        }
      }
    }
    if (n instanceof Parent p) {
      p.getChildrenUnmodifiable().forEach(c -> look(c, screen, cut, seen));
    }
  }
}
