package saddlewright.command;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import saddlewright.casefile.Assessment;
import saddlewright.casefile.CaseFileException;
import saddlewright.dentition.Notation;
import saddlewright.prescription.Timetable;
import saddlewright.prescription.pdf.reading.CaseDocument;

/** Prints the timetable of a case. */
@Command(
    name = "stages",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    description =
        "Prints the stages of the treatment with the days by which they are due, and what stands"
            + " in their way.")
final class StagesCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Parameters(paramLabel = "CASE", description = "Case file, or prescription that holds its case.")
  private Path file;

  @Option(
      names = "--date",
      paramLabel = "YYYY-MM-DD",
      converter = PrescribeCommand.Day.class,
      description = "Day as of which a stage is overdue (default: today).")
  private LocalDate date = LocalDate.now();

  @Override
  public Integer call() throws CaseFileException {
    Assessment assessment = Assessment.of(CaseDocument.load(file));
    spec.commandLine().getOut().print(Timetable.of(assessment, Notation.FDI, date).toText());
    spec.commandLine().getOut().flush();
    return CommandLine.ExitCode.OK;
  }
}
