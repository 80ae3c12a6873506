package saddlewright.desktop;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import javafx.event.Event;
import javafx.geometry.Bounds;
import javafx.scene.AccessibleAttribute;
import javafx.scene.AccessibleRole;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.control.ButtonBar;
import javafx.scene.control.Control;
import javafx.scene.control.Label;
import javafx.scene.control.Labeled;
import javafx.scene.control.MenuBar;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.Separator;
import javafx.scene.control.SplitPane;
import javafx.scene.control.TabPane;
import javafx.scene.control.TitledPane;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToolBar;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import saddlewright.desktop.focus.FocusOrder;

/**
 * A walk over all nodes of a scene that says what keeps somebody from working it without a pointer,
 * without seeing it, or with an unsteady hand. Sizes are those of WCAG 2.2, 2.5.8 (24 by 24
 * pixels); names, roles and focus order those of 4.1.2, 2.1.1, 2.1.2 and 2.4.3.
 */
final class NodeVisit {
  private static final double TARGET = 24;

  /** Sizes come out of fonts and scales; nobody misses a target by this, pixels. */
  private static final double ROUNDING = 0.6;

  private static final int MOST_CELLS = 2000;

  /** Roles that say nothing of what can be done. */
  private static final Set<AccessibleRole> MEANINGLESS =
      EnumSet.of(AccessibleRole.NODE, AccessibleRole.PARENT);

  /** Roles by which a node that is no control says that it is worked. */
  private static final Set<AccessibleRole> WORKED =
      EnumSet.of(
          AccessibleRole.BUTTON,
          AccessibleRole.TOGGLE_BUTTON,
          AccessibleRole.CHECK_BOX,
          AccessibleRole.SLIDER,
          AccessibleRole.LIST_ITEM,
          AccessibleRole.SPINNER);

  private final Scene scene;
  private final String where;
  private final List<String> faults = new ArrayList<>();
  private int visited;

  NodeVisit(Scene scene, String where) {
    this.scene = scene;
    this.where = where;
  }

  /** What is wrong, one sentence each. */
  List<String> faults() {
    return faults;
  }

  /** How many nodes that somebody can work were visited. */
  int visited() {
    return visited;
  }

  /** Visits all that is seen; to be called where the scene lives. */
  NodeVisit all() {
    scene.getRoot().applyCss();
    scene.getRoot().layout();
    visit(scene.getRoot());
    return this;
  }

  private void visit(Node node) {
    if (!node.isVisible()) {
      return;
    }
    if (isWorked(node) && !isExcepted(node)) {
      visited++;
      name(node);
      role(node);
      focus(node);
      size(node);
    }
    boolean whole = node instanceof Control && !holdsOthers(node);
    if (node instanceof Parent p && !whole) {
      p.getChildrenUnmodifiable().forEach(this::visit);
    }
  }

  /** Controls that hold the nodes of the window rather than parts of their own. */
  private static boolean holdsOthers(Node node) {
    return node instanceof ScrollPane
        || node instanceof SplitPane
        || node instanceof TabPane
        || node instanceof TitledPane
        || node instanceof ToolBar
        || node instanceof ButtonBar;
  }

  /**
   * What is worked by the pointer alone, or smaller, with the reason: the viewport of a scroll pane
   * and the divider of a split pane are parts of controls, and neither keeps anything from anyone,
   * as what is out of view comes into view with the focus.
   */
  private static boolean isExcepted(Node node) {
    return node.getStyleClass().contains("viewport")
        || node.getStyleClass().contains("split-pane-divider");
  }

  private static boolean isWorked(Node node) {
    if (node instanceof Control) {
      boolean read = node instanceof Label && node.getOnMouseClicked() == null;
      return !(read
          || holdsOthers(node)
          || node instanceof Separator
          || node instanceof MenuBar
          || node instanceof javafx.scene.control.ScrollBar);
    }
    boolean pressed = node.getOnMouseClicked() != null || node.getOnMousePressed() != null;
    return node.isFocusTraversable() || pressed || WORKED.contains(node.getAccessibleRole());
  }

  private void fault(Node node, String what) {
    faults.add(where + ": " + called(node) + " " + what);
  }

  static String called(Node node) {
    String id = node.getId() == null ? "" : "#" + node.getId();
    String words = node instanceof Labeled l && l.getText() != null ? " “" + l.getText() + "”" : "";
    return node.getClass().getSimpleName() + id + node.getStyleClass() + words;
  }

  private void name(Node node) {
    String name = node.getAccessibleText();
    if ((name == null || name.isBlank()) && node instanceof Labeled) {
      Object text = node.queryAccessibleAttribute(AccessibleAttribute.TEXT);
      name = text == null ? null : text.toString();
    }
    if (name == null || name.isBlank()) {
      Object label = node.queryAccessibleAttribute(AccessibleAttribute.LABELED_BY);
      name = label instanceof Label l ? l.getText() : name;
    }
    if (name == null || name.chars().noneMatch(Character::isLetterOrDigit)) {
      fault(node, "has no name that could be read out (" + name + ")");
    }
  }

