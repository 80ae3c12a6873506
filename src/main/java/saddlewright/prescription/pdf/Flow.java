package saddlewright.prescription.pdf;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;

/**
 * Text that runs down the pages: it knows how far the present page is filled and turns to the next.
 * All lengths in points.
 */
final class Flow {
  /** Width of the text on every paper, in points: one grid for all. */
  static final double MEASURE = 174 * Sheet.MM;

  private static final double HEAD = 20 * Sheet.MM;
  private static final double FOOT = 19 * Sheet.MM;

  static final double BODY = 9;
  static final double SMALL = 7.5;
  private static final double HEADING = 12.5;
  private static final double SUBHEADING = 9.5;

  /** Distance between base lines as a share of the size of the type. */
  private static final double LEADING = 1.32;

  /** Blocks of up to so many lines are not parted over two pages. */
  private static final int KEPT_TOGETHER = 14;

  /** Room that must be left below a heading for it to stay on the page. */
  private static final double AFTER_HEADING = 62;

  private final PDDocument document;
  private final Paper paper;
  private final TypeFace face;
  private final Tags tags;
  private final Optional<Stamp> stamp;
  private final List<Sheet> sheets = new ArrayList<>();
  private double y;

  Flow(PDDocument document, Paper paper, TypeFace face, Tags tags, Optional<Stamp> stamp)
      throws IOException {
    this.document = document;
    this.paper = paper;
    this.face = face;
    this.tags = tags;
    this.stamp = stamp;
    turn();
  }

  /** Goes to the top of a new page. */
  void turn() throws IOException {
    turn(size(paper));
  }

  /** Goes to the top of a new page of a size. */
  void turn(PDRectangle size) throws IOException {
    sheets.add(new Sheet(document, size, face, tags));
    if (stamp.isPresent()) {
      stamp.get().paint(sheet());
    }
    y = top();
  }

  static PDRectangle size(Paper paper) {
    return new PDRectangle((float) (paper.width() * Sheet.MM), (float) (paper.height() * Sheet.MM));
  }

  Paper paper() {
    return paper;
  }

  /** Where text begins on a page, under the running head. */
  private static double top() {
    return HEAD;
  }

  /** Whether nothing stands on the present page yet. */
  boolean isAtTop() {
    return y <= top();
  }

  /** Height of the text of a whole page. */
  double most() {
    return size(paper).getHeight() - FOOT - HEAD;
  }

  /** Goes to the top of a new page unless this one is empty. */
  void newPage() throws IOException {
    if (!isAtTop()) {
      turn();
    }
  }

  List<Sheet> sheets() {
    return sheets;
  }

  Sheet sheet() {
    return sheets.get(sheets.size() - 1);
  }

  Tags tags() {
    return tags;
  }

  double y() {
    return y;
  }

  void moveTo(double place) {
    y = place;
  }

  /** Left edge of the text. */
  double left() {
    return left(paper);
  }

  /** Left edge of the text on a paper. */
  static double left(Paper paper) {
    return (paper.width() * Sheet.MM - MEASURE) / 2;
  }

  /** Right edge of the text. */
  double right() {
    return sheet().width() - left();
  }

  double bottom() {
    return sheet().height() - FOOT;
  }

  double room() {
    return bottom() - y;
  }

  static double leading(double size) {
    return size * LEADING;
  }

  void gap(double height) {
    y += height;
  }

  /** Turns the page unless so much is left on it. */
  void need(double height) throws IOException {
    if (room() < height) {
      turn();
    }
  }

  void heading(String words) throws IOException {
    need(HEADING + 18 + AFTER_HEADING);
    if (!isAtTop()) {
      y += 15;
    }
    block(
        tags.under(tags.document(), "H2"), left(), MEASURE, words, Weight.BOLD, HEADING, Shade.INK);
    y += 2;
    sheet().beginArtifact();
    sheet().rule(left(), y, right(), 0.8, Shade.INK);
    sheet().end();
    y += 5;
  }

  void subheading(String words) throws IOException {
    need(SUBHEADING + AFTER_HEADING / 2);
    y += isAtTop() ? 0 : 5;
    block(
        tags.under(tags.document(), "H3"),
        left(),
        MEASURE,
        words,
        Weight.BOLD,
        SUBHEADING,
        Shade.INK);
    y += 1;
  }

  void paragraph(String words, double size, Shade shade) throws IOException {
    block(tags.under(tags.document(), "P"), left(), MEASURE, words, Weight.REGULAR, size, shade);
    y += size * 0.35;
  }

  /** Words in a column from here downwards, over as many pages as they need. */
  void block(
      PDStructureElement element,
      double x,
      double width,
      String words,
      Weight weight,
      double size,
      Shade shade)
      throws IOException {
    Cell cell = new Cell(element, x, Wrap.lines(words, weight, size, width), weight, size, shade);
    row(List.of(cell));
  }

  /**
   * Words of one column of a row.
   *
   * @param element what they are in the structure
   * @param x left edge of the column
   */
  record Cell(
      PDStructureElement element,
      double x,
      List<String> lines,
      Weight weight,
      double size,
      Shade shade) {}

  /** What is done once for a row at the top of its first line. */
  interface AtTop {
    void draw(double top) throws IOException;
  }

  void row(List<Cell> cells) throws IOException {
    row(cells, Optional.empty(), () -> {});
  }

  /** What is done at the top of a page on to which a row runs over. */
  interface OnNewPage {
    void draw() throws IOException;
  }

  /** Sets columns side by side, parting them over pages line by line only where they are long. */
  void row(List<Cell> cells, Optional<AtTop> atTop, OnNewPage onNewPage) throws IOException {
    int total = cells.stream().mapToInt(c -> c.lines().size()).max().orElse(0);
    double step = leading(cells.stream().mapToDouble(Cell::size).max().orElse(BODY));
    int done = 0;
    while (done < total) {
      int fits = (int) Math.floor((room() + 0.01) / step);
      boolean whole = total - done <= fits;
      if (fits < 1 || (!whole && done == 0 && total <= KEPT_TOGETHER)) {
        turn();
        onNewPage.draw();
        continue;
      }
      int take = Math.min(fits, total - done);
      if (done == 0 && atTop.isPresent()) {
        sheet().beginArtifact();
        atTop.get().draw(y);
        sheet().end();
      }
      for (Cell c : cells) {
        write(c, done, Math.min(done + take, c.lines().size()), step);
      }
      y += take * step;
      done += take;
    }
  }

  private void write(Cell cell, int from, int to, double step) throws IOException {
    if (from >= to) {
      return;
    }
    sheet().begin(cell.element());
    for (int i = from; i < to; i++) {
      double baseline = y + (i - from) * step + step / 2 + cell.size() * 0.345;
      sheet()
          .text(cell.x(), baseline, cell.lines().get(i), cell.weight(), cell.size(), cell.shade());
    }
    sheet().end();
  }

  /** Ruled lines to be filled by hand. */
  void blankLines(int count) throws IOException {
    for (int i = 0; i < count; i++) {
      need(20);
      y += 17;
      sheet().beginArtifact();
      sheet().rule(left(), y, right(), 0.5, Shade.RULE);
      sheet().end();
    }
    y += 4;
  }
}
