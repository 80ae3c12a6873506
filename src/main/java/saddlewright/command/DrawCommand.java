package saddlewright.command;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import saddlewright.archform.ArchForm;
import saddlewright.casefile.Assessment;
import saddlewright.casefile.AtomicFile;
import saddlewright.casefile.Case;
import saddlewright.casefile.CaseFileException;
import saddlewright.dentition.Arch;
import saddlewright.drawing.Drawing;
import saddlewright.drawing.DrawingOptions;
import saddlewright.drawing.Palette;
import saddlewright.drawing.SheetDrawing;
import saddlewright.drawing.SvgWriter;
import saddlewright.drawing.raster.PngPainter;
import saddlewright.layout.Layout;
import saddlewright.prescription.FindingSign;
import saddlewright.prescription.pdf.CaseDocument;

/** Draws the design sheet of a case as SVG or PNG, at true scale. */
@Command(
    name = "draw",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    description = "Draws the design sheet of a case, at true scale.")
final class DrawCommand implements Callable<Integer> {
  enum Shown {
    upper,
    lower,
    both
  }

  @Spec private CommandSpec spec;

  @Parameters(paramLabel = "CASE", description = "Case file, or prescription that holds its case.")
  private Path file;

  @Option(
      names = "--out",
      required = true,
      paramLabel = "FILE",
      description = "Where to write: a name that ends in .svg or .png.")
  private Path out;

  @Option(
      names = "--arch",
      defaultValue = "both",
      description = "upper, lower or both (default: ${DEFAULT-VALUE}).")
  private Shown arch;

  @Option(
      names = "--findings",
      description =
          "Mark what the rule book finds: M must, S should, C consider, ? not judged, W waived,"
              + " with the numbers of the prescription's lists.")
  private boolean findings;

  @Option(names = "--mono", description = "Black and white.")
  private boolean mono;

  @Option(
      names = "--dpi",
      defaultValue = "300",
      description = "Dots per inch of a PNG, 10 to 2400 (default: ${DEFAULT-VALUE}).")
  private int dpi;

  @Override
  public Integer call() throws IOException, CaseFileException {
    String name = out.toString().toLowerCase(Locale.ROOT);
    boolean png = name.endsWith(".png");
    if (!png && !name.endsWith(".svg")) {
      throw new ParameterException(
          spec.commandLine(), "--out " + out + ": the name must end in .svg or .png");
    }
    if (dpi < 10 || dpi > 2400) {
      throw new ParameterException(
          spec.commandLine(), "--dpi " + dpi + " is out of range; use a number from 10 to 2400");
    }
    OutFile.refuseCase(out, file, spec.commandLine());
    Case subject = CaseDocument.load(file);
    Drawing drawing =
        SheetDrawing.of(
                layout(subject, Arch.UPPER, Shown.lower),
                layout(subject, Arch.LOWER, Shown.upper),
                DrawingOptions.DEFAULT,
                findings ? FindingSign.callouts(Assessment.of(subject).report()) : List.of())
            .drawing();
    Palette palette = mono ? Palette.MONO : Palette.PAPER;
    AtomicFile.write(out, png ? png(drawing, palette) : svg(subject, drawing, palette));
    return CommandLine.ExitCode.OK;
  }

  private Optional<Layout> layout(Case subject, Arch which, Shown other) {
    return arch == other
        ? Optional.empty()
        : Optional.of(Layout.of(ArchForm.of(subject.chart(which)), subject.design(which)));
  }

  private byte[] png(Drawing drawing, Palette palette) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    PngPainter.write(drawing, palette, dpi, bytes);
    return bytes.toByteArray();
  }

  private static byte[] svg(Case subject, Drawing drawing, Palette palette) {
    String title = "Design sheet " + subject.reference() + " " + subject.title();
    return SvgWriter.write(drawing, palette, title.strip()).getBytes(StandardCharsets.UTF_8);
  }
}
