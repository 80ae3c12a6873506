package saddlewright.desktop;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import saddlewright.dentition.Arch;
import saddlewright.drawing.ArchDrawing;
import saddlewright.drawing.Background;
import saddlewright.drawing.Callout;
import saddlewright.drawing.Drawing;
import saddlewright.drawing.DrawingOptions;
import saddlewright.drawing.Palette;
import saddlewright.drawing.SheetDrawing;
import saddlewright.drawing.SvgWriter;
import saddlewright.drawing.raster.PngPainter;
import saddlewright.geometry.Box;
import saddlewright.layout.Layout;
import saddlewright.prescription.ComponentNumbers;
import saddlewright.prescription.FindingSign;
import saddlewright.prescription.growth.GrowthStage;

/**
 * The sheet as it leaves the window: what is seen on the desk, always on white paper or on none.
 *
 * @param title what the picture is called
 */
record DeskDrawing(Drawing drawing, Palette palette, String title) {
  static final int DPI = 300;

  private static final double MM_PER_INCH = 25.4;

  /** What is seen: the whole design, or the stage of it that is shown. */
  static DeskDrawing of(Worktable table) {
    return of(table, table.stageProperty().get().orElse(GrowthStage.COMPLETE));
  }

  /** The same with the design as it stands at a stage, on a page of the same size. */
  static DeskDrawing of(Worktable table, GrowthStage stage) {
    List<Callout> numbers =
        table.numbersProperty().get() ? ComponentNumbers.callouts(table.current()) : List.of();
    List<Callout> callouts = new ArrayList<>(numbers);
    if (table.markersProperty().get() && stage == GrowthStage.COMPLETE) {
      callouts.addAll(FindingSign.callouts(table.assessment().report()));
    }
    DrawingOptions options =
        new DrawingOptions(
            table.notationProperty().get(),
            table.anatomyProperty().get(),
            table.surveyProperty().get());
    String title = "Design sheet " + table.current().reference() + " " + table.current().title();
    SheetDrawing sheet =
        SheetDrawing.of(shown(table, Arch.UPPER), shown(table, Arch.LOWER), options, callouts);
    if (stage != GrowthStage.COMPLETE) {
      title = title.strip() + ", " + stage.title();
      for (Arch arch : Arch.values()) {
        Layout whole = table.assessment().arch(arch).layout();
        sheet =
            sheet.replacing(
                arch,
                numbered(whole, options, numbers),
                numbered(stage.of(whole), options, numbers));
      }
    }
    return new DeskDrawing(
        sheet.drawing(),
        table.blackAndWhiteProperty().get() ? Palette.MONO : Palette.PAPER,
        title.strip());
  }

  private static Drawing numbered(Layout layout, DrawingOptions options, List<Callout> numbers) {
    List<Callout> here =
        numbers.stream()
            .filter(n -> n.subject().arch() == layout.form().arch())
            .filter(n -> n.subject().component().flatMap(layout.design()::find).isPresent())
            .toList();
    return ArchDrawing.numbered(layout, ArchDrawing.of(layout, options), here);
  }

  private static Optional<Layout> shown(Worktable table, Arch arch) {
    return table.shownProperty().get().shows(arch)
        ? Optional.of(table.assessment().arch(arch).layout())
        : Optional.empty();
  }

  String svg(Background background) {
    return SvgWriter.write(drawing, palette, background, title);
  }

  /** The picture at 300 dots an inch. */
  byte[] png(Background background) throws IOException {
    return png(background, DPI);
  }

  /**
   * The picture at 300 dots an inch, or at as many as keep it below a number of pixels.
   *
   * @param most pixels
   */
  byte[] pngWithin(Background background, double most) throws IOException {
    Box b = drawing.bounds();
    double area = b.width() * b.height() / (MM_PER_INCH * MM_PER_INCH);
    int dpi = (int) Math.floor(Math.sqrt(most / area));
    return png(background, Math.max(PngPainter.LEAST_DPI, Math.min(DPI, dpi)));
  }

  private byte[] png(Background background, int dpi) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    PngPainter.write(drawing, palette, background, dpi, out);
    return out.toByteArray();
  }
}
