package saddlewright.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.ResourceBundle;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.Labeled;
import javafx.scene.control.TextInputControl;
import javafx.scene.control.Tooltip;
import javafx.scene.text.Text;
import javafx.stage.Stage;
import javafx.stage.Window;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import saddlewright.desktop.actions.Action;
import saddlewright.desktop.actions.Actions;

/**
 * The window speaks a language that nobody has: what it says in English all the same is either a
 * word of the case and its rules, or is written into the code of the window and cannot be
 * translated.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class PseudoLocaleTest {
  private static final Path SOURCES = Path.of("src/main/java/saddlewright/desktop");
  private static final Pattern LITERAL = Pattern.compile("\"((?:[^\"\\\\\\n]|\\\\.)*)\"");
  private static final Pattern WORD = Pattern.compile("\\p{L}{3,}");

  /** A word or several, as people write them, and no key, name of a style or code. */
  private static final Pattern PROSE =
      Pattern.compile("\\p{Lu}\\p{Ll}{2,}|.*\\p{L}{2,} \\p{L}{2,}.*");

  private OnStage w;
  private ResourceBundle english;

  @BeforeAll
  void open(@TempDir Path settings) throws Exception {
    OnStage.startToolkit();
    ResourceBundle bundle = ResourceBundle.getBundle("saddlewright.desktop.messages");
    english = OnStage.run(() -> Words.speak(new PseudoWords(bundle)));
    w = OnStage.open(settings);
    w.settle();
  }

  @AfterAll
  void close() throws Exception {
    w.close();
    OnStage.run(() -> Words.speak(english));
  }

  @Test
  void nothing_that_is_shown_stands_in_the_code_of_the_window() throws Exception {
    Set<String> literals = literals();
    assertThat(literals).hasSizeGreaterThan(10);
    Set<String> faults = new TreeSet<>();
    int[] seen = new int[1];
    new Screens(w)
        .walk(
            screen ->
                OnStage.run(
                    () -> {
                      for (Window win : List.copyOf(Window.getWindows())) {
                        if (win.getScene() != null) {
                          collect(win.getScene().getRoot(), screen, literals, faults, seen);
                          if (win instanceof Stage s) {
                            judge(s.getTitle(), screen, win.getScene().getRoot(), literals, faults);
                          }
                        }
                      }
                      return null;
                    }));
    for (Action a : OnStage.run(() -> Actions.of(w.window.menus()))) {
      if (!PseudoWords.isMarked(a.path().get(0))) {
        faults.add("menu " + a.place());
      }
    }
    assertThat(faults).isEmpty();
    assertThat(seen[0]).as("texts in the language of nobody").isGreaterThan(500);
  }

  /** What the sources of the window write out, comments and names of files aside. */
  private static Set<String> literals() throws IOException {
    Set<String> out = new TreeSet<>();
    try (Stream<Path> files = Files.walk(SOURCES)) {
      for (Path f : files.filter(p -> p.toString().endsWith(".java")).toList()) {
        String code = Files.readString(f).replaceAll("(?s)/\\*.*?\\*/|(?m)//.*$", "");
        Matcher m = LITERAL.matcher(code);
        while (m.find()) {
          String text = m.group(1).strip();
          if (PROSE.matcher(text).matches()) {
            out.add(text);
          }
        }
      }
    }
    // The name of the face is given to the toolkit; the others are typed into fields of the
    // prescription, and printed on it in English.
    out.removeAll(List.of("Liberation Sans", "not applicable", "to follow"));
    return out;
  }

  private static void collect(
      Node n, String screen, Set<String> literals, Set<String> faults, int[] seen) {
    if (!n.isVisible()) {
      return;
    }
    if (n instanceof Labeled l) {
      judge(l.getText(), screen, n, literals, faults);
      Tooltip t = l.getTooltip();
      if (t != null) {
        judge(t.getText(), screen, n, literals, faults);
      }
      if (l.getText() != null && PseudoWords.isMarked(l.getText())) {
        seen[0]++;
      }
    } else if (n instanceof TextInputControl t) {
      judge(t.getPromptText(), screen, n, literals, faults);
    } else if (n instanceof Text t && !(n.getParent() instanceof Labeled)) {
      judge(t.getText(), screen, n, literals, faults);
    }
    judge(n.getAccessibleText(), screen, n, literals, faults);
    if (n instanceof Parent p) {
      for (Node c : p.getChildrenUnmodifiable()) {
        collect(c, screen, literals, faults, seen);
      }
    }
  }

  private static void judge(
      String text, String screen, Node at, Set<String> literals, Set<String> faults) {
    if (at.getStyleClass().contains("keys")) {
      // The toolkit has names of its own for keys, in the language of the user.
      return;
    }
    if (text == null || PseudoWords.isMarked(text) || !WORD.matcher(text).find()) {
      return;
    }
    literals.stream()
        .filter(text::contains)
        .forEach(
            l ->
                faults.add(
                    "\""
                        + l
                        + "\" in \""
                        + text.replace('\n', ' ')
                        + "\", "
                        + at.getClass().getSimpleName()
                        + " on "
                        + screen));
  }
}
