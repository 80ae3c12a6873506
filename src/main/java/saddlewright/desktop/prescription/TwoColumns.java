package saddlewright.desktop.prescription;

import java.util.ArrayList;
import java.util.List;
import javafx.geometry.Orientation;
import javafx.scene.Node;
import javafx.scene.layout.Pane;

/**
 * Blocks in the order of reading: two beside one another where the page has room for two, one below
 * the other where it has not.
 */
final class TwoColumns extends Pane {
  private static final double GAP = 20;
  private static final double LINE_GAP = 14;

  /** Below this breadth of a column a field cannot be read while it is typed in. */
  private static final double NARROWEST = 250;

  private double measuredWidth = -1;
  private double measuredHeight;

  TwoColumns() {
    getStyleClass().add("two-columns");
  }

  @Override
  public Orientation getContentBias() {
    return Orientation.HORIZONTAL;
  }

  @Override
  protected double computePrefHeight(double width) {
    double w = width < 0 ? 2 * NARROWEST + GAP : width;
    // A page asks for the heights of all its sections several times for each sign that is typed.
    if (w != measuredWidth) {
      double y = 0;
      for (List<Node> row : rows(w)) {
        y += height(row, w) + LINE_GAP;
      }
      measuredWidth = w;
      measuredHeight = Math.max(0, y - LINE_GAP);
    }
    return measuredHeight;
  }

  @Override
  public void requestLayout() {
    measuredWidth = -1;
    super.requestLayout();
  }

  @Override
  protected double computeMinHeight(double width) {
    return computePrefHeight(width);
  }

  @Override
  protected double computePrefWidth(double height) {
    return 2 * NARROWEST + GAP;
  }

  @Override
  protected double computeMinWidth(double height) {
    return 0;
  }

  @Override
  protected void layoutChildren() {
    double w = getWidth();
    double y = 0;
    for (List<Node> row : rows(w)) {
      double h = height(row, w);
      double x = 0;
      for (Node n : row) {
        n.resizeRelocate(x, snapPositionY(y), breadth(n, w), snapSizeY(h));
        x += column(w) + GAP;
      }
      y += h + LINE_GAP;
    }
  }

  private List<List<Node>> rows(double width) {
    boolean single = column(width) < NARROWEST;
    List<List<Node>> out = new ArrayList<>();
    List<Node> row = new ArrayList<>();
    for (Node n : getManagedChildren()) {
      boolean whole = single || isWide(n);
      if (whole && !row.isEmpty()) {
        out.add(row);
        row = new ArrayList<>();
      }
      row.add(n);
      if (whole || row.size() == 2) {
        out.add(row);
        row = new ArrayList<>();
      }
    }
    if (!row.isEmpty()) {
      out.add(row);
    }
    return out;
  }

  private static double column(double width) {
    return Math.floor((width - GAP) / 2);
  }

  private static double breadth(Node n, double width) {
    return isWide(n) || column(width) < NARROWEST ? width : column(width);
  }

  private static boolean isWide(Node n) {
    return !(n instanceof FieldBlock b) || b.isWide();
  }

  private static double height(List<Node> row, double width) {
    return row.stream().mapToDouble(n -> n.prefHeight(breadth(n, width))).max().orElse(0);
  }
}
