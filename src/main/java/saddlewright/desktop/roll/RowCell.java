package saddlewright.desktop.roll;

import java.util.Optional;
import java.util.function.Supplier;
import javafx.css.PseudoClass;
import javafx.scene.control.Label;
import javafx.scene.control.Tooltip;
import javafx.scene.control.TreeCell;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Region;
import saddlewright.desktop.findings.Badge;
import saddlewright.rules.Severity;

/**
 * A line of the list as it is drawn: number, name, what else is so, and the sign of its findings.
 */
final class RowCell extends TreeCell<Row> {
  private static final PseudoClass ARCH = PseudoClass.getPseudoClass("arch");

  private final Supplier<RowWords> words;
  private final Label mark = new Label();
  private final Label name = new Label();
  private final Label more = new Label();
  private final Line line = new Line();
  private final Tooltip whole = new Tooltip();

  RowCell(Supplier<RowWords> words) {
    this.words = words;
    getStyleClass().add("roll-row");
    mark.getStyleClass().add("roll-mark");
    more.getStyleClass().add("soft");
    // As wide as the list, so that what is long ends in dots rather than out of sight.
    setPrefWidth(0);
    whole.setWrapText(true);
    whole.setMaxWidth(420);
  }

  @Override
  protected void updateItem(Row row, boolean empty) {
    super.updateItem(row, empty);
    if (empty || row == null) {
      setGraphic(null);
      setAccessibleText(null);
      setTooltip(null);
      pseudoClassStateChanged(ARCH, false);
      return;
    }
    RowWords said = words.get();
    boolean folded = getTreeItem() == null || !getTreeItem().isExpanded();
    RowWords.Parts parts = said.parts(row, folded);
    mark.setText(parts.mark());
    mark.setVisible(!parts.mark().isEmpty());
    mark.setManaged(!parts.mark().isEmpty());
    name.setText(parts.name());
    more.setText(parts.more());
    line.mark(said.gravest(row));
    String sentence = said.sentence(row);
    setAccessibleText(sentence);
    whole.setText(sentence);
    setTooltip(whole);
    pseudoClassStateChanged(ARCH, row.kind() == Row.Kind.ARCH);
    setGraphic(line);
  }

  /** Number, name and sign keep their room; what else is said gets what is left. */
  private final class Line extends Pane {
    private static final double GAP = 6;

    /** Less room is none, pixels. */
    private static final double LEAST = 26;

    private Optional<Badge> sign = Optional.empty();

    private Line() {
      getChildren().addAll(mark, name, more);
    }

    private void mark(Optional<Severity> gravest) {
      sign.ifPresent(getChildren()::remove);
      sign = gravest.map(s -> Badge.of(s, false));
      sign.ifPresent(getChildren()::add);
      requestLayout();
    }

    @Override
    protected double computePrefHeight(double width) {
      return Math.max(name.prefHeight(-1), sign.map(s -> s.prefHeight(-1)).orElse(0.0));
    }

    @Override
    protected void layoutChildren() {
      double right = getWidth();
      if (sign.isPresent()) {
        double wide = sign.get().prefWidth(-1);
        right -= wide;
        put(sign.get(), right, wide);
        right -= GAP;
      }
      double x = 0;
      if (mark.isManaged()) {
        put(mark, x, mark.prefWidth(-1));
        x += mark.getWidth() + GAP;
      }
      put(name, x, Math.max(0, Math.min(name.prefWidth(-1), right - x)));
      x += name.getWidth() + GAP;
      boolean room = right - x >= LEAST;
      more.setVisible(room);
      put(more, x, room ? right - x : 0);
    }

    private void put(Region node, double x, double width) {
      double height = Math.min(getHeight(), node.prefHeight(width));
      node.resizeRelocate(x, Math.round((getHeight() - height) / 2), width, height);
    }
  }
}
