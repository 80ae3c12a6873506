package saddlewright.desktop.focus;

import java.lang.ref.WeakReference;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javafx.beans.value.ChangeListener;
import javafx.scene.Node;
import javafx.scene.Scene;

/** The parts of a window between which one key goes, each where one was in it last. */
public final class Panes {
  private final List<Node> panes = new ArrayList<>();
  private final Map<Node, WeakReference<Node>> last = new HashMap<>();

  /** Follows where the focus goes in a scene. */
  public Panes(Scene scene) {
    ChangeListener<Node> note = (o, was, is) -> note(is);
    scene.focusOwnerProperty().addListener(note);
  }

  /** Adds a part after those that are there. */
  public void add(Node pane) {
    panes.add(pane);
  }

  private void note(Node focused) {
    pane(focused).ifPresent(p -> last.put(p, new WeakReference<>(focused)));
  }

  private Optional<Node> pane(Node focused) {
    return panes.stream()
        .filter(p -> focused != null && FocusOrder.isWithin(focused, p))
        .findFirst();
  }

  /** Goes on to the next part that is shown and takes the keyboard, or back to the one before. */
  public void go(Scene scene, boolean onwards) {
    int from = pane(scene.getFocusOwner()).map(panes::indexOf).orElse(onwards ? -1 : 0);
    for (int i = 1; i <= panes.size(); i++) {
      Node pane = panes.get(Math.floorMod(from + (onwards ? i : -i), panes.size()));
      if (FocusOrder.isSeen(pane) && enter(pane)) {
        return;
      }
    }
  }

  /** When what has the focus is not seen, or nothing has it, goes to a part that is. */
  public void stay(Node pane) {
    Node focused = pane.getScene() == null ? null : pane.getScene().getFocusOwner();
    if (focused == null || !FocusOrder.isSeen(focused)) {
      enter(pane);
    }
  }

  /** Goes to where one was last in a part, otherwise to its first node; false when it has none. */
  public boolean enter(Node pane) {
    Optional<Node> there =
        Optional.ofNullable(last.get(pane))
            .map(WeakReference::get)
            .filter(n -> FocusOrder.isWithin(n, pane))
            .filter(n -> FocusOrder.isSeen(n) && !n.isDisabled() && n.isFocusTraversable())
            .or(() -> FocusOrder.first(pane));
    there.ifPresent(Node::requestFocus);
    return there.isPresent();
  }
}
