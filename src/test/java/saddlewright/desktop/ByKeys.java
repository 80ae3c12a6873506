package saddlewright.desktop;

import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import javafx.event.Event;
import javafx.event.EventType;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Tooltip;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.stage.PopupWindow;
import javafx.stage.Stage;
import javafx.stage.Window;

/**
 * Somebody who works by keyboard alone: keys go to what has the focus in the window in front, and
 * nowhere else.
 */
final class ByKeys {
  private static final Map<String, KeyCode> NAMES =
      Map.of(
          "Esc", KeyCode.ESCAPE,
          "Comma", KeyCode.COMMA,
          "Slash", KeyCode.SLASH,
          "Del", KeyCode.DELETE,
          "[", KeyCode.OPEN_BRACKET,
          "]", KeyCode.CLOSE_BRACKET);

  private final OnStage w;
  private final List<Window> strangers;
  private int keys;

  ByKeys(OnStage w) throws Exception {
    this.w = w;
    this.strangers = OnStage.run(() -> List.copyOf(Window.getWindows()));
  }

  /** How many keys have been pressed. */
  int keys() {
    return keys;
  }

  /** Presses keys one after another, each as "Ctrl+Shift+P", "Alt+3", "Right", "Enter", "F8". */
  ByKeys press(String... combinations) throws Exception {
    for (String c : combinations) {
      List<String> parts = Arrays.asList(c.split("\\+"));
      KeyCode code = code(parts.get(parts.size() - 1));
      boolean shift = parts.contains("Shift");
      boolean ctrl = parts.contains("Ctrl");
      boolean alt = parts.contains("Alt");
      OnStage.run(
          () -> {
            send(KeyEvent.KEY_PRESSED, KeyEvent.CHAR_UNDEFINED, code, shift, ctrl, alt);
            String typed = typed(code, shift);
            if (!typed.isEmpty()) {
              // Where the press has moved the focus the letter goes on, as on a real keyboard.
              send(KeyEvent.KEY_TYPED, typed, KeyCode.UNDEFINED, shift, ctrl, alt);
            }
            send(KeyEvent.KEY_RELEASED, KeyEvent.CHAR_UNDEFINED, code, shift, ctrl, alt);
            return null;
          });
      keys++;
      w.settle();
    }
    return this;
  }

  ByKeys times(int n, String combination) throws Exception {
    for (int i = 0; i < n; i++) {
      press(combination);
    }
    return this;
  }

  /** Types letters into what has the focus. */
  ByKeys type(String text) throws Exception {
    OnStage.run(
        () -> {
          for (char c : text.toCharArray()) {
            send(
                KeyEvent.KEY_TYPED,
                String.valueOf(c),
                KeyCode.UNDEFINED,
                Character.isUpperCase(c),
                false,
                false);
          }
          return null;
        });
    keys += text.length();
    w.settle();
    return this;
  }

  /** What has the focus. */
  Node focus() throws Exception {
    return OnStage.run(this::owner);
  }

  /** Presses a key until what has the focus has this id. */
  ByKeys walkTo(String id, String combination) throws Exception {
    return walkTo(id, n -> id.equals(n.getId()), combination);
  }

  /** Presses a key until what has the focus is what is sought. */
  ByKeys walkTo(String name, Predicate<Node> sought, String combination) throws Exception {
    Set<Node> passed = new LinkedHashSet<>();
    int again = 0;
    while (again < 3) {
      Node at = focus();
      if (at != null && OnStage.run(() -> sought.test(at))) {
        return this;
      }
      again = passed.add(at) ? 0 : again + 1;
      press(combination);
    }
    throw new AssertionError(
        combination
            + " never leads to "
            + name
            + ", only round "
            + passed.stream().map(ByKeys::named).collect(Collectors.joining(", ")));
  }

  private static String named(Node n) {
    return n == null
        ? "nothing"
        : n.getClass().getSimpleName() + "#" + n.getId() + " “" + n.getAccessibleText() + "”";
  }

  private static KeyCode code(String name) {
    if (NAMES.containsKey(name)) {
      return NAMES.get(name);
    }
    KeyCode code = KeyCode.getKeyCode(name);
    if (code == null) {
      throw new IllegalArgumentException("no key " + name);
    }
    return code;
  }

  private static String typed(KeyCode code, boolean shift) {
    if (code == KeyCode.ENTER) {
      return "\r";
    }
    if (code == KeyCode.SPACE) {
      return " ";
    }
    if (code.isDigitKey() || code.isLetterKey()) {
      return shift ? code.getName() : code.getName().toLowerCase(java.util.Locale.ROOT);
    }
    return "";
  }

  private void send(
      EventType<KeyEvent> type,
      String letter,
      KeyCode code,
      boolean shift,
      boolean ctrl,
      boolean alt) {
    Node owner = owner();
    javafx.event.EventTarget target = owner == null ? scene() : owner;
    Event.fireEvent(target, new KeyEvent(type, letter, letter, code, shift, ctrl, alt, false));
  }

  private Node owner() {
    return scene().getFocusOwner();
  }

  /** The scene that has the keyboard: of a popup, otherwise of the window in front. */
  private Scene scene() {
    List<Window> open =
        Window.getWindows().stream().filter(x -> x.isShowing() && isMine(x)).toList();
    return open.stream()
        .filter(x -> x instanceof PopupWindow && !(x instanceof Tooltip))
        .filter(x -> x.getScene().getFocusOwner() != null)
        .reduce((a, b) -> b)
        .or(() -> open.stream().filter(Window::isFocused).reduce((a, b) -> b))
        .or(() -> open.stream().filter(Stage.class::isInstance).reduce((a, b) -> b))
        .map(Window::getScene)
        .orElseThrow(() -> new AssertionError("no window is open"));
  }

  /** Whether it was opened by the test; those of others may not have closed yet. */
  private boolean isMine(Window window) {
    return window == w.window.stage() || !strangers.contains(window);
  }
}
