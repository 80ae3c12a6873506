package saddlewright.desktop.sheet;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import javafx.css.PseudoClass;
import javafx.scene.Group;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.shape.Line;
import saddlewright.design.Component;
import saddlewright.desktop.Worktable;
import saddlewright.desktop.tools.Proposal;
import saddlewright.drawing.Mark;
import saddlewright.geometry.Box;
import saddlewright.geometry.Point;
import saddlewright.geometry.Transform;
import saddlewright.layout.Laid;
import saddlewright.rules.Situation;

/** What a click would place, drawn as it will be, with its measured facts beside the pointer. */
final class Ghost extends Group {
  private static final double OPACITY = 0.72;
  private static final double BESIDE_POINTER = 18;

  /** Words keep this far from the edge of the sheet, pixels. */
  private static final double EDGE = 4;

  /** Longer lines of words are broken, pixels. */
  private static final double WIDEST = 460;

  private static final PseudoClass WARNING = PseudoClass.getPseudoClass("warning");

  /** Width of the lines of a cross, and half its size, mm. */
  private static final double STRIKE = 0.5;

  private static final double CROSS = 2;

  private final SheetPane sheet;
  private final Worktable table;
  private final Label caption = new Label();
  private final Label sign = new Label("!");
  private Optional<Proposal> shown = Optional.empty();
  private Optional<Situation> next = Optional.empty();
  private String words = "";
  private boolean faded;

  Ghost(SheetPane sheet, Worktable table) {
    this.sheet = sheet;
    this.table = table;
    setMouseTransparent(true);
    setOpacity(OPACITY);
    caption.setId("ghost-caption");
    caption.getStyleClass().add("ghost-caption");
    caption.setMouseTransparent(true);
    caption.setWrapText(true);
    sign.getStyleClass().add("warning-sign");
    caption.setVisible(false);
    caption.setManaged(false);
  }

  Label caption() {
    return caption;
  }

  void clear() {
    if (shown.isPresent() || caption.isVisible()) {
      shown = Optional.empty();
      next = Optional.empty();
      getChildren().clear();
      caption.setVisible(false);
      unfade();
    }
  }

  /** Shows what the proposal would change, its caption at a place of the pane. */
  void show(Proposal proposal, String more, double x, double y) {
    if (!shown.equals(Optional.of(proposal))) {
      draw(proposal);
      words = proposal.name() + facts(proposal);
    }
    say(words + (more.isEmpty() ? "" : "\n" + more), false, x, y);
  }

  /** Shows what an edit would do, its caption below what it concerns. */
  void preview(Proposal proposal) {
    draw(proposal);
    Point at =
        Optional.of(getBoundsInParent())
            .filter(b -> !b.isEmpty())
            .map(b -> sheet.camera().toWindow(new Point(b.getMinX(), b.getMaxY())))
            .orElse(new Point(BESIDE_POINTER, BESIDE_POINTER));
    say(proposal.name() + facts(proposal), false, at.x(), at.y());
  }

  /** Words alone, for where nothing can be placed. */
  void refuse(String why, double x, double y) {
    if (shown.isPresent()) {
      clear();
    }
    say(why, false, x, y);
  }

  /** Words beside the pointer, with the sign of a warning when something is too small. */
  void say(String what, boolean warning, double x, double y) {
    caption.setText(what);
    caption.setGraphic(warning ? sign : null);
    caption.pseudoClassStateChanged(WARNING, warning);
    caption.setVisible(true);
    caption.setMaxWidth(Math.max(160, Math.min(WIDEST, sheet.getWidth() - 2 * EDGE)));
    caption.applyCss();
    double width = Math.min(caption.prefWidth(-1), caption.getMaxWidth());
    caption.resize(width, caption.prefHeight(width));
    place(x, y);
  }

  /** Beside the pointer, never under it nor off the sheet: to the right below if there is room. */
  private void place(double x, double y) {
    double right = sheet.getWidth() - EDGE - caption.getWidth();
    double foot = sheet.getHeight() - EDGE - caption.getHeight();
    double left = x + BESIDE_POINTER;
    double top = y + BESIDE_POINTER;
    boolean besideIt = left <= right || x - BESIDE_POINTER - caption.getWidth() >= EDGE;
    if (left > right) {
      left = besideIt ? x - BESIDE_POINTER - caption.getWidth() : Math.max(EDGE, right);
    }
    if (top > foot) {
      top = besideIt ? Math.max(EDGE, foot) : y - BESIDE_POINTER - caption.getHeight();
    }
    caption.relocate(Math.round(left), Math.round(Math.max(EDGE, top)));
  }

