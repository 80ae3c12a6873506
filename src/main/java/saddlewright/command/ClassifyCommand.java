package saddlewright.command;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.PrintWriter;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import saddlewright.chart.ArchChart;
import saddlewright.chart.GapDecision;
import saddlewright.chart.SoftTissues;
import saddlewright.chart.ToothFindings;
import saddlewright.chart.ToothStatus;
import saddlewright.classification.Classification;
import saddlewright.classification.EdentulousArea;
import saddlewright.dentition.Arch;
import saddlewright.dentition.Tooth;

/** The subcommand that classifies one arch given in words, or a table of arches. */
@Command(
    name = "classify",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    description = "Finds the Kennedy class of an arch by Applegate's rules and says why.",
    footer = {
      "",
      "Teeth are FDI numbers. A tooth not named stands; a standing third molar",
      "counts only when it is named as an abutment. A missing or extracted tooth is",
      "replaced unless --not-replaced names it; a tooth in --closed is missing and",
      "its space has closed.",
      "",
      "A table has the columns arch,missing,not_replaced,abutments,closed with teeth",
      "separated by ; and is answered with the columns class,modifications added.",
      "",
      "Exit code: 0 classified, 2 wrong usage or unreadable input."
    })
public final class ClassifyCommand implements Callable<Integer> {

  @Spec private CommandSpec spec;

  @Option(names = "--arch", paramLabel = "upper|lower", description = "The arch to classify.")
  private Optional<String> arch = Optional.empty();

  @Option(names = "--missing", paramLabel = "TEETH", description = "Missing teeth: 15,16.")
  private List<String> missing = List.of();

  @Option(
      names = "--not-replaced",
      paramLabel = "TEETH",
      description = "Lost teeth that get no artificial tooth.")
  private List<String> notReplaced = List.of();

  @Option(
      names = "--abutment",
      paramLabel = "TEETH",
      description = "Standing third molars that serve as abutments.")
  private List<String> abutments = List.of();

  @Option(
      names = "--closed",
      paramLabel = "TEETH",
      description = "Missing teeth whose space has closed by drift.")
  private List<String> closed = List.of();

  @Option(
      names = "--extract",
      paramLabel = "TEETH",
      description = "Teeth that are to be extracted before the denture is fitted.")
  private List<String> extract = List.of();

  @Option(
      names = "--csv",
      paramLabel = "FILE|-",
      description = "A table of arches to classify; - reads standard input.")
  private Optional<String> csv = Optional.empty();

  @Override
  public Integer call() {
    if (csv.isPresent()) {
      boolean alone = arch.isEmpty() && given().values().stream().allMatch(List::isEmpty);
      return alone
          ? classifyTable(csv.get())
          : refuse("--csv reads its arches from the table; give no other option beside it.");
    }
    if (arch.isEmpty()) {
      return refuse(
          "Give --arch upper or --arch lower with --missing and the missing teeth, or --csv with a"
              + " table of arches.");
    }
    return classifyOne(arch.get());
  }

  private SortedMap<String, List<String>> given() {
    return new TreeMap<>(
        Map.of(
            "--missing", missing,
            "--not-replaced", notReplaced,
            "--abutment", abutments,
            "--closed", closed,
            "--extract", extract));
  }

  private int classifyOne(String archName) {
    Arch which;
    try {
      which = ToothList.arch(archName);
    } catch (IllegalArgumentException e) {
      return refuse("--arch: " + e.getMessage() + ".");
    }
    Map<String, Set<Tooth>> teeth = new TreeMap<>();
    for (Map.Entry<String, List<String>> option : given().entrySet()) {
      try {
        teeth.put(option.getKey(), teeth(option.getValue(), which));
      } catch (IllegalArgumentException e) {
        return refuse(option.getKey() + ": " + e.getMessage() + ".");
      }
    }
    ArchChart chart = chart(which, teeth);
    noteIdle("--not-replaced", teeth.get("--not-replaced"), chart, true);
    noteIdle("--abutment", teeth.get("--abutment"), chart, false);
    print(Classification.of(chart, teeth.get("--abutment")));
    return CommandLine.ExitCode.OK;
  }

  private static Set<Tooth> teeth(List<String> words, Arch arch) {
    int places = ToothList.places(String.join(",", words), arch);
    Set<Tooth> teeth = EnumSet.noneOf(Tooth.class);
    for (Tooth tooth : Tooth.in(arch)) {
      if ((places & 1 << tooth.place()) != 0) {
        teeth.add(tooth);
      }
    }
    return teeth;
  }

