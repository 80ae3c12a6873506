package saddlewright.prescription.pdf;

import java.io.IOException;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import saddlewright.casefile.Assessment;
import saddlewright.casefile.Case;
import saddlewright.casefile.PrescriptionDetails;
import saddlewright.chart.ArchChart;
import saddlewright.dentition.Arch;
import saddlewright.dentition.Notation;
import saddlewright.drawing.Callout;
import saddlewright.drawing.DrawingOptions;
import saddlewright.drawing.Palette;
import saddlewright.drawing.SheetDrawing;
import saddlewright.geometry.Box;
import saddlewright.layout.Layout;
import saddlewright.prescription.ToothWords;

/** What the technician holds first: whose case, by when, in what, and the drawing at true scale. */
final class FirstPage {
  static final String KIND = "Laboratory prescription: cast partial denture";

  private static final double BETWEEN_COLUMNS = 7 * Sheet.MM;
  private static final double NARROWEST_FIELDS = 62 * Sheet.MM;
  private static final double SIGNATURE = 21 * Sheet.MM;
  private static final double CAPTION = 22;
  private static final String CAPTION_WORDS =
      "Seen from the occlusal side: the patient's right is on the left. Drawn at true scale:"
          + " print at 100 % and check that the bar measures 20 mm.";

  private final Assessment assessment;
  private final Notation notation;
  private final Palette palette;
  private final List<Callout> signs;
  private final Flow flow;

  FirstPage(
      Assessment assessment, Notation notation, Palette palette, List<Callout> signs, Flow flow) {
    this.assessment = assessment;
    this.notation = notation;
    this.palette = palette;
    this.signs = List.copyOf(signs);
    this.flow = flow;
  }

  void write(LocalDate date) throws IOException {
    title(date);
    List<SheetDrawing> drawings = drawings();
    Fields fields = fields();
    double drawn = Flow.SIDE + wide(drawings.get(0)) + BETWEEN_COLUMNS;
    double column = flow.right() - drawn;
    boolean beside =
        drawings.size() == 1
            && column >= NARROWEST_FIELDS
            && high(drawings.get(0)) + CAPTION <= flow.room()
            && fields.height(column) + SIGNATURE <= flow.room();
    if (beside) {
      double top = flow.y();
      drawing(drawings.get(0), Flow.SIDE);
      double afterDrawing = flow.y();
      double afterFields = fields.draw(flow, drawn, top, column);
      signature(drawn, afterFields, column);
      flow.moveTo(Math.max(afterDrawing, afterFields + SIGNATURE));
      return;
    }
    fieldsAbove(fields);
    for (SheetDrawing d : drawings) {
      onItsPage(d);
    }
  }

  private void title(LocalDate date) throws IOException {
    Case c = assessment.subject();
    Tags tags = flow.tags();
    flow.gap(-2);
    flow.block(
        tags.under(tags.document(), "H1"),
        Flow.SIDE,
        Flow.measure() - 70,
        KIND,
        Weight.BOLD,
        16,
        Shade.INK);
    flow.gap(3);
    String reference = c.reference().isBlank() ? "Case reference: ____________" : c.reference();
    flow.block(
        tags.under(tags.document(), "P"),
        Flow.SIDE,
        Flow.measure(),
        reference,
        Weight.BOLD,
        10.5,
        Shade.INK);
    if (!c.title().isBlank()) {
      flow.block(
          tags.under(tags.document(), "P"),
          Flow.SIDE,
          Flow.measure(),
          c.title(),
          Weight.REGULAR,
          10.5,
          Shade.INK);
    }
    flow.gap(2);
    flow.block(
        tags.under(tags.document(), "P"),
        Flow.SIDE,
        Flow.measure(),
        "Teeth are numbered by "
            + ToothWords.name(notation)
            + ". Document made on "
            + Dates.words(date)
            + ".",
        Weight.REGULAR,
        8,
        Shade.QUIET);
    flow.gap(5);
    flow.sheet().beginArtifact();
    flow.sheet().rule(Flow.SIDE, flow.y(), flow.right(), 1, Shade.INK);
    flow.sheet().end();
    flow.gap(9);
  }

  /** The arches that matter on one drawing; each on its own when together they fill a page. */
  private List<SheetDrawing> drawings() {
    Optional<Layout> upper = shown(Arch.UPPER);
    Optional<Layout> lower = shown(Arch.LOWER);
    DrawingOptions options =
        new DrawingOptions(
            notation, DrawingOptions.DEFAULT.anatomy(), DrawingOptions.DEFAULT.survey());
    SheetDrawing together = SheetDrawing.of(upper, lower, options, signs);
    boolean fits =
        high(together) + CAPTION + 40 * Sheet.MM <= PDRectangle.A4.getHeight()
            && wide(together) <= Flow.measure();
    if (fits || upper.isEmpty() || lower.isEmpty()) {
      return List.of(together);
    }
    return List.of(
        SheetDrawing.of(upper, Optional.empty(), options, signs),
        SheetDrawing.of(Optional.empty(), lower, options, signs));
  }

