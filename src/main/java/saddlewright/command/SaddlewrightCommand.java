package saddlewright.command;

import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** The command line's root: names the subcommands, prints help and version. */
@Command(
    name = "saddlewright",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    description = "Draws and checks designs of removable partial dentures.",
    footer = {
      "",
      "With no argument, or with one case file (.json) or design sheet (.pdf), the editor opens."
    })
public final class SaddlewrightCommand implements Callable<Integer> {

  @Spec private CommandSpec spec;

  /**
   * Runs the command line and returns its exit code.
   *
   * @param args words of the command line, without the program's name
   */
  public static int run(String... args) {
    return line().execute(args);
  }

  /** Whether a first word belongs to the command line: a subcommand or an option. */
  public static boolean knows(String word) {
    return word.startsWith("-") || line().getSubcommands().containsKey(word);
  }

  static CommandLine line() {
    return new CommandLine(new SaddlewrightCommand());
  }

  @Override
  public Integer call() {
    spec.commandLine().usage(spec.commandLine().getErr());
    return CommandLine.ExitCode.USAGE;
  }
}
