package saddlewright.command;

import java.io.OutputStreamWriter;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** The command line's root: names the subcommands, prints help and version. */
@Command(
    name = "saddlewright",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    description = "Draws and checks designs of removable partial dentures.",
    subcommands = {
      ClassifyCommand.class,
      CheckCommand.class,
      RulesCommand.class,
      ProfilesCommand.class,
      DrawCommand.class,
      ScheduleCommand.class,
      PreparationsCommand.class,
      StagesCommand.class,
      PrescribeCommand.class,
      ExportCommand.class
    },
    footer = {
      "",
      "With no argument, or with one case file (.saddle or .json) or design sheet (.pdf), the editor opens."
    })
public final class SaddlewrightCommand implements Callable<Integer> {

  @Spec private CommandSpec spec;

  /**
   * Runs the command line and returns its exit code.
   *
   * @param args words of the command line, without the program's name
   */
  public static int run(String... args) {
    CommandLine line = line().setOut(utf8(System.out)).setErr(utf8(System.err));
    int code = line.execute(args);
    if (System.out.checkError()) {
      line.getErr().println("Standard output is closed or full, so the answer is not complete.");
      return CommandLine.ExitCode.USAGE;
    }
    return code;
  }

  /** Whether a first word belongs to the command line: a subcommand or an option. */
  public static boolean knows(String word) {
    return word.startsWith("-") || line().getSubcommands().containsKey(word);
  }

  static CommandLine line() {
    return new CommandLine(new SaddlewrightCommand())
        .setParameterExceptionHandler(SaddlewrightCommand::refuse)
        .setExecutionExceptionHandler(SaddlewrightCommand::fail);
  }

  /** What went wrong while working, in a sentence; never a stack trace. */
  private static int fail(Exception wrong, CommandLine line, CommandLine.ParseResult parsed) {
    line.getErr().println(Failure.sentence(wrong));
    return CommandLine.ExitCode.USAGE;
  }

  /** One sentence on what is wrong and one on where the right usage stands. */
  private static int refuse(ParameterException wrong, String[] args) {
    CommandLine line = wrong.getCommandLine();
    String name = line.getCommandSpec().qualifiedName();
    line.getErr().println(wrong.getMessage() + ". See " + name + " --help.");
    return CommandLine.ExitCode.USAGE;
  }

  /** Text leaves as UTF-8 whatever the locale, so that the same command prints the same bytes. */
  private static PrintWriter utf8(PrintStream stream) {
    return new PrintWriter(new OutputStreamWriter(stream, StandardCharsets.UTF_8), true);
  }

  @Override
  public Integer call() {
    spec.commandLine().usage(spec.commandLine().getErr());
    return CommandLine.ExitCode.USAGE;
  }
}