  private static ArchChart chart(Arch arch, Map<String, Set<Tooth>> teeth) {
    Map<Tooth, ToothFindings> findings = new EnumMap<>(Tooth.class);
    for (Tooth tooth : Tooth.in(arch)) {
      boolean closed = teeth.get("--closed").contains(tooth);
      boolean missing = closed || teeth.get("--missing").contains(tooth);
      boolean extracted = teeth.get("--extract").contains(tooth);
      if (missing || extracted) {
        findings.put(
            tooth,
            ToothFindings.of(
                missing ? ToothStatus.MISSING : ToothStatus.TO_BE_EXTRACTED,
                closed
                    ? GapDecision.CLOSED
                    : teeth.get("--not-replaced").contains(tooth)
                        ? GapDecision.NOT_REPLACED
                        : GapDecision.REPLACED));
      }
    }
    return new ArchChart(arch, findings, SoftTissues.UNCHARTED);
  }

  /** Says on standard error which named teeth changed nothing because they stand, or do not. */
  private void noteIdle(String option, Set<Tooth> named, ArchChart chart, boolean standing) {
    List<String> idle = new ArrayList<>();
    for (Tooth tooth : Tooth.in(chart.arch())) {
      if (named.contains(tooth) && chart.stands(tooth) == standing) {
        idle.add(tooth.toString());
      }
    }
    if (!idle.isEmpty()) {
      say(
          "Note: "
              + option
              + " names "
              + String.join(", ", idle)
              + (standing
                  ? ", not named as missing and so taken as standing; this had no effect."
                  : ", named as lost; this had no effect."));
    }
  }

  private void print(Classification found) {
    PrintWriter out = spec.commandLine().getOut();
    StringBuilder text = new StringBuilder();
    text.append(found.arch().code()).append(" arch: ").append(found.label()).append('\n');
    text.append("class: ").append(found.kennedy().word()).append('\n');
    text.append("modifications: ").append(found.modifications()).append('\n');
    text.append(found.areas().isEmpty() ? "areas: none\n" : "areas:\n");
    for (EdentulousArea area : found.areas()) {
      text.append("  ")
          .append(area.span())
          .append(area.freeEnd() ? " free-end" : " bounded")
          .append(area.crossesMidline() ? ", across the midline" : "")
          .append(", replacing ")
          .append(area.replaced().stream().map(Tooth::toString).collect(Collectors.joining(", ")))
          .append('\n');
    }
    text.append("reasoning:\n");
    for (String sentence : found.reasoning()) {
      text.append("  ").append(sentence).append('\n');
    }
    out.print(text);
    out.flush();
  }

  private int classifyTable(String file) {
    boolean standardInput = file.equals("-");
    String source = standardInput ? "standard input" : file;
    try (Reader in = open(file, standardInput)) {
      new ClassifyTable(source, spec.commandLine().getOut()).answer(in).ifPresent(this::say);
      return CommandLine.ExitCode.OK;
    } catch (ClassifyTable.TableFault e) {
      return refuse(e.getMessage() + ".");
    } catch (AccessDeniedException e) {
      return refuse(source + ": no permission to read it; change its permissions.");
    } catch (IOException e) {
      return refuse(source + ": " + e.getMessage() + ".");
    }
  }

  private static Reader open(String file, boolean standardInput) throws IOException {
    InputStream bytes = standardInput ? System.in : Files.newInputStream(existing(file));
    return new BufferedReader(new InputStreamReader(bytes, StandardCharsets.UTF_8), 1 << 16);
  }

  private static Path existing(String file) throws IOException {
    Path path;
    try {
      path = Path.of(file);
    } catch (InvalidPathException e) {
      throw new IOException("not the name of a file; check it", e);
    }
    if (Files.isDirectory(path)) {
      throw new IOException("is a folder; name a CSV file in it");
    }
    if (!Files.exists(path)) {
      throw new IOException("there is no such file; check its name and folder");
    }
    return path;
  }

  private int refuse(String sentence) {
    say(sentence);
    return CommandLine.ExitCode.USAGE;
  }

  private void say(String sentence) {
    PrintWriter err = spec.commandLine().getErr();
    err.println(sentence);
    err.flush();
  }
}
