package saddlewright.desktop.sheet;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import javafx.collections.ObservableList;
import javafx.scene.Group;
import javafx.scene.Node;
import saddlewright.drawing.Drawing;
import saddlewright.drawing.Layer;
import saddlewright.drawing.Mark;
import saddlewright.drawing.Palette;

/** The nodes of a drawing, one group a layer; a new drawing replaces only the marks that differ. */
final class Layers extends Group {
  private static final double FADED = 0.2;

  private final Map<Layer, Group> groups = new EnumMap<>(Layer.class);
  private Map<Mark, Node> nodes = new IdentityHashMap<>();
  private Palette palette = Palette.PAPER;

  Layers() {
    for (Layer layer : Layer.values()) {
      Group g = new Group();
      groups.put(layer, g);
      getChildren().add(g);
    }
  }

  /** Shows the drawing; the number of nodes that had to be made anew. */
  int show(Drawing drawing, Palette inks) {
    if (!inks.equals(palette)) {
      palette = inks;
      nodes = new IdentityHashMap<>();
    }
    MarkNodes maker = new MarkNodes(palette);
    Map<Mark, Node> next = new IdentityHashMap<>();
    // Most marks are the very same; only what is left over is worth looking through.
    for (Mark mark : drawing.marks()) {
      Node node = nodes.remove(mark);
      if (node != null) {
        next.put(mark, node);
      }
    }
    Map<Mark, Deque<Node>> spare = new HashMap<>();
    nodes.forEach((mark, n) -> spare.computeIfAbsent(mark, m -> new ArrayDeque<>()).add(n));
    Map<Layer, List<Node>> rows = new EnumMap<>(Layer.class);
    int made = 0;
    for (Mark mark : drawing.marks()) {
      Node node = next.get(mark);
      if (node == null) {
        node = Optional.ofNullable(spare.get(mark)).map(Deque::poll).orElse(null);
        if (node == null) {
          node = maker.of(mark);
          made++;
        }
        next.put(mark, node);
      }
      rows.computeIfAbsent(mark.layer(), l -> new ArrayList<>()).add(node);
    }
    nodes = next;
    groups.forEach((layer, g) -> update(g.getChildren(), rows.getOrDefault(layer, List.of())));
    return made;
  }

  /** Fades the nodes of marks, and shows all others as they are. */
  void fade(Set<Mark> marks) {
    for (Map.Entry<Mark, Node> e : nodes.entrySet()) {
      double opacity = e.getKey() instanceof Mark.Fill f ? f.opacity() : 1;
      double shown = marks.contains(e.getKey()) ? FADED * opacity : opacity;
      if (e.getValue().getOpacity() != shown) {
        e.getValue().setOpacity(shown);
      }
    }
  }

  private static void update(ObservableList<Node> shown, List<Node> wanted) {
    if (shown.equals(wanted)) {
      return;
    }
    Set<Node> kept = new HashSet<>(wanted);
    shown.removeIf(n -> !kept.contains(n));
    for (int i = 0; i < wanted.size(); i++) {
      if (i >= shown.size() || shown.get(i) != wanted.get(i)) {
        Node n = wanted.get(i);
        shown.remove(n);
        shown.add(i, n);
      }
    }
  }
}
