package saddlewright.prescription.pdf;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import saddlewright.chart.ArchChart;
import saddlewright.dentition.Arch;
import saddlewright.drawing.DrawingOptions;
import saddlewright.drawing.SheetDrawing;
import saddlewright.geometry.Box;
import saddlewright.layout.Layout;
import saddlewright.prescription.PictureWords;
import saddlewright.prescription.ToothStates;

/** The drawing at true scale, the teeth that it starts from, and the class with its reasons. */
final class DesignSection implements Section {
  private static final double BETWEEN_COLUMNS = 7 * Sheet.MM;
  private static final double NARROWEST_COLUMN = 58 * Sheet.MM;
  private static final double CAPTION_SIZE = 7;
  private static final String CAPTION =
      "Seen from the occlusal side: the patient's right is on the left. Drawn at true scale:"
          + " print at 100 % and check that the bar measures 20 mm.";

  private final Printout printout;

  DesignSection(Printout printout) {
    this.printout = printout;
  }

  @Override
  public void write(Flow flow) throws IOException {
    flow.newPage();
    flow.heading("Design");
    List<SheetDrawing> drawings = drawings(flow);
    SheetDrawing first = drawings.get(0);
    List<Fields> arches = arches();
    double from = wide(first) + BETWEEN_COLUMNS;
    double column = Flow.MEASURE - from;
    double fields = arches.stream().mapToDouble(f -> f.height(column) + 12).sum();
    boolean beside =
        drawings.size() == 1
            && column >= NARROWEST_COLUMN
            && high(first) + caption(first) <= flow.room()
            && fields <= flow.room();
    if (beside) {
      double top = flow.y();
      drawing(flow, first);
      double below = flow.y();
      double y = top;
      for (Fields f : arches) {
        y = f.draw(flow, flow.left() + from, y, column) + 12;
      }
      flow.moveTo(Math.max(below, y) + 4);
    } else {
      for (SheetDrawing d : drawings) {
        onItsPage(flow, d);
      }
      if (arches.size() == 2) {
        Fields.beside(flow, arches.get(0), arches.get(1));
      } else {
        arches.get(0).write(flow);
      }
    }
    classes(flow);
  }

  /** The arches that matter on one drawing; each on its own when together they fill a page. */
  private List<SheetDrawing> drawings(Flow flow) {
    Optional<Layout> upper = shown(Arch.UPPER);
    Optional<Layout> lower = shown(Arch.LOWER);
    SheetDrawing together = drawn(upper, lower);
    boolean fits = high(together) + caption(together) <= flow.room() && wide(together) <= widest();
    if (fits || upper.isEmpty() || lower.isEmpty()) {
      return List.of(together);
    }
    return List.of(drawn(upper, Optional.empty()), drawn(Optional.empty(), lower));
  }

  private SheetDrawing drawn(Optional<Layout> upper, Optional<Layout> lower) {
    DrawingOptions options =
        new DrawingOptions(
            printout.notation(), DrawingOptions.DEFAULT.anatomy(), DrawingOptions.DEFAULT.survey());
    return SheetDrawing.of(upper, lower, options, printout.callouts());
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

  private static double widest() {
    return Flow.MEASURE + 0.5;
  }

  private static double wide(SheetDrawing d) {
    return DrawingPainter.extent(d.drawing()).width() * Sheet.MM;
  }

  private static double high(SheetDrawing d) {
    return DrawingPainter.extent(d.drawing()).height() * Sheet.MM;
  }

  private static double captionWidth(SheetDrawing d) {
    return Math.max(wide(d), 60 * Sheet.MM);
  }

  private static double caption(SheetDrawing d) {
    int lines = Wrap.lines(CAPTION, Weight.REGULAR, CAPTION_SIZE, captionWidth(d)).size();
    return 4 + lines * Flow.leading(CAPTION_SIZE);
  }

  /** Paints the drawing with its caption here. */
  private void drawing(Flow flow, SheetDrawing d) throws IOException {
    Box extent = DrawingPainter.extent(d.drawing());
    PDRectangle area =
        flow.sheet()
            .area(flow.left(), flow.y(), extent.width() * Sheet.MM, extent.height() * Sheet.MM);
    flow.sheet().begin(flow.tags().figure(flow.tags().document(), words(d), area));
    DrawingPainter.paint(
        d.drawing(),
        printout.options().palette(),
        flow.sheet(),
        flow.left() - extent.minX() * Sheet.MM,
        flow.y() - extent.minY() * Sheet.MM);
    flow.sheet().end();
    flow.gap(extent.height() * Sheet.MM + 4);
    flow.block(
        flow.tags().under(flow.tags().document(), "Caption"),
        flow.left(),
        captionWidth(d),
        CAPTION,
        Weight.REGULAR,
        CAPTION_SIZE,
        Shade.QUIET);
  }

  private String words(SheetDrawing d) {
    List<Arch> shown = new ArrayList<>();
    d.upperPlace().ifPresent(t -> shown.add(Arch.UPPER));
    d.lowerPlace().ifPresent(t -> shown.add(Arch.LOWER));
    return PictureWords.of(printout.assessment(), printout.notation(), shown);
  }

  /** On a page large enough for it: never shrunk. */
  private void onItsPage(Flow flow, SheetDrawing d) throws IOException {
    double margins = 2 * flow.left();
    double needed = high(d) + caption(d);
    if (wide(d) <= widest() && needed <= flow.room()) {
      drawing(flow, d);
      flow.gap(9);
      return;
    }
    if (wide(d) <= widest() && needed <= flow.most()) {
      flow.newPage();
      drawing(flow, d);
      flow.gap(9);
      return;
    }
    double width = wide(d) + margins;
    PDRectangle usual = Flow.size(flow.paper());
    double height = needed + usual.getHeight() - flow.most();
    PDRectangle a3 = PDRectangle.A3;
    boolean onA3 = width <= a3.getWidth() && height <= a3.getHeight();
    flow.turn(
        onA3
            ? a3
            : new PDRectangle(
                (float) Math.max(width, usual.getWidth()),
                (float) Math.max(height, usual.getHeight())));
    drawing(flow, d);
    flow.turn();
  }

  private List<Fields> arches() {
    List<Fields> out = new ArrayList<>();
    for (Arch arch : Arch.values()) {
      List<Fields.Field> fields = new ArrayList<>();
      ToothStates.of(printout.assessment().arch(arch).chart(), printout.notation())
          .lines()
          .forEach(l -> fields.add(Fields.Field.of(l.state(), l.teeth())));
      fields.add(
          Fields.Field.of("Class", printout.assessment().arch(arch).classification().label()));
      out.add(Fields.ofSection(Printout.name(arch) + " teeth", fields));
    }
    return out;
  }

  private void classes(Flow flow) throws IOException {
    for (Arch arch : Arch.values()) {
      var c = printout.assessment().arch(arch).classification();
      String none =
          printout.schedule().in(arch).isEmpty() ? " No denture is designed for this arch." : "";
      flow.paragraph(
          Printout.name(arch)
              + " arch: "
              + c.label()
              + ". "
              + String.join(" ", c.reasoning())
              + none,
          8,
          Shade.QUIET);
    }
  }
}
