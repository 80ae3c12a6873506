package saddlewright.command;

import java.io.PrintWriter;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import saddlewright.casefile.CaseFileException;
import saddlewright.rules.Profile;
import saddlewright.rules.Rule;
import saddlewright.rules.RuleBook;

/** Lists the rule book, or prints the page of one rule. */
@Command(
    name = "rules",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    description = {
      "Lists the rules by chapter: weight, id and claim.",
      "With the id of a rule, prints its page."
    },
    exitCodeListHeading = "%nExit codes:%n",
    exitCodeList = {"0:done", "2:no such rule or profile, or wrong usage"})
final class RulesCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Parameters(arity = "0..1", paramLabel = "ID", description = "Id of a rule.")
  private Optional<String> id = Optional.empty();

  @Option(
      names = "--format",
      defaultValue = "text",
      description = "text or json (default: ${DEFAULT-VALUE}).")
  private CheckCommand.Format format;

  @Option(
      names = "--profile",
      paramLabel = "ID|FILE",
      defaultValue = "uk-teaching",
      description = "The school whose weights are shown (default: ${DEFAULT-VALUE}).")
  private String profile;

  @Override
  public Integer call() throws CaseFileException {
    PrintWriter out = spec.commandLine().getOut();
    Profile school = ProfileChoice.of(profile, spec.commandLine()).profile();
    boolean json = format == CheckCommand.Format.json;
    if (id.isEmpty()) {
      out.print(json ? RuleJson.book(school) : RuleText.book(school));
    } else {
      Rule rule = rule(id.get());
      out.print(json ? RuleJson.page(rule, school) : RuleText.page(rule, school));
    }
    out.flush();
    return CommandLine.ExitCode.OK;
  }

  private Rule rule(String wanted) {
    return RuleBook.find(wanted)
        .orElseThrow(
            () ->
                new ParameterException(
                    spec.commandLine(),
                    "\""
                        + wanted
                        + "\" is not the id of a rule; \"saddlewright rules\" lists them"));
  }
}
