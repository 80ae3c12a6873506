package saddlewright.desktop;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import javafx.event.Event;
import javafx.event.EventTarget;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.scene.control.MenuItem;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.stage.PopupWindow;
import javafx.stage.Window;

/** A keyboard: what is pressed goes to whatever has the focus. */
final class Keys {
  /** Keys that are held while another is pressed. */
  enum Held {
    SHIFT,
    CONTROL,
    ALT
  }

  private final OnStage w;
  private int presses;

  Keys(OnStage w) {
    this.w = w;
  }

  /** How many keys have been pressed, held ones not counted. */
  int presses() {
    return presses;
  }

  private Scene scene() {
    return w.find("welcome", Node.class).getScene();
  }

  Node focused() throws Exception {
    return OnStage.run(() -> scene().getFocusOwner());
  }

  /** Presses a key and lets it go; a letter or digit is also typed. */
  void press(KeyCode code, Held... held) throws Exception {
    presses++;
    Set<Held> with = EnumSet.noneOf(Held.class);
    with.addAll(List.of(held));
    OnStage.run(
        () -> {
          send(KeyEvent.KEY_PRESSED, code, "", with);
          if (code.isLetterKey() || code.isDigitKey() || code == KeyCode.SPACE) {
            send(
                KeyEvent.KEY_TYPED,
                KeyCode.UNDEFINED,
                code == KeyCode.SPACE ? " " : code.getName().toLowerCase(java.util.Locale.ROOT),
                with);
          }
          send(KeyEvent.KEY_RELEASED, code, "", with);
          return null;
        });
    if (OnStage.run(() -> w.table().openProperty().get())) {
      w.settle();
    }
  }

  /** The same several times. */
  void times(int n, KeyCode code, Held... held) throws Exception {
    for (int i = 0; i < n; i++) {
      press(code, held);
    }
  }

  private void send(
      javafx.event.EventType<KeyEvent> type, KeyCode code, String text, Set<Held> with) {
    EventTarget to = scene().getFocusOwner() == null ? scene() : scene().getFocusOwner();
    Event.fireEvent(
        to,
        new KeyEvent(
            type,
            type == KeyEvent.KEY_TYPED ? text : KeyEvent.CHAR_UNDEFINED,
            "",
            code,
            with.contains(Held.SHIFT),
            with.contains(Held.CONTROL),
            with.contains(Held.ALT),
            false));
  }

  /** What the sheet says to somebody who does not see it. */
  String told() throws Exception {
    return OnStage.run(() -> w.window.sheet().getAccessibleText());
  }

  /** Walks over the sites of a tooth until the sheet says that one is at the site. */
  void toSite(String name) throws Exception {
    List<KeyCode> ways = List.of(KeyCode.DOWN, KeyCode.RIGHT, KeyCode.UP, KeyCode.LEFT);
    for (int i = 0; i < 24; i++) {
      if (told().contains(". At " + name + ":")) {
        return;
      }
      press(ways.get(i / 2 % 4), Held.SHIFT);
    }
    throw new AssertionError("no way to " + name + " but to: " + told());
  }

  /** Goes down an open menu to the first line that begins with these words, and takes it. */
  void choose(String words) throws Exception {
    for (int i = 0; i < 60; i++) {
      press(KeyCode.DOWN);
      if (line().startsWith(words)) {
        press(KeyCode.ENTER);
        return;
      }
    }
    throw new AssertionError("no line " + words + " in the menu, at last " + line());
  }

  /** The text of the chosen line of the innermost menu that is open. */
  String line() throws Exception {
    return OnStage.run(
        () -> {
          String text = "";
          for (Window x : Window.getWindows()) {
            if (x instanceof PopupWindow p && p.getScene() != null) {
              for (Node n : p.getScene().getRoot().lookupAll(".menu-item")) {
                boolean chosen =
                    n.getPseudoClassStates().stream()
                        .anyMatch(s -> s.getPseudoClassName().equals("focused"));
                if (chosen) {
                  text =
                      n.lookupAll(".label").stream()
                          .map(l -> ((Label) l).getText())
                          .filter(t -> t != null && !t.isBlank())
                          .findFirst()
                          .orElse("");
                }
              }
            }
          }
          return text;
        });
  }

  /** The texts of all lines of the menus that are open. */
  List<String> lines() throws Exception {
    return OnStage.run(
        () ->
            Window.getWindows().stream()
                .filter(javafx.scene.control.ContextMenu.class::isInstance)
                .flatMap(x -> ((javafx.scene.control.ContextMenu) x).getItems().stream())
                .map(MenuItem::getText)
                .filter(t -> t != null)
                .toList());
  }
}
