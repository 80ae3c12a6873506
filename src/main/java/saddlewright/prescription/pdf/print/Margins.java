package saddlewright.prescription.pdf.print;

import java.util.Locale;

/** Distances from the edges of a sheet inwards, in mm. */
public record Margins(double left, double top, double right, double bottom) {
  /** The edges of a sheet, as sentences call them. */
  enum Edge {
    LEFT,
    TOP,
    RIGHT,
    BOTTOM;

    String word() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  double at(Edge edge) {
    return switch (edge) {
      case LEFT -> left;
      case TOP -> top;
      case RIGHT -> right;
      case BOTTOM -> bottom;
    };
  }
}