  /** An arch that has neither a design nor anything charted is left out beside one that has. */
  private Optional<Layout> shown(Arch arch) {
    Arch other = arch == Arch.UPPER ? Arch.LOWER : Arch.UPPER;
    return matters(arch) || !matters(other)
        ? Optional.of(assessment.arch(arch).layout())
        : Optional.empty();
  }

  private boolean matters(Arch arch) {
    return !assessment.arch(arch).design().components().isEmpty()
        || !assessment.arch(arch).chart().equals(ArchChart.full(arch));
  }

  private static double wide(SheetDrawing d) {
    return DrawingPainter.extent(d.drawing()).width() * Sheet.MM;
  }

  private static double high(SheetDrawing d) {
    return DrawingPainter.extent(d.drawing()).height() * Sheet.MM;
  }

  /** Paints the drawing with its caption here, its left edge at a place. */
  private void drawing(SheetDrawing d, double left) throws IOException {
    Box extent = DrawingPainter.extent(d.drawing());
    PDStructureElement figure = flow.tags().under(flow.tags().document(), "Figure");
    figure.setAlternateDescription(
        "Drawing of the design at true scale, occlusal view; its components are listed in the"
            + " component schedule.");
    flow.sheet().begin(figure);
    DrawingPainter.paint(
        d.drawing(),
        palette,
        flow.sheet(),
        left - extent.minX() * Sheet.MM,
        flow.y() - extent.minY() * Sheet.MM);
    flow.sheet().end();
    flow.gap(extent.height() * Sheet.MM + 2);
    flow.block(
        flow.tags().under(flow.tags().document(), "Caption"),
        left,
        Math.max(extent.width() * Sheet.MM, 60 * Sheet.MM),
        CAPTION_WORDS,
        Weight.REGULAR,
        7,
        Shade.QUIET);
  }

  private void fieldsAbove(Fields fields) throws IOException {
    if (fields.height(Flow.measure()) + SIGNATURE <= flow.room()) {
      flow.moveTo(fields.draw(flow, Flow.SIDE, flow.y(), Flow.measure()));
    } else {
      fields.run(flow);
      flow.gap(6);
    }
    flow.need(SIGNATURE);
    signature(Flow.SIDE, flow.y(), Flow.measure());
    flow.gap(SIGNATURE + 8);
  }

  /** On a page large enough for it: never shrunk. */
  private void onItsPage(SheetDrawing d) throws IOException {
    double margins = 2 * Flow.SIDE;
    double width = wide(d) + margins;
    double height = high(d) + CAPTION + 42 * Sheet.MM;
    if (width <= PDRectangle.A4.getWidth() + 0.5 && high(d) + CAPTION <= flow.room()) {
      drawing(d, Flow.SIDE);
      return;
    }
    PDRectangle a4 = PDRectangle.A4;
    PDRectangle a3 = PDRectangle.A3;
    if (width <= a4.getWidth() + 0.5 && height <= a4.getHeight()) {
      flow.turn(a4);
    } else if (width <= a3.getWidth() && height <= a3.getHeight()) {
      flow.turn(a3);
    } else {
      flow.turn(
          new PDRectangle(
              (float) Math.max(width, a4.getWidth()), (float) Math.max(height, a4.getHeight())));
    }
    drawing(d, Flow.SIDE);
    if (flow.sheet().width() > a4.getWidth() + 1) {
      flow.turn();
    }
  }

  private void signature(double x, double top, double width) throws IOException {
    Sheet sheet = flow.sheet();
    sheet.begin(flow.tags().under(flow.tags().document(), "P"));
    sheet.text(
        x + 5,
        top + 10.5,
        "Signature of the prescriber, and date",
        Weight.REGULAR,
        7.5,
        Shade.QUIET);
    sheet.end();
    sheet.beginArtifact();
    sheet.box(x, top, width, SIGNATURE - 6, 0.8, Shade.INK);
    sheet.end();
  }

  private Fields fields() {
    PrescriptionDetails p = assessment.subject().prescription();
    return new Fields(
        List.of(
            List.of(new Fields.Field("Prescriber, registration", p.prescriber(), 1)),
            List.of(new Fields.Field("Practice, contact", p.practice(), 2)),
            List.of(new Fields.Field("Laboratory", p.laboratory(), 2)),
            List.of(
                new Fields.Field("Date issued", Dates.words(p.dateIssued()), 1),
                new Fields.Field("Date required", Dates.words(p.dateRequired()), 1)),
            List.of(new Fields.Field("Framework alloy", p.frameworkAlloy(), 1)),
            List.of(new Fields.Field("Denture base", p.baseMaterial(), 1)),
            List.of(new Fields.Field("Artificial teeth", p.toothMaterial(), 1)),
            List.of(new Fields.Field("Shade", p.shade(), 1)),
            List.of(new Fields.Field("Class", classes(), 1)),
            List.of(new Fields.Field("Enclosures", p.enclosures(), 2)),
            List.of(
                new Fields.Field(
                    "Disinfection: what, with what, how long, by whom, when", p.disinfection(), 2)),
            List.of(new Fields.Field("Instructions", p.instructions(), 2))));
  }

  private String classes() {
    return "Upper: "
        + assessment.upper().classification().label()
        + "\nLower: "
        + assessment.lower().classification().label();
  }
}
