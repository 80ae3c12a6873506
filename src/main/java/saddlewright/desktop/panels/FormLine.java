package saddlewright.desktop.panels;

import javafx.geometry.Orientation;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.Region;

/** A field with its name beside it, or above it where the type is too large for both. */
final class FormLine extends Region {
  /** Below so many sizes of its type a line has no room for name and field. */
  private static final double ROOM = 25;

  private static final double NAME_SHARE = 0.39;
  private static final double GAP = 8;
  private static final double LEADING = 3;

  private final Label name;
  private final Node value;

  FormLine(Label name, Node value) {
    this.name = name;
    this.value = value;
    getChildren().addAll(name, value);
  }

  @Override
  public Orientation getContentBias() {
    return Orientation.HORIZONTAL;
  }

  private boolean isStacked(double width) {
    return width < ROOM * name.getFont().getSize();
  }

  private double nameWidth(double width) {
    return isStacked(width) ? width : NAME_SHARE * (width - GAP);
  }

  private double valueWidth(double width) {
    return isStacked(width) ? width : width - GAP - nameWidth(width);
  }

  /** The height that a node would like, and never less than it must have. */
  private static double height(Node node, double width) {
    return Math.max(node.minHeight(width), node.prefHeight(width));
  }

  @Override
  protected double computeMinHeight(double width) {
    return computePrefHeight(width);
  }

  @Override
  protected double computePrefHeight(double width) {
    double w = width < 0 ? getWidth() : width;
    double first = height(name, nameWidth(w));
    double second = height(value, valueWidth(w));
    return snapSizeY(isStacked(w) ? first + LEADING + second : Math.max(first, second));
  }

  @Override
  protected double computePrefWidth(double height) {
    return name.prefWidth(-1) + GAP + value.prefWidth(-1);
  }

  @Override
  protected double computeMinWidth(double height) {
    return 0;
  }

  @Override
  protected void layoutChildren() {
    double w = getWidth();
    double nameHeight = height(name, nameWidth(w));
    double valueHeight = height(value, valueWidth(w));
    if (isStacked(w)) {
      name.resizeRelocate(0, 0, w, nameHeight);
      value.resizeRelocate(0, nameHeight + LEADING, w, valueHeight);
      return;
    }
    double height = Math.max(nameHeight, valueHeight);
    name.resizeRelocate(0, (height - nameHeight) / 2, nameWidth(w), nameHeight);
    value.resizeRelocate(w - valueWidth(w), (height - valueHeight) / 2, valueWidth(w), valueHeight);
  }
}