  /** Draws what the proposal would change, without words. */
  void draw(Proposal proposal) {
    shown = Optional.of(proposal);
    getChildren().clear();
    Situation old = table.assessment().arch(proposal.arch());
    try {
      Situation then = NewParts.situation(proposal, table.assessment());
      next = Optional.of(then);
      Set<Mark> there = new HashSet<>(sheet.draw(old.layout()).marks());
      MarkNodes maker = new MarkNodes(sheet.palette());
      List<Node> nodes = new ArrayList<>();
      sheet
          .place(proposal.arch())
          .ifPresent(
              t -> {
                for (Mark m : sheet.draw(then.layout()).marks()) {
                  if (!there.contains(m)) {
                    nodes.add(maker.of(m.transformed(t)));
                  }
                }
              });
      sheet.place(proposal.arch()).ifPresent(t -> nodes.addAll(struck(old, then, t)));
      getChildren().setAll(nodes);
      fadeReplaced(proposal, old, then, there);
    } catch (RuntimeException e) {
      // Without a picture of it, the click may still be tried: the sheet says what went wrong.
      next = Optional.of(old);
    }
  }

  /** What would change its shape is faded so that the new one is seen; so is what would go. */
  private void fadeReplaced(Proposal proposal, Situation old, Situation then, Set<Mark> there) {
    boolean changes =
        old.design().components().stream()
            .anyMatch(c -> !then.design().find(c.id()).equals(Optional.of(c)));
    if (!changes) {
      unfade();
      return;
    }
    there.removeAll(sheet.draw(then.layout()).marks());
    Set<Mark> gone = new HashSet<>();
    sheet.place(proposal.arch()).ifPresent(t -> there.forEach(m -> gone.add(m.transformed(t))));
    sheet.fade(gone);
    faded = true;
  }

  /** A stroke through each component that would go. */
  private List<Node> struck(Situation old, Situation then, Transform place) {
    List<Node> out = new ArrayList<>();
    for (Component c : old.design().components()) {
      if (then.design().find(c.id()).isEmpty()) {
        old.layout()
            .find(c.id())
            .flatMap(Ghost::extent)
            .ifPresent(
                b -> {
                  Point from = place.apply(new Point(b.minX(), b.minY()));
                  Point to = place.apply(new Point(b.maxX(), b.maxY()));
                  for (boolean up : new boolean[] {true, false}) {
                    Line line =
                        new Line(from.x(), up ? from.y() : to.y(), to.x(), up ? to.y() : from.y());
                    line.getStyleClass().add("struck");
                    line.setStrokeWidth(STRIKE);
                    out.add(line);
                  }
                });
      }
    }
    return out;
  }

  /** The middle part of a component, where a cross through it is seen. */
  private static Optional<Box> extent(Laid laid) {
    Optional<Point> middle =
        laid.body().isEmpty()
            ? laid.centreline().map(l -> l.at(l.length() / 2))
            : Optional.of(laid.body().innerPoint());
    return middle.map(m -> new Box(m.x() - CROSS, m.y() - CROSS, m.x() + CROSS, m.y() + CROSS));
  }

  private void unfade() {
    if (faded) {
      sheet.fade(Set.of());
      faded = false;
    }
  }

  private String facts(Proposal proposal) {
    return next.map(
            then ->
                NewParts.facts(table.assessment().arch(proposal.arch()), then).stream()
                    .distinct()
                    .map(line -> "\n" + line)
                    .collect(Collectors.joining()))
        .orElse("");
  }

  /** The arch as it would be with what is shown. */
  Optional<Situation> next() {
    return next;
  }

  /** What is said beside it; empty when nothing is. */
  String words() {
    return caption.isVisible() ? caption.getText().replace("\n", ". ") : "";
  }

  /** Whether anything is shown that Escape should take away first. */
  boolean isShown() {
    return shown.isPresent() || caption.isVisible();
  }
}