  private void role(Node node) {
    boolean said =
        node.getAccessibleRoleDescription() != null
            && !node.getAccessibleRoleDescription().isBlank();
    if (node.getAccessibleRole() == null
        || MEANINGLESS.contains(node.getAccessibleRole()) && !said) {
      fault(node, "has no role but " + node.getAccessibleRole());
    }
  }

  /**
   * What Tab passes over because a key does the same from where one is: the list of actions is
   * worked from the field above it, where the focus stays; the signs of findings on the sheet do
   * what the cards of the findings do, and F8; what opens beside a field of the prescription opens
   * from the field by F4 or Alt+Down.
   */
  private static boolean isWorkedFromElsewhere(Node node) {
    return "found-actions".equals(node.getId())
        || node.getStyleClass().contains("answer-more")
        || node.getStyleClass().contains("calendar-button")
        || node.getParent() != null && node.getParent().getStyleClass().contains("finding-marker");
  }

  private void focus(Node node) {
    if (!node.isFocusTraversable() && !isWorkedFromElsewhere(node)) {
      fault(node, "cannot be reached with Tab");
    }
  }

  private void size(Node node) {
    Bounds b = node.localToScene(node.getLayoutBounds());
    if (b.getWidth() + ROUNDING < TARGET || b.getHeight() + ROUNDING < TARGET) {
      fault(
          node,
          String.format(java.util.Locale.ROOT, "is %.1f by %.1f px", b.getWidth(), b.getHeight()));
    }
  }

  /**
   * Presses Tab from the first node until it comes round: it must have been at every node that
   * takes the focus, and within a part of the window never have gone to one that lies wholly above
   * the one before and beside or left of it.
   */
  NodeVisit tabRound(List<? extends Node> parts) {
    List<Node> all = FocusOrder.within(scene.getRoot());
    if (all.isEmpty()) {
      faults.add(where + ": nothing takes the keyboard");
      return this;
    }
    // Where Tab comes to from the first node is on the round; of toggles the first may not be.
    all.get(0).requestFocus();
    if (all.get(0) instanceof ToggleButton) {
      tab(scene.getFocusOwner());
    }
    Node first = scene.getFocusOwner();
    List<Node> round = new ArrayList<>();
    Node at = first;
    do {
      round.add(at);
      tab(at);
      // In a table Tab goes from cell to cell, and out of it at its end.
      for (int i = 0; i < MOST_CELLS && scene.getFocusOwner() == at && isTable(at); i++) {
        tab(at);
      }
      Node next = scene.getFocusOwner();
      if (next == at && all.size() == 1) {
        return this;
      }
      if (next == at) {
        fault(at, "holds the keyboard: Tab does not leave it");
        return this;
      }
      if (next != first) {
        order(at, next, parts);
      }
      at = next;
    } while (at != first && !round.contains(at) && round.size() < 2000);
    if (at != first) {
      fault(at, "is come back to by Tab before the first");
    }
    for (Node n : all) {
      if (isSeen(n) && round.stream().noneMatch(r -> r == n || isOfOneGroup(r, n))) {
        fault(n, "is never reached by Tab");
      }
    }
    return this;
  }

  /**
   * Of toggles of which one is always on Tab comes to that one, and the arrow keys to the others.
   */
  private static boolean isOfOneGroup(Node one, Node other) {
    return one instanceof ToggleButton a
        && other instanceof ToggleButton b
        && a.getToggleGroup() != null
        && a.getToggleGroup() == b.getToggleGroup();
  }

  private static boolean isTable(Node node) {
    return node.getAccessibleRole() == AccessibleRole.TABLE_VIEW;
  }

  private static boolean isSeen(Node node) {
    for (Node n = node; n != null; n = n.getParent()) {
      if (!n.isVisible()) {
        return false;
      }
    }
    return node.getScene() != null;
  }

  private void tab(Node node) {
    for (var type : List.of(KeyEvent.KEY_PRESSED, KeyEvent.KEY_RELEASED)) {
      Node to = type == KeyEvent.KEY_PRESSED ? node : scene.getFocusOwner();
      Event.fireEvent(to, new KeyEvent(type, "", "", KeyCode.TAB, false, false, false, false));
    }
  }

  private void order(Node from, Node to, List<? extends Node> parts) {
    boolean together =
        parts.stream().anyMatch(p -> FocusOrder.isWithin(from, p) && FocusOrder.isWithin(to, p));
    Bounds a = from.localToScene(from.getLayoutBounds());
    Bounds b = to.localToScene(to.getLayoutBounds());
    if (together && b.getMaxY() <= a.getMinY() + ROUNDING && b.getMinX() <= a.getMaxX()) {
      fault(from, "is followed by what lies above it: " + called(to));
    }
  }
}
