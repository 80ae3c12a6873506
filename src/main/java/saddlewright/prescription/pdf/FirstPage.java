package saddlewright.prescription.pdf;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import saddlewright.casefile.Case;
import saddlewright.casefile.order.Item;
import saddlewright.casefile.order.PrescriptionDetails;
import saddlewright.chart.ArchChart;
import saddlewright.dentition.Arch;
import saddlewright.drawing.DrawingOptions;
import saddlewright.drawing.SheetDrawing;
import saddlewright.geometry.Box;
import saddlewright.layout.Layout;
import saddlewright.prescription.PictureWords;
import saddlewright.prescription.ToothWords;

/** What the technician holds first: whose case, by when, in what, and the drawing at true scale. */
final class FirstPage implements Section {
  private static final double BETWEEN_COLUMNS = 7 * Sheet.MM;
  private static final double NARROWEST_FIELDS = 62 * Sheet.MM;
  private static final double SIGNATURE = 21 * Sheet.MM;
  private static final double CAPTION = 22;
  private static final String CAPTION_WORDS =
      "Seen from the occlusal side: the patient's right is on the left. Drawn at true scale:"
          + " print at 100 % and check that the bar measures 20 mm.";

  private final Printout printout;

  FirstPage(Printout printout) {
    this.printout = printout;
  }

  @Override
  public void write(Flow flow) throws IOException {
    title(flow);
    List<SheetDrawing> drawings = drawings(flow.sheet().height());
    Fields fields = fields();
    double drawn = flow.left() + wide(drawings.get(0)) + BETWEEN_COLUMNS;
    double column = flow.right() - drawn;
    boolean beside =
        drawings.size() == 1
            && column >= NARROWEST_FIELDS
            && high(drawings.get(0)) + CAPTION <= flow.room()
            && fields.height(column) + SIGNATURE <= flow.room();
    if (beside) {
      double top = flow.y();
      drawing(flow, drawings.get(0), flow.left());
      double afterDrawing = flow.y();
      double afterFields = fields.draw(flow, drawn, top, column);
      signature(flow, drawn, afterFields, column);
      flow.moveTo(Math.max(afterDrawing, afterFields + SIGNATURE));
      return;
    }
    fieldsAbove(flow, fields);
    for (SheetDrawing d : drawings) {
      onItsPage(flow, d);
    }
  }

  private void title(Flow flow) throws IOException {
    Case c = printout.subject();
    Tags tags = flow.tags();
    flow.gap(-2);
    flow.block(
        tags.under(tags.document(), "H1"),
        flow.left(),
        Flow.MEASURE - 70,
        Printout.KIND,
        Weight.BOLD,
        16,
        Shade.INK);
    flow.gap(3);
    String reference = c.reference().isBlank() ? "Case reference: ____________" : c.reference();
    flow.block(
        tags.under(tags.document(), "P"),
        flow.left(),
        Flow.MEASURE,
        reference,
        Weight.BOLD,
        10.5,
        Shade.INK);
    if (!c.title().isBlank()) {
      flow.block(
          tags.under(tags.document(), "P"),
          flow.left(),
          Flow.MEASURE,
          c.title(),
          Weight.REGULAR,
          10.5,
          Shade.INK);
    }
    flow.gap(2);
    flow.block(
        tags.under(tags.document(), "P"),
        flow.left(),
        Flow.MEASURE,
        "Teeth are numbered by "
            + ToothWords.name(printout.notation())
            + ". Document made on "
            + Dates.words(printout.options().date())
            + ".",
        Weight.REGULAR,
        8,
        Shade.QUIET);
    flow.gap(5);
    flow.sheet().beginArtifact();
    flow.sheet().rule(flow.left(), flow.y(), flow.right(), 1, Shade.INK);
    flow.sheet().end();
    flow.gap(9);
  }

  /** The arches that matter on one drawing; each on its own when together they fill a page. */
  private List<SheetDrawing> drawings(double page) {
    Optional<Layout> upper = shown(Arch.UPPER);
    Optional<Layout> lower = shown(Arch.LOWER);
    DrawingOptions options =
        new DrawingOptions(
            printout.notation(), DrawingOptions.DEFAULT.anatomy(), DrawingOptions.DEFAULT.survey());
    SheetDrawing together = SheetDrawing.of(upper, lower, options, printout.options().signs());
    boolean fits =
        high(together) + CAPTION + 40 * Sheet.MM <= page && wide(together) <= Flow.MEASURE;
    if (fits || upper.isEmpty() || lower.isEmpty()) {
      return List.of(together);
    }
    return List.of(
        SheetDrawing.of(upper, Optional.empty(), options, printout.options().signs()),
        SheetDrawing.of(Optional.empty(), lower, options, printout.options().signs()));
  }

