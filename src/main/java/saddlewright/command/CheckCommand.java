package saddlewright.command;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import saddlewright.casefile.Assessment;
import saddlewright.casefile.CaseFileException;
import saddlewright.casefile.json.CaseStore;
import saddlewright.rules.Finding;

/** Classifies and judges cases. */
@Command(
    name = "check",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    description = "Classifies both arches of each case and lists what the rule book finds.",
    exitCodeListHeading = "%nExit codes:%n",
    exitCodeList = {
      "0:nothing found at or above the level, or only what was waived",
      "1:findings at or above the level",
      "2:a case could not be read, or wrong usage"
    })
final class CheckCommand implements Callable<Integer> {
  enum Format {
    text,
    json
  }

  @Spec private CommandSpec spec;

  @Parameters(arity = "1..*", paramLabel = "CASE", description = "Case files.")
  private List<Path> cases;

  @Option(
      names = "--format",
      defaultValue = "text",
      description = "text or json (default: ${DEFAULT-VALUE}).")
  private Format format;

  @Option(
      names = "--fail-on",
      paramLabel = "LEVEL",
      defaultValue = "must",
      description = "must, should or consider: exit 1 from here up (default: ${DEFAULT-VALUE}).")
  private Level failOn;

  @Override
  public Integer call() {
    PrintWriter out = spec.commandLine().getOut();
    PrintWriter err = spec.commandLine().getErr();
    boolean unreadable = false;
    boolean found = false;
    List<CheckedCase> checked = new ArrayList<>();
    for (Path file : cases) {
      try {
        CheckedCase c = new CheckedCase(file, Assessment.of(CaseStore.load(file)));
        checked.add(c);
        found |= c.assessment().report().standing().stream().anyMatch(this::fails);
      } catch (CaseFileException e) {
        unreadable = true;
        err.println(e.getMessage());
      }
    }
    out.print(format == Format.json ? CheckJson.write(checked) : CheckText.write(checked));
    out.flush();
    err.flush();
    return unreadable ? CommandLine.ExitCode.USAGE : found ? 1 : 0;
  }

  private boolean fails(Finding f) {
    return f.severity().isAtLeast(failOn.severity);
  }
}
