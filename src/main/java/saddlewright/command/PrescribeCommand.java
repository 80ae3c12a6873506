package saddlewright.command;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import saddlewright.casefile.Assessment;
import saddlewright.casefile.AtomicFile;
import saddlewright.casefile.CaseFileException;
import saddlewright.prescription.FindingSign;
import saddlewright.prescription.pdf.CaseDocument;
import saddlewright.prescription.pdf.Paper;
import saddlewright.prescription.pdf.PrescriptionPdf;
import saddlewright.prescription.pdf.PrintOptions;

/** Writes the laboratory prescription of a case as PDF. */
@Command(
    name = "prescribe",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    description = "Writes the laboratory prescription of a case as PDF, drawn at true scale.")
final class PrescribeCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Parameters(paramLabel = "CASE", description = "Case file, or prescription that holds its case.")
  private Path file;

  @Option(
      names = "--out",
      required = true,
      paramLabel = "FILE",
      description = "Where to write: a name that ends in .pdf.")
  private Path out;

  @Option(
      names = "--findings",
      description = "Mark on the drawing what the rule book finds, with the numbers of the lists.")
  private boolean findings;

  @Option(
      names = "--date",
      paramLabel = "YYYY-MM-DD",
      converter = PrescribeCommand.Day.class,
      description = "Date of the document (default: today).")
  private LocalDate date = LocalDate.now();

  @Option(
      names = "--paper",
      paramLabel = "PAPER",
      description = "Paper: ${COMPLETION-CANDIDATES} (default: ${DEFAULT-VALUE}).")
  private Paper paper = Paper.A4;

  /** Reads a date, and says in plain words when it is none. */
  static final class Day implements CommandLine.ITypeConverter<LocalDate> {
    @Override
    public LocalDate convert(String text) {
      try {
        return LocalDate.parse(text);
      } catch (DateTimeParseException e) {
        throw new CommandLine.TypeConversionException(
            ToothList.quoted(text) + " is no date; write year-month-day, such as 2026-03-31");
      }
    }
  }

  @Override
  public Integer call() throws CaseFileException, IOException {
    if (!out.toString().toLowerCase(Locale.ROOT).endsWith(".pdf")) {
      throw new ParameterException(
          spec.commandLine(), "--out " + out + ": the name must end in .pdf");
    }
    OutFile.refuseCase(out, file, spec.commandLine());
    Assessment assessment = Assessment.of(CaseDocument.load(file));
    AtomicFile.write(
        out,
        PrescriptionPdf.toBytes(
            assessment,
            PrintOptions.on(date)
                .with(paper)
                .withSigns(findings ? FindingSign.callouts(assessment.report()) : List.of())));
    return CommandLine.ExitCode.OK;
  }
}
