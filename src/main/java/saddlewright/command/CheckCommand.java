package saddlewright.command;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import saddlewright.casefile.Assessment;
import saddlewright.casefile.Case;
import saddlewright.casefile.CaseFileException;
import saddlewright.casefile.ProfileFile;
import saddlewright.prescription.pdf.reading.CaseDocument;
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

  @Parameters(
      arity = "1..*",
      paramLabel = "CASE",
      description = "Case files, or prescriptions that hold their case.")
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

  @Option(
      names = "--profile",
      paramLabel = "ID|FILE",
      description = "Judges by this school profile, whatever the cases are pinned to.")
  private Optional<String> profile = Optional.empty();

  @Override
  public Integer call() throws CaseFileException {
    PrintWriter out = spec.commandLine().getOut();
    PrintWriter err = spec.commandLine().getErr();
    Optional<ProfileFile> school =
        profile.isPresent()
            ? Optional.of(ProfileChoice.of(profile.get(), spec.commandLine()))
            : Optional.empty();
    // Each file is judged by itself, so that all processors can share the work; order is kept.
    List<Judged> judged = cases.parallelStream().map(f -> judge(f, school)).toList();
    judged.forEach(j -> j.refusal().ifPresent(err::println));
    List<CheckedCase> checked = judged.stream().flatMap(j -> j.checked().stream()).toList();
    boolean unreadable = checked.size() < judged.size();
    boolean found =
        checked.stream()
            .flatMap(c -> c.assessment().report().standing().stream())
            .anyMatch(this::fails);
    out.print(format == Format.json ? CheckJson.write(checked) : CheckText.write(checked));
    out.flush();
    err.flush();
    return unreadable ? CommandLine.ExitCode.USAGE : found ? 1 : 0;
  }

  /** A case that was judged, or the sentence that says why it could not be. */
  private record Judged(Optional<CheckedCase> checked, Optional<String> refusal) {}

  private static Judged judge(Path file, Optional<ProfileFile> school) {
    try {
      Case pinned = CaseDocument.load(file);
      Case judged = school.map(pinned::withProfile).orElse(pinned);
      return new Judged(
          Optional.of(new CheckedCase(file, Assessment.of(judged))), Optional.empty());
    } catch (CaseFileException e) {
      return new Judged(Optional.empty(), Optional.of(e.getMessage()));
    }
  }

  private boolean fails(Finding f) {
    return f.severity().isAtLeast(failOn.severity);
  }
}
