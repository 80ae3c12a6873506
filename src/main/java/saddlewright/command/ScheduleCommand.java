package saddlewright.command;

import java.nio.file.Path;
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
import saddlewright.prescription.Reasons;
import saddlewright.prescription.Schedule;
import saddlewright.prescription.ScheduleMail;
import saddlewright.prescription.pdf.reading.CaseDocument;

/** Prints the component schedule of a case. */
@Command(
    name = "schedule",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    description = "Prints the component schedule of a case in words, one line a component.")
final class ScheduleCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Parameters(paramLabel = "CASE", description = "Case file, or prescription that holds its case.")
  private Path file;

  @Option(
      names = "--reasons",
      description = "Also print what each component does for the rules of the book.")
  private boolean reasons;

  @Option(
      names = "--mail",
      description = "As the text of an e-mail: with a heading, in lines of at most 76 characters.")
  private boolean mail;

  @Override
  public Integer call() throws CaseFileException {
    Assessment assessment = Assessment.of(CaseDocument.load(file));
    spec.commandLine()
        .getOut()
        .print(
            mail
                ? ScheduleMail.of(assessment, Notation.FDI)
                : Schedule.of(assessment, Notation.FDI).toText());
    if (reasons) {
      spec.commandLine().getOut().print("\n" + Reasons.of(assessment).toText());
    }
    spec.commandLine().getOut().flush();
    return CommandLine.ExitCode.OK;
  }
}
