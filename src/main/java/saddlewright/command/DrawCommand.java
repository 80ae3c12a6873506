package saddlewright.command;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
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
import saddlewright.drawing.Background;
import saddlewright.drawing.Callout;
import saddlewright.drawing.Drawing;
import saddlewright.drawing.DrawingOptions;
import saddlewright.drawing.Palette;
import saddlewright.drawing.SheetDrawing;
import saddlewright.drawing.SvgWriter;
import saddlewright.drawing.raster.PngPainter;
import saddlewright.layout.Layout;
import saddlewright.prescription.ComponentNumbers;
import saddlewright.prescription.FindingSign;
import saddlewright.prescription.pdf.reading.CaseDocument;

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

  @Option(
      names = "--numbers",
      description = "Number the components as the schedule and the prescription do.")
  private boolean numbers;

  @Option(names = "--transparent", description = "Leave the page clear instead of white.")
  private boolean transparent;

  @Option(names = "--mono", description = "Black and white.")
  private boolean mono;

  @Option(
      names = "--dpi",
      defaultValue = "300",
      converter = Dots.class,
      description = "Dots per inch of a PNG, 10 to 2400 (default: ${DEFAULT-VALUE}).")
  private int dpi;

  /** Reads a resolution, and says in plain words when it is none. */
  static final class Dots implements CommandLine.ITypeConverter<Integer> {
    @Override
    public Integer convert(String text) {
      try {
        int dots = Integer.parseInt(text.strip());
        if (dots >= PngPainter.LEAST_DPI && dots <= PngPainter.MOST_DPI) {
          return dots;
        }
      } catch (NumberFormatException e) {
        throw new CommandLine.TypeConversionException(
            ToothList.quoted(text) + " is no whole number; use dots per inch from 10 to 2400");
      }
      throw new CommandLine.TypeConversionException(
          text + " is out of range; use dots per inch from 10 to 2400");
    }
  }

  @Override
  public Integer call() throws IOException, CaseFileException {
    String name = out.toString().toLowerCase(Locale.ROOT);
    boolean png = name.endsWith(".png");
    if (!png && !name.endsWith(".svg")) {
      throw new ParameterException(
          spec.commandLine(), "--out " + out + ": the name must end in .svg or .png");
    }
    OutFile.refuseCase(out, file, spec.commandLine());
    Case subject = CaseDocument.load(file);
    Drawing drawing =
        SheetDrawing.of(
                layout(subject, Arch.UPPER, Shown.lower),
                layout(subject, Arch.LOWER, Shown.upper),
                DrawingOptions.DEFAULT,
                callouts(subject))
            .drawing();
    Palette palette = mono ? Palette.MONO : Palette.PAPER;
    AtomicFile.write(out, png ? png(drawing, palette) : svg(subject, drawing, palette));
    return CommandLine.ExitCode.OK;
  }

  private List<Callout> callouts(Case subject) {
    List<Callout> out = new ArrayList<>();
    if (numbers) {
      out.addAll(ComponentNumbers.callouts(subject));
    }
    if (findings) {
      out.addAll(FindingSign.callouts(Assessment.of(subject).report()));
    }
    return out;
  }

  private Optional<Layout> layout(Case subject, Arch which, Shown other) {
    return arch == other
        ? Optional.empty()
        : Optional.of(Layout.of(ArchForm.of(subject.chart(which)), subject.design(which)));
  }

  private byte[] png(Drawing drawing, Palette palette) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    PngPainter.write(drawing, palette, background(), dpi, bytes);
    return bytes.toByteArray();
  }

  private byte[] svg(Case subject, Drawing drawing, Palette palette) {
    String title = "Design sheet " + subject.reference() + " " + subject.title();
    return SvgWriter.write(drawing, palette, background(), title.strip())
        .getBytes(StandardCharsets.UTF_8);
  }

  private Background background() {
    return transparent ? Background.CLEAR : Background.PAPER;
  }
}
