package saddlewright.prescription.pdf;

import java.io.IOException;
import java.util.List;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;

/** The labelled fields of a form, one below the other in a column, or ruled lines where empty. */
final class Fields {
  private static final double LABEL = 7.5;
  private static final double VALUE = 9.5;
  private static final double BLANK_LINE = 17;
  private static final double BETWEEN = 7;
  private static final double GUTTER = 10;

  /**
   * One field.
   *
   * @param value may be empty
   * @param blankLines ruled lines that are printed when it is empty
   */
  record Field(String label, String value, int blankLines) {}

  private final List<List<Field>> rows;

  /** Rows of one or two fields. */
  Fields(List<List<Field>> rows) {
    this.rows = List.copyOf(rows);
  }

  double height(double width) {
    return rows.stream().mapToDouble(r -> rowHeight(r, width)).sum();
  }

  private static double rowHeight(List<Field> row, double width) {
    double w = fieldWidth(row, width);
    return row.stream().mapToDouble(f -> fieldHeight(f, w)).max().orElse(0) + BETWEEN;
  }

  private static double fieldWidth(List<Field> row, double width) {
    return (width - GUTTER * (row.size() - 1)) / row.size();
  }

  private static double fieldHeight(Field f, double width) {
    double body =
        f.value().isBlank() ? f.blankLines() * BLANK_LINE : lines(f, width).size() * leading();
    return Flow.leading(LABEL) + body;
  }

  private static double leading() {
    return VALUE * 1.28;
  }

  private static List<String> lines(Field f, double width) {
    return Wrap.lines(f.value(), Weight.REGULAR, VALUE, width);
  }

  /** Draws the column on the present page; the caller has made sure that it fits. */
  double draw(Flow flow, double x, double top, double width) throws IOException {
    double y = top;
    for (List<Field> row : rows) {
      double w = fieldWidth(row, width);
      double left = x;
      for (Field f : row) {
        one(flow, f, left, y, w);
        left += w + GUTTER;
      }
      y += rowHeight(row, width);
    }
    return y;
  }

  private static void one(Flow flow, Field f, double x, double top, double width)
      throws IOException {
    Sheet sheet = flow.sheet();
    PDStructureElement p = flow.tags().under(flow.tags().document(), "P");
    sheet.begin(p);
    sheet.text(x, top + LABEL, f.label(), Weight.REGULAR, LABEL, Shade.QUIET);
    double y = top + Flow.leading(LABEL);
    for (String line : lines(f, width)) {
      y += leading();
      sheet.text(x, y - leading() * 0.25, line, Weight.REGULAR, VALUE, Shade.INK);
    }
    sheet.end();
    if (f.value().isBlank()) {
      sheet.beginArtifact();
      for (int i = 1; i <= f.blankLines(); i++) {
        sheet.rule(x, top + Flow.leading(LABEL) + i * BLANK_LINE - 3, x + width, 0.5, Shade.RULE);
      }
      sheet.end();
    }
  }

  /** The same fields run down the pages, for values that no column can hold. */
  void run(Flow flow) throws IOException {
    for (List<Field> row : rows) {
      for (Field f : row) {
        // A label is worth nothing at the foot of a page without its value.
        flow.need(Flow.leading(LABEL) + 2 * leading() + BETWEEN);
        flow.paragraph(f.label(), LABEL, Shade.QUIET);
        if (f.value().isBlank()) {
          flow.blankLines(f.blankLines());
        } else {
          flow.paragraph(f.value(), VALUE, Shade.INK);
        }
      }
    }
  }
}
