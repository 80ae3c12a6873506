package saddlewright.prescription.pdf;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;

/**
 * The labelled values of a form, one below the other under a title, with ruled lines to write on
 * where they are empty. All lengths in points.
 */
final class Fields {
  static final double LABEL = 7.5;
  static final double VALUE = 9;
  private static final double BLANK_LINE = 15.5;
  private static final double PADDING = 2.2;
  private static final double TITLE = 9;
  private static final double UNDER_TITLE = 3.5;
  private static final double MARKER = 6.5;
  private static final double GUTTER = 8 * Sheet.MM;
  private static final double AFTER = 9;

  /** Width of each of two columns side by side. */
  static final double COLUMN = (Flow.MEASURE - GUTTER) / 2;

  /** What stands beside an empty field without which the document is not complete. */
  static final String REQUIRED = "required";

  /**
   * One field.
   *
   * @param value may be empty
   * @param blankLines ruled lines that are printed when it is empty
   * @param required the document is not complete without it
   */
  record Field(String label, String value, int blankLines, boolean required) {
    static Field of(String label, String value) {
      return new Field(label, value, 1, false);
    }

    boolean isBlank() {
      return value.isBlank();
    }
  }

  private final String heading;
  private final Optional<String> title;
  private final List<Field> fields;
  private final Optional<Fields> below;

  private Fields(
      String heading, Optional<String> title, List<Field> fields, Optional<Fields> below) {
    this.heading = heading;
    this.title = title;
    this.fields = List.copyOf(fields);
    this.below = below;
  }

  /** Fields without a title. */
  static Fields of(List<Field> fields) {
    return new Fields("P", Optional.empty(), fields, Optional.empty());
  }

  /** Fields under a title that is a heading of the second level. */
  static Fields ofPage(String title, List<Field> fields) {
    return new Fields("H2", Optional.of(title), fields, Optional.empty());
  }

  /** Fields under a title that is a heading of the third level, within a section. */
  static Fields ofSection(String title, List<Field> fields) {
    return new Fields("H3", Optional.of(title), fields, Optional.empty());
  }

  /** The same with another group below. */
  Fields and(Fields other) {
    if (isEmpty()) {
      return other;
    }
    return other.isEmpty()
        ? this
        : new Fields(
            heading, title, fields, Optional.of(below.map(b -> b.and(other)).orElse(other)));
  }

  boolean isEmpty() {
    return fields.isEmpty();
  }

  /** Draws two groups side by side when they fit on the page, otherwise one below the other. */
  static void beside(Flow flow, Fields left, Fields right) throws IOException {
    if (left.isEmpty() || right.isEmpty()) {
      left.write(flow);
      right.write(flow);
      return;
    }
    double height = Math.max(left.height(COLUMN), right.height(COLUMN));
    if (height > flow.most()) {
      left.write(flow);
      right.write(flow);
      return;
    }
    flow.need(height);
    double top = flow.y();
    left.draw(flow, flow.left(), top, COLUMN);
    right.draw(flow, flow.left() + COLUMN + GUTTER, top, COLUMN);
    flow.moveTo(top + height + AFTER);
  }

  /** Draws the group over the width of the text, over as many pages as it needs. */
  void write(Flow flow) throws IOException {
    if (isEmpty()) {
      return;
    }
    double height = ownHeight(Flow.MEASURE);
    if (height <= flow.most()) {
      flow.need(height);
      flow.moveTo(own(flow, flow.left(), flow.y(), Flow.MEASURE) + AFTER);
    } else {
      run(flow);
      flow.gap(AFTER);
    }
    if (below.isPresent()) {
      below.get().write(flow);
    }
  }

  private static double labelWidth(double width) {
    return Math.min(40 * Sheet.MM, width * 0.31);
  }

  private static double valueWidth(double width) {
    return width - labelWidth(width) - 6;
  }

  double height(double width) {
    return ownHeight(width) + below.map(b -> AFTER + b.height(width)).orElse(0.0);
  }

  private double ownHeight(double width) {
    return titleHeight() + fields.stream().mapToDouble(f -> rowHeight(f, width)).sum();
  }

  private double titleHeight() {
    return title.isPresent() ? Flow.leading(TITLE) + UNDER_TITLE : 0;
  }

  private static double rowHeight(Field f, double width) {
    double label = labels(f, width).size() * Flow.leading(LABEL);
    double value =
        f.isBlank() ? f.blankLines() * BLANK_LINE : lines(f, width).size() * Flow.leading(VALUE);
    return Math.max(label, value) + 2 * PADDING;
  }

