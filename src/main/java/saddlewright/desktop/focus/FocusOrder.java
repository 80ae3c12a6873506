package saddlewright.desktop.focus;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.ToggleButton;

/** What within a node takes the keyboard. */
public final class FocusOrder {
  private FocusOrder() {}

  /** All that Tab would come to within a node, itself included, in the order of the scene. */
  public static List<Node> within(Node node) {
    List<Node> out = new ArrayList<>();
    collect(node, out);
    return out;
  }

  private static void collect(Node node, List<Node> out) {
    if (!node.isVisible() || node.isDisabled()) {
      return;
    }
    if (node.isFocusTraversable()) {
      out.add(node);
    }
    if (node instanceof Parent p) {
      p.getChildrenUnmodifiable().forEach(c -> collect(c, out));
    }
  }

  /** Where one enters a node: at its first, which of toggles is the one that is on. */
  static Optional<Node> first(Node node) {
    return within(node).stream().findFirst().map(FocusOrder::chosen);
  }

  private static Node chosen(Node node) {
    return node instanceof ToggleButton b
            && b.getToggleGroup() != null
            && b.getToggleGroup().getSelectedToggle() instanceof ToggleButton on
        ? on
        : node;
  }

  /** Whether a node lies within another, or is it. */
  public static boolean isWithin(Node node, Node outer) {
    for (Node n = node; n != null; n = n.getParent()) {
      if (n == outer) {
        return true;
      }
    }
    return false;
  }

  /** Whether it is seen at all: neither it nor what it stands in is hidden. */
  static boolean isSeen(Node node) {
    for (Node n = node; n != null; n = n.getParent()) {
      if (!n.isVisible()) {
        return false;
      }
    }
    return node.getScene() != null;
  }
}
