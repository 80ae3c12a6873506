package saddlewright.prescription.pdf;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

/** A few values side by side in larger type: what is looked for first. */
final class Facts {
  private static final double SIZE = 12;
  private static final double GUTTER = 6 * Sheet.MM;
  private static final double BLANK = 20;

  /**
   * One value.
   *
   * @param value may be empty
   * @param required the document is not complete without it
   */
  record Fact(String label, String value, boolean required) {}

  private final List<Fact> facts;

  Facts(List<Fact> facts) {
    this.facts = List.copyOf(facts);
  }

  void write(Flow flow) throws IOException {
    double width = (Flow.MEASURE - GUTTER * (facts.size() - 1)) / facts.size();
    flow.need(60);
    List<Flow.Cell> labels = new ArrayList<>();
    List<Flow.Cell> values = new ArrayList<>();
    boolean blank = false;
    double x = flow.left();
    for (Fact f : facts) {
      var p = flow.tags().under(flow.tags().document(), "P");
      boolean empty = f.value().isBlank();
      String label = f.label() + (empty && f.required() ? " – " + Fields.REQUIRED : "");
      labels.add(
          new Flow.Cell(
              p,
              x,
              Wrap.lines(label, Weight.REGULAR, Fields.LABEL, width),
              Weight.REGULAR,
              Fields.LABEL,
              Shade.QUIET));
      values.add(
          new Flow.Cell(
              p, x, Wrap.lines(f.value(), Weight.BOLD, SIZE, width), Weight.BOLD, SIZE, Shade.INK));
      blank |= empty;
      x += width + GUTTER;
    }
    flow.row(labels);
    double top = flow.y();
    flow.row(values);
    if (blank && flow.y() < top + BLANK) {
      flow.moveTo(top + BLANK);
    }
    flow.sheet().beginArtifact();
    x = flow.left();
    for (Fact f : facts) {
      if (f.value().isBlank()) {
        flow.sheet().rule(x, flow.y() - 3, x + width, 0.5, Shade.RULE);
      }
      x += width + GUTTER;
    }
    flow.sheet().end();
    flow.gap(10);
  }
}