  private static List<String> labels(Field f, double width) {
    return Wrap.lines(f.label(), Weight.REGULAR, LABEL, labelWidth(width) - 4);
  }

  private static List<String> lines(Field f, double width) {
    return Wrap.lines(f.value(), Weight.REGULAR, VALUE, valueWidth(width));
  }

  /**
   * Draws the group on the present page; the caller has made sure that it fits.
   *
   * @return where it ends
   */
  double draw(Flow flow, double x, double top, double width) throws IOException {
    double y = own(flow, x, top, width);
    return below.isPresent() ? below.get().draw(flow, x, y + AFTER, width) : y;
  }

  private double own(Flow flow, double x, double top, double width) throws IOException {
    double y = top;
    if (title.isPresent()) {
      y = titled(flow, x, top, width);
    }
    for (Field f : fields) {
      one(flow, f, x, y, width);
      y += rowHeight(f, width);
      if (!f.isBlank()) {
        hairline(flow, x, y, width);
      }
    }
    return y;
  }

  private double titled(Flow flow, double x, double top, double width) throws IOException {
    Sheet sheet = flow.sheet();
    sheet.begin(flow.tags().under(flow.tags().document(), heading));
    sheet.text(x, top + TITLE, title.orElseThrow(), Weight.BOLD, TITLE, Shade.INK);
    sheet.end();
    double y = top + titleHeight();
    sheet.beginArtifact();
    sheet.rule(x, y, x + width, 0.8, Shade.INK);
    sheet.end();
    return y;
  }

  private static void hairline(Flow flow, double x, double y, double width) throws IOException {
    flow.sheet().beginArtifact();
    flow.sheet().rule(x, y, x + width, 0.4, Shade.HAIRLINE);
    flow.sheet().end();
  }

  private static void one(Flow flow, Field f, double x, double top, double width)
      throws IOException {
    Sheet sheet = flow.sheet();
    PDStructureElement p = flow.tags().under(flow.tags().document(), "P");
    double first = top + PADDING + Flow.leading(VALUE) * 0.76;
    double right = x + labelWidth(width) + 6;
    sheet.begin(p);
    double y = first;
    for (String line : labels(f, width)) {
      sheet.text(x, y, line, Weight.REGULAR, LABEL, Shade.QUIET);
      y += Flow.leading(LABEL);
    }
    y = first;
    for (String line : lines(f, width)) {
      sheet.text(right, y, line, Weight.REGULAR, VALUE, Shade.INK);
      y += Flow.leading(VALUE);
    }
    if (f.isBlank() && f.required()) {
      sheet.textEnding(x + width, first, REQUIRED, Weight.BOLD, MARKER, Shade.QUIET);
    }
    sheet.end();
    if (f.isBlank()) {
      ruled(sheet, right, top + PADDING, f.blankLines(), x + width);
    }
  }

  private static void ruled(Sheet sheet, double x, double top, int lines, double right)
      throws IOException {
    sheet.beginArtifact();
    for (int i = 1; i <= lines; i++) {
      sheet.rule(x, top + i * BLANK_LINE - 2, right, 0.5, Shade.RULE);
    }
    sheet.end();
  }

  /** The same fields down the pages, for values that no page can hold. */
  private void run(Flow flow) throws IOException {
    if (title.isPresent()) {
      flow.need(60);
      flow.moveTo(titled(flow, flow.left(), flow.y(), Flow.MEASURE));
    }
    for (Field f : fields) {
      if (rowHeight(f, Flow.MEASURE) <= flow.most() / 3) {
        flow.need(rowHeight(f, Flow.MEASURE));
        one(flow, f, flow.left(), flow.y(), Flow.MEASURE);
        flow.gap(rowHeight(f, Flow.MEASURE));
      } else {
        flow.gap(PADDING);
        PDStructureElement p = flow.tags().under(flow.tags().document(), "P");
        flow.row(cells(p, flow.left(), f));
        flow.gap(PADDING);
      }
      if (!f.isBlank()) {
        hairline(flow, flow.left(), flow.y(), Flow.MEASURE);
      }
    }
  }

  private static List<Flow.Cell> cells(PDStructureElement p, double x, Field f) {
    List<Flow.Cell> out = new ArrayList<>();
    out.add(new Flow.Cell(p, x, labels(f, Flow.MEASURE), Weight.REGULAR, LABEL, Shade.QUIET));
    out.add(
        new Flow.Cell(
            p,
            x + labelWidth(Flow.MEASURE) + 6,
            lines(f, Flow.MEASURE),
            Weight.REGULAR,
            VALUE,
            Shade.INK));
    return out;
  }
}