  /** An arch that has neither a design nor anything charted is left out beside one that has. */
  private Optional<Layout> shown(Arch arch) {
    Arch other = arch == Arch.UPPER ? Arch.LOWER : Arch.UPPER;
    return matters(arch) || !matters(other)
        ? Optional.of(printout.assessment().arch(arch).layout())
        : Optional.empty();
  }

  private boolean matters(Arch arch) {
    return !printout.assessment().arch(arch).design().components().isEmpty()
        || !printout.assessment().arch(arch).chart().equals(ArchChart.full(arch));
  }

  private static double wide(SheetDrawing d) {
    return DrawingPainter.extent(d.drawing()).width() * Sheet.MM;
  }

  private static double high(SheetDrawing d) {
    return DrawingPainter.extent(d.drawing()).height() * Sheet.MM;
  }

  /** Paints the drawing with its caption here, its left edge at a place. */
  private void drawing(Flow flow, SheetDrawing d, double left) throws IOException {
    Box extent = DrawingPainter.extent(d.drawing());
    flow.sheet()
        .begin(
            flow.tags()
                .figure(
                    flow.tags().document(),
                    words(d),
                    flow.sheet()
                        .area(
                            left,
                            flow.y(),
                            extent.width() * Sheet.MM,
                            extent.height() * Sheet.MM)));
    DrawingPainter.paint(
        d.drawing(),
        printout.options().palette(),
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

  private String words(SheetDrawing d) {
    List<Arch> shown = new ArrayList<>();
    d.upperPlace().ifPresent(t -> shown.add(Arch.UPPER));
    d.lowerPlace().ifPresent(t -> shown.add(Arch.LOWER));
    return PictureWords.of(printout.assessment(), printout.notation(), shown);
  }

  private void fieldsAbove(Flow flow, Fields fields) throws IOException {
    if (fields.height(Flow.MEASURE) + SIGNATURE <= flow.room()) {
      flow.moveTo(fields.draw(flow, flow.left(), flow.y(), Flow.MEASURE));
    } else {
      fields.run(flow);
      flow.gap(6);
    }
    flow.need(SIGNATURE);
    signature(flow, flow.left(), flow.y(), Flow.MEASURE);
    flow.gap(SIGNATURE + 8);
  }

  /** On a page large enough for it: never shrunk. */
  private void onItsPage(Flow flow, SheetDrawing d) throws IOException {
    double margins = 2 * flow.left();
    double width = wide(d) + margins;
    double height = high(d) + CAPTION + 42 * Sheet.MM;
    if (width <= flow.sheet().width() + 0.5 && high(d) + CAPTION <= flow.room()) {
      drawing(flow, d, flow.left());
      return;
    }
    PDRectangle usual = Flow.size(flow.paper());
    PDRectangle a3 = PDRectangle.A3;
    if (width <= usual.getWidth() + 0.5 && height <= usual.getHeight()) {
      flow.turn(usual);
    } else if (width <= a3.getWidth() && height <= a3.getHeight()) {
      flow.turn(a3);
    } else {
      flow.turn(
          new PDRectangle(
              (float) Math.max(width, usual.getWidth()),
              (float) Math.max(height, usual.getHeight())));
    }
    drawing(flow, d, flow.left());
    if (flow.sheet().width() > usual.getWidth() + 1) {
      flow.turn();
    }
  }

  private void signature(Flow flow, double x, double top, double width) throws IOException {
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
    PrescriptionDetails p = printout.subject().prescription();
    return new Fields(
        List.of(
            List.of(new Fields.Field("Prescriber, registration", p.text(Item.PRESCRIBER_NAME), 1)),
            List.of(new Fields.Field("Practice, contact", p.text(Item.PRACTICE), 2)),
            List.of(new Fields.Field("Laboratory", p.text(Item.LABORATORY_NAME), 2)),
            List.of(
                new Fields.Field("Date issued", Dates.words(p.text(Item.DATE_ISSUED)), 1),
                new Fields.Field("Date required", Dates.words(p.text(Item.DATE_REQUIRED)), 1)),
            List.of(new Fields.Field("Framework alloy", p.text(Item.FRAMEWORK_ALLOY), 1)),
            List.of(new Fields.Field("Denture base", p.text(Item.BASE_POLYMER), 1)),
            List.of(new Fields.Field("Artificial teeth", p.text(Item.TOOTH_MATERIAL), 1)),
            List.of(new Fields.Field("Shade", p.text(Item.TOOTH_SHADE), 1)),
            List.of(new Fields.Field("Class", classes(), 1)),
            List.of(new Fields.Field("Enclosures", p.text(Item.ENCLOSED), 2)),
            List.of(
                new Fields.Field(
                    "Disinfection: what, with what, how long, by whom, when",
                    p.text(Item.DISINFECTED),
                    2)),
            List.of(new Fields.Field("Instructions", p.text(Item.SPECIAL_INSTRUCTIONS), 2))));
  }

  private String classes() {
    return "Upper: "
        + printout.assessment().upper().classification().label()
        + "\nLower: "
        + printout.assessment().lower().classification().label();
  }
}
