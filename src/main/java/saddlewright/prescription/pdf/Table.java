package saddlewright.prescription.pdf;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;

/** Rows of words in columns; its head is repeated on every page that it runs on to. */
final class Table {
  private static final double ABOVE_ROW = 1.6;
  private static final double BELOW_ROW = 2.2;
  private static final double TICK = 7;

  /** Room for the name of a group and a row of four lines below it. */
  private static final double AFTER_GROUP = 76;

  /**
   * A column.
   *
   * @param title of the head
   * @param from left edge, points from the left edge of the text
   * @param width in points
   * @param empty what stands where a row has no words
   */
  record Column(String title, double from, double width, Weight weight, Empty empty) {
    /** What stands in a cell without words. */
    enum Empty {
      NOTHING,
      LINE_TO_WRITE_ON,
      BOX_TO_TICK
    }

    Column(String title, double from, double width, Weight weight) {
      this(title, from, width, weight, Empty.NOTHING);
    }

    /** A column to be filled in by hand where it is empty. */
    static Column toWriteIn(String title, double from, double width) {
      return new Column(title, from, width, Weight.REGULAR, Empty.LINE_TO_WRITE_ON);
    }

    /** A column of boxes to tick. */
    static Column toTick(String title, double from, double width) {
      return new Column(title, from, width, Weight.REGULAR, Empty.BOX_TO_TICK);
    }
  }

  private final Flow flow;
  private final List<Column> columns;
  private final boolean ticked;
  private final double size;
  private final PDStructureElement element;

  /**
   * A table that begins here with its head.
   *
   * @param ticked each row has a box to tick before its first column
   */
  Table(Flow flow, List<Column> columns, boolean ticked) throws IOException {
    this(flow, columns, ticked, Flow.BODY);
  }

  /** The same in type of a size in points. */
  Table(Flow flow, List<Column> columns, boolean ticked, double size) throws IOException {
    this.size = size;
    this.flow = flow;
    this.columns = List.copyOf(columns);
    this.ticked = ticked;
    this.element = flow.tags().under(flow.tags().document(), "Table");
    flow.need(44);
    PDStructureElement head = flow.tags().under(element, "TR");
    List<Flow.Cell> cells = new ArrayList<>();
    for (Column c : columns) {
      cells.add(
          cell(
              flow.tags().columnHead(head, 1),
              c,
              c.title(),
              Weight.REGULAR,
              Flow.SMALL,
              Shade.QUIET));
    }
    flow.row(cells);
    ruleUnderHead();
  }

  private void ruleUnderHead() throws IOException {
    flow.gap(1.5);
    flow.sheet().beginArtifact();
    flow.sheet().rule(flow.left(), flow.y(), flow.right(), 0.6, Shade.RULE);
    flow.sheet().end();
    flow.gap(1);
  }

  /** The head once more, for the eye only. */
  private void headAgain() throws IOException {
    flow.sheet().beginArtifact();
    double baseline = flow.y() + Flow.SMALL;
    for (Column c : columns) {
      flow.sheet()
          .text(
              flow.left() + c.from(),
              baseline,
              TypeFace.printable(c.title()),
              Weight.REGULAR,
              Flow.SMALL,
              Shade.QUIET);
    }
    flow.sheet().end();
    flow.gap(Flow.leading(Flow.SMALL));
    ruleUnderHead();
  }

  /** A row that names the group of the rows below it. */
  void group(String title) throws IOException {
    if (flow.room() < AFTER_GROUP) {
      flow.turn();
      headAgain();
    }
    flow.gap(5);
    PDStructureElement row = flow.tags().under(element, "TR");
    Column whole = new Column("", 0, Flow.MEASURE, Weight.BOLD);
    PDStructureElement head = flow.tags().columnHead(row, columns.size());
    flow.row(List.of(cell(head, whole, title, Weight.BOLD, 8.5, Shade.INK)));
  }

  /** A row; one text for each column. */
  void row(String... texts) throws IOException {
    PDStructureElement row = flow.tags().under(element, "TR");
    List<Flow.Cell> cells = new ArrayList<>();
    for (int i = 0; i < columns.size(); i++) {
      Column c = columns.get(i);
      cells.add(cell(flow.tags().under(row, "TD"), c, texts[i], c.weight(), size, Shade.INK));
    }
    if (written(texts)) {
      // Room for a hand: as much as two lines of type.
      PDStructureElement first = cells.get(0).element();
      cells.add(
          new Flow.Cell(first, flow.left(), List.of("", ""), Weight.REGULAR, size, Shade.INK));
    }
    flow.gap(ABOVE_ROW);
    flow.row(cells, Optional.of(top -> toFillIn(top, texts)), this::headAgain);
    flow.gap(BELOW_ROW);
    flow.sheet().beginArtifact();
    flow.sheet().rule(flow.left(), flow.y(), flow.right(), 0.4, Shade.HAIRLINE);
    flow.sheet().end();
  }

  private boolean written(String... texts) {
    for (int i = 0; i < columns.size(); i++) {
      if (texts[i].isBlank() && columns.get(i).empty() == Column.Empty.LINE_TO_WRITE_ON) {
        return true;
      }
    }
    return false;
  }

  /** Boxes to tick and lines to write on. */
  private void toFillIn(double top, String... texts) throws IOException {
    if (ticked) {
      box(0, top);
    }
    for (int i = 0; i < columns.size(); i++) {
      Column c = columns.get(i);
      if (texts[i].isBlank() && c.empty() == Column.Empty.BOX_TO_TICK) {
        box(c.from(), top);
      } else if (texts[i].isBlank() && c.empty() == Column.Empty.LINE_TO_WRITE_ON) {
        double from = flow.left() + c.from();
        double y = top + 2 * Flow.leading(size) + BELOW_ROW;
        flow.sheet().rule(from, y, from + c.width(), 0.5, Shade.RULE);
      }
    }
  }

  private void box(double from, double top) throws IOException {
    double y = top + (Flow.leading(size) - TICK) / 2;
    flow.sheet().box(flow.left() + from, y, TICK, TICK, 0.7, Shade.INK);
  }

  private Flow.Cell cell(
      PDStructureElement element, Column c, String text, Weight weight, double size, Shade shade) {
    return new Flow.Cell(
        element,
        flow.left() + c.from(),
        Wrap.lines(text, weight, size, c.width()),
        weight,
        size,
        shade);
  }
}
