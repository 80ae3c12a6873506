package saddlewright.desktop.sheet;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import javafx.scene.Group;
import javafx.scene.Node;
import javafx.scene.control.Label;
import saddlewright.casefile.Assessment;
import saddlewright.design.Component;
import saddlewright.desktop.Worktable;
import saddlewright.desktop.subject.ComponentWords;
import saddlewright.desktop.subject.Facts;
import saddlewright.desktop.tools.Proposal;
import saddlewright.drawing.Mark;
import saddlewright.layout.Laid;
import saddlewright.rules.Situation;

/** What a click would place, drawn as it will be, with its measured facts beside the pointer. */
final class Ghost extends Group {
  private static final double OPACITY = 0.72;
  private static final double BESIDE_POINTER = 18;

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
      getChildren().setAll(nodes);
      fadeReplaced(proposal, old, there);
    } catch (RuntimeException e) {
      // Without a picture of it, the click may still be tried: the sheet says what went wrong.
      next = old;
    }
  }

  /** Where components change their shape, what they were is faded so that the new one is seen. */
  private void fadeReplaced(Proposal proposal, Situation old, Set<Mark> there) {
    boolean changes =
        old.design().components().stream()
            .anyMatch(c -> next.design().find(c.id()).filter(n -> !n.equals(c)).isPresent());
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
