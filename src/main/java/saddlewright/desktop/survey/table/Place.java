package saddlewright.desktop.survey.table;

/**
 * Where an item of a tooth stands in the table.
 *
 * @param row number of the item
 * @param column number of the tooth, from the patient's right
 */
record Place(int row, int column) implements Comparable<Place> {
  @Override
  public int compareTo(Place other) {
    return row == other.row
        ? Integer.compare(column, other.column)
        : Integer.compare(row, other.row);
  }
}
