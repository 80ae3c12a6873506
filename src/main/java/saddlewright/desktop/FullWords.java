package saddlewright.desktop;

import javafx.scene.control.IndexedCell;
import javafx.scene.control.TableCell;
import javafx.scene.control.TableColumn;
import javafx.scene.control.Tooltip;
import javafx.scene.control.TreeTableCell;
import javafx.scene.control.TreeTableColumn;

/** Cells of one line that tell their words in full when pointed at. */
public final class FullWords {
  private FullWords() {}

  /** Gives a column such cells. */
  public static <S> void in(TableColumn<S, String> column) {
    column.setCellFactory(
        c ->
            new TableCell<>() {
              @Override
              protected void updateItem(String words, boolean empty) {
                super.updateItem(words, empty);
                show(this, empty ? null : words);
              }
            });
  }

  /** Gives a column of a tree such cells. */
  public static <S> void in(TreeTableColumn<S, String> column) {
    column.setCellFactory(
        c ->
            new TreeTableCell<>() {
              @Override
              protected void updateItem(String words, boolean empty) {
                super.updateItem(words, empty);
                show(this, empty ? null : words);
              }
            });
  }

  private static void show(IndexedCell<?> cell, String words) {
    cell.setText(words);
    if (words == null || words.isBlank()) {
      cell.setTooltip(null);
    } else if (cell.getTooltip() == null) {
      cell.setTooltip(new Tooltip(words));
    } else {
      cell.getTooltip().setText(words);
    }
  }
}
