package saddlewright.desktop.sheet;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import javafx.scene.Group;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.shape.Line;
import saddlewright.casefile.Assessment;
import saddlewright.design.Component;
import saddlewright.desktop.Worktable;
import saddlewright.desktop.subject.ComponentWords;
import saddlewright.desktop.subject.Facts;
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

  /** Width of the lines of a cross, and half its size, mm. */
  private static final double STRIKE = 0.5;

  private static final double CROSS = 2;

  private final SheetPane sheet;
  private final Worktable table;
  private final Label caption = new Label();
  private Optional<Proposal> shown = Optional.empty();
  private Situation next;
  private boolean faded;

  Ghost(SheetPane sheet, Worktable table) {
    this.sheet = sheet;
    this.table = table;
    setMouseTransparent(true);
    setOpacity(OPACITY);
    caption.setId("ghost-caption");
    caption.getStyleClass().add("ghost-caption");
    caption.setMouseTransparent(true);
    caption.setVisible(false);
    caption.setManaged(false);
  }

  Label caption() {
    return caption;
  }

  void clear() {
    if (shown.isPresent() || caption.isVisible()) {
      shown = Optional.empty();
      getChildren().clear();
      caption.setVisible(false);
      unfade();
    }
  }

  /** Shows what the proposal would change, its caption at a place of the pane. */
  void show(Proposal proposal, String more, double x, double y) {
    if (!shown.equals(Optional.of(proposal))) {
      shown = Optional.of(proposal);
      draw(proposal);
    }
    say(proposal.name() + facts(proposal) + (more.isEmpty() ? "" : "\n" + more), false, x, y);
  }

  /** Shows what an edit would do, its caption below what it concerns. */
  void preview(Proposal proposal) {
    shown = Optional.of(proposal);
    draw(proposal);
    Point at =
        Optional.of(getBoundsInParent())
            .filter(b -> !b.isEmpty())
            .map(b -> sheet.camera().toWindow(new Point(b.getMinX(), b.getMaxY())))
            .orElse(new Point(BESIDE_POINTER, BESIDE_POINTER));
    say(proposal.name() + facts(proposal), false, at.x(), at.y());
  }

  /** Words beside the pointer, in the style of a warning when something is too small. */
  void say(String words, boolean warning, double x, double y) {
    caption.setText(words);
    caption.pseudoClassStateChanged(javafx.css.PseudoClass.getPseudoClass("warning"), warning);
    caption.setVisible(true);
    caption.applyCss();
    caption.autosize();
    double left = x + BESIDE_POINTER;
    if (left + caption.getWidth() > sheet.getWidth() - 4) {
      left = Math.max(4, x - BESIDE_POINTER - caption.getWidth());
    }
    double top = Math.min(y + BESIDE_POINTER, sheet.getHeight() - caption.getHeight() - 4);
    caption.relocate(Math.round(left), Math.round(Math.max(4, top)));
  }

  private void draw(Proposal proposal) {
    getChildren().clear();
    Assessment now = table.assessment();
    Situation old = now.arch(proposal.arch());
    try {
      next =
          old.next(
              proposal.next().chart(proposal.arch()),
              old.opposing(),
              proposal.next().design(proposal.arch()),
              old.profile());
      Set<Mark> there = new HashSet<>(sheet.draw(old.layout()).marks());
      MarkNodes maker = new MarkNodes(sheet.palette());
      List<Node> nodes = new ArrayList<>();
      sheet
          .place(proposal.arch())
          .ifPresent(
              t -> {
                for (Mark m : sheet.draw(next.layout()).marks()) {
                  if (!there.contains(m)) {
                    nodes.add(maker.of(m.transformed(t)));
                  }
                }
              });
      sheet.place(proposal.arch()).ifPresent(t -> nodes.addAll(struck(old, t)));
      getChildren().setAll(nodes);
      fadeReplaced(proposal, old, there);
    } catch (RuntimeException e) {
      // Without a picture of it, the click may still be tried: the sheet says what went wrong.
      next = old;
    }
  }

  /** What would change its shape is faded so that the new one is seen; so is what would go. */
  private void fadeReplaced(Proposal proposal, Situation old, Set<Mark> there) {
    boolean changes =
        old.design().components().stream()
            .anyMatch(c -> !next.design().find(c.id()).equals(Optional.of(c)));
    if (!changes) {
      unfade();
      return;
    }
    there.removeAll(sheet.draw(next.layout()).marks());
    Set<Mark> gone = new HashSet<>();
    sheet.place(proposal.arch()).ifPresent(t -> there.forEach(m -> gone.add(m.transformed(t))));
    sheet.fade(gone);
    faded = true;
  }

  /** A stroke through each component that would go. */
  private List<Node> struck(Situation old, Transform place) {
    List<Node> out = new ArrayList<>();
    for (Component c : old.design().components()) {
      if (next.design().find(c.id()).isEmpty()) {
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
    StringBuilder out = new StringBuilder();
    for (Component c : next.design().components()) {
      boolean fresh =
          table.current().design(proposal.arch()).find(c.id()).filter(c::equals).isEmpty();
      if (fresh) {
        List<String> facts =
            next.layout().find(c.id()).map(l -> Facts.chief(l, next.layout())).orElse(List.of());
        if (!facts.isEmpty()) {
          out.append('\n').append(ComponentWords.brief(c)).append(": ");
          out.append(String.join(", ", facts));
        }
      }
    }
    return out.toString();
  }

  /** The layout of what is shown. */
  Optional<Laid> laid(saddlewright.design.ComponentId id) {
    return next == null ? Optional.empty() : next.layout().find(id);
  }
}
