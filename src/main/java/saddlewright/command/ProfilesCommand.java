package saddlewright.command;

import java.io.PrintWriter;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import saddlewright.casefile.CaseFileException;
import saddlewright.casefile.ProfileFile;
import saddlewright.casefile.json.ProfileCodec;
import saddlewright.rules.Departure;
import saddlewright.rules.Profile;

/** Lists the built-in school profiles, or prints one as a file to start a school's own from. */
@Command(
    name = "profiles",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    description = {
      "Lists the built-in school profiles and what each holds otherwise.",
      "With a profile, prints it as JSON, from which a school's own can be started."
    },
    exitCodeListHeading = "%nExit codes:%n",
    exitCodeList = {"0:done", "2:no such profile, or wrong usage"})
final class ProfilesCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Parameters(
      arity = "0..1",
      paramLabel = "ID|FILE",
      description = "A built-in profile, or a profile file to complete with every limit.")
  private Optional<String> profile = Optional.empty();

  @Override
  public Integer call() throws CaseFileException {
    PrintWriter out = spec.commandLine().getOut();
    if (profile.isPresent()) {
      ProfileFile file = ProfileChoice.of(profile.get(), spec.commandLine());
      out.print(ProfileCodec.toJson(file));
    } else {
      Profile.BUILT_IN.forEach(p -> out.print(summary(p)));
    }
    out.flush();
    return CommandLine.ExitCode.OK;
  }

  private static String summary(Profile p) {
    StringBuilder text = new StringBuilder();
    text.append(p.id()).append(": ").append(p.label()).append('\n');
    if (p.basedOn().isEmpty()) {
      text.append("  the profile by which the others are told\n");
    }
    for (Departure d : p.departures()) {
      text.append("  ").append(d.words()).append('\n');
      if (!d.reason().isEmpty()) {
        text.append("    because ").append(d.reason()).append('\n');
      }
      text.append("    ").append(d.source().words()).append('\n');
    }
    return text.toString();
  }
}
