package saddlewright.desktop.prescription;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.IntFunction;
import java.util.function.UnaryOperator;
import javafx.scene.Node;
import javafx.scene.layout.VBox;

/**
 * The rows of a list in the case. A row is changed in place; only when their number changes are
 * rows made or taken away.
 *
 * @param <T> what a row shows
 */
final class Rows<T> extends VBox {
  /** One row. */
  interface Row<T> {
    Node node();

    /** The control that takes the focus when the row is new. */
    Node focus();

    void show(T value);
  }

  private final IntFunction<Row<T>> maker;
  private final List<Row<T>> rows = new ArrayList<>();
  private List<T> shown = List.of();

  /**
   * @param maker makes the row at an index
   */
  Rows(IntFunction<Row<T>> maker) {
    this.maker = maker;
    getStyleClass().add("rows");
  }

  void show(List<T> now) {
    shown = now;
    while (rows.size() > now.size()) {
      rows.remove(rows.size() - 1);
      getChildren().remove(rows.size());
    }
    while (rows.size() < now.size()) {
      Row<T> row = maker.apply(rows.size());
      rows.add(row);
      getChildren().add(row.node());
    }
    for (int i = 0; i < now.size(); i++) {
      rows.get(i).show(now.get(i));
    }
    setManaged(!now.isEmpty());
    setVisible(!now.isEmpty());
  }

  /** The list with one of its values changed. */
  List<T> with(int index, UnaryOperator<T> change) {
    List<T> next = new ArrayList<>(shown);
    next.set(index, change.apply(next.get(index)));
    return next;
  }

  List<T> without(int index) {
    List<T> next = new ArrayList<>(shown);
    next.remove(index);
    return next;
  }

  List<T> plus(List<T> more) {
    List<T> next = new ArrayList<>(shown);
    next.addAll(more);
    return next;
  }

  /**
   * Goes to a row; to the nearest when it has been taken away; to what else there is without any.
   */
  void go(int index, Node otherwise) {
    if (rows.isEmpty()) {
      otherwise.requestFocus();
    } else {
      rows.get(Math.max(0, Math.min(index, rows.size() - 1))).focus().requestFocus();
    }
  }

  void each(Consumer<Row<T>> action) {
    rows.forEach(action);
  }
}
