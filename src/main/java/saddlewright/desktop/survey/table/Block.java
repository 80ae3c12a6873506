package saddlewright.desktop.survey.table;

import java.util.ArrayList;
import java.util.List;

/**
 * A rectangle of places of the table, ends included.
 *
 * @param top row of its first item
 * @param left column of its first tooth
 * @param bottom row of its last item
 * @param right column of its last tooth
 */
record Block(int top, int left, int bottom, int right) {
  /** The smallest block that holds both. */
  static Block of(Place a, Place b) {
    return new Block(
        Math.min(a.row(), b.row()),
        Math.min(a.column(), b.column()),
        Math.max(a.row(), b.row()),
        Math.max(a.column(), b.column()));
  }

  boolean holds(Place p) {
    return p.row() >= top && p.row() <= bottom && p.column() >= left && p.column() <= right;
  }

  /** Its places, row by row. */
  List<Place> places() {
    List<Place> out = new ArrayList<>();
    for (int r = top; r <= bottom; r++) {
      for (int c = left; c <= right; c++) {
        out.add(new Place(r, c));
      }
    }
    return out;
  }

  boolean isSingle() {
    return top == bottom && left == right;
  }
}
