package saddlewright.command;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import saddlewright.casefile.Assessment;
import saddlewright.casefile.CaseFileException;
import saddlewright.dentition.Notation;
import saddlewright.prescription.PreparationPlan;
import saddlewright.prescription.pdf.reading.CaseDocument;

/** Prints the mouth preparations of a case. */
@Command(
    name = "preparations",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    description =
        "Prints the mouth preparations that the design asks for, in the order in which they are"
            + " done, with what has been noted of them.")
final class PreparationsCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Parameters(paramLabel = "CASE", description = "Case file, or prescription that holds its case.")
  private Path file;

  @Override
  public Integer call() throws CaseFileException {
    Assessment assessment = Assessment.of(CaseDocument.load(file));
    spec.commandLine().getOut().print(PreparationPlan.of(assessment, Notation.FDI).toText());
    spec.commandLine().getOut().flush();
    return CommandLine.ExitCode.OK;
  }
}
