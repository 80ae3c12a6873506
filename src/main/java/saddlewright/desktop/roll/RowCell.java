package saddlewright.desktop.roll;

import java.util.Optional;
import java.util.function.Supplier;
import javafx.css.PseudoClass;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.control.OverrunStyle;
import javafx.scene.control.Tooltip;
import javafx.scene.control.TreeCell;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
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
  private final HBox line = new HBox(6, mark, name, more);
  private final Tooltip whole = new Tooltip();

  RowCell(Supplier<RowWords> words) {
    this.words = words;
    getStyleClass().add("roll-row");
    mark.getStyleClass().add("roll-mark");
    more.getStyleClass().add("soft");
    mark.setMinWidth(Region.USE_PREF_SIZE);
    name.setTextOverrun(OverrunStyle.ELLIPSIS);
    name.setMinWidth(0);
    more.setMinWidth(0);
    more.setMaxWidth(Double.MAX_VALUE);
    HBox.setHgrow(more, Priority.ALWAYS);
    line.setAlignment(Pos.CENTER_LEFT);
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
    line.getChildren().setAll(mark, name, more);
    Optional<Severity> gravest = said.gravest(row);
    gravest.ifPresent(s -> line.getChildren().add(Badge.of(s, false)));
    String sentence = said.sentence(row);
    setAccessibleText(sentence);
    whole.setText(sentence);
    setTooltip(whole);
    pseudoClassStateChanged(ARCH, row.kind() == Row.Kind.ARCH);
    setGraphic(line);
  }
}
