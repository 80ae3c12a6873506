package saddlewright.prescription.growth;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import saddlewright.casefile.Assessment;
import saddlewright.classification.Classification;
import saddlewright.dentition.Arch;
import saddlewright.dentition.Notation;
import saddlewright.prescription.Category;
import saddlewright.prescription.DesignStatement;
import saddlewright.prescription.Reasons;
import saddlewright.prescription.Schedule;
import saddlewright.rules.Credit;
import saddlewright.rules.Report;
import saddlewright.rules.Sentence;
import saddlewright.rules.Severity;

/**
 * What was decided at a stage of the design and why: the lines of the schedule with what the rules
 * say for them. Reasons number teeth by FDI.
 *
 * @param stage the stage
 * @param arches each arch that is told of, in order
 */
public record GrowthCaption(GrowthStage stage, List<OfArch> arches) {

  /**
   * What was decided in one arch.
   *
   * @param summary in one sentence
   * @param decisions the components placed, or what is told of the arch as a whole
   */
  public record OfArch(Arch arch, String summary, List<Decision> decisions) {
    public OfArch {
      decisions = List.copyOf(decisions);
    }
  }

  /**
   * One decision.
   *
   * @param what a component in words with its number, or what the arch has
   * @param why reasons in words; may be empty
   */
  public record Decision(String what, String why) {}

  public GrowthCaption {
    arches = List.copyOf(arches);
  }

  /**
   * The caption of a stage.
   *
   * @param told the arches that are shown
   */
  public static GrowthCaption of(
      GrowthStage stage, Assessment assessment, Notation notation, List<Arch> told) {
    Schedule schedule = Schedule.of(assessment, notation);
    Reasons reasons = Reasons.of(assessment);
    List<OfArch> out = new ArrayList<>();
    for (Arch arch : told) {
      out.add(
          switch (stage) {
            case CHART -> chart(arch, assessment);
            case COMPLETE -> complete(arch, assessment, schedule, reasons);
            default -> placed(arch, stage, assessment, schedule, reasons);
          });
    }
    return new GrowthCaption(stage, out);
  }

  private static OfArch chart(Arch arch, Assessment assessment) {
    Classification c = assessment.arch(arch).classification();
    return new OfArch(
        arch,
        c.label() + ".",
        c.reasoning().stream().map(r -> new Decision(Sentence.capital(r), "")).toList());
  }

  private static OfArch placed(
      Arch arch, GrowthStage stage, Assessment assessment, Schedule schedule, Reasons reasons) {
    Category category = stage.category().orElseThrow();
    List<Schedule.Line> lines =
        schedule.in(arch).stream().filter(l -> l.category() == category).toList();
    if (lines.isEmpty()) {
      return new OfArch(
          arch,
          "Nothing is added" + whyNone(arch, category, assessment, schedule) + ".",
          List.of());
    }
    List<Decision> decisions = new ArrayList<>();
    for (Schedule.Line l : lines) {
      String place = l.teeth().isEmpty() ? "" : l.place() + ": ";
      decisions.add(new Decision(l.number() + ". " + place + l.text(), why(l, reasons)));
    }
    return new OfArch(
        arch,
        lines.size() == 1 ? "One component is added." : lines.size() + " components are added.",
        decisions);
  }

  private static String whyNone(
      Arch arch, Category category, Assessment assessment, Schedule schedule) {
    return DesignStatement.of(assessment.arch(arch), schedule).stream()
        .filter(s -> s.category() == category && !s.none().isEmpty())
        .findFirst()
        .map(s -> ": " + s.none())
        .orElse("");
  }

  private static String why(Schedule.Line line, Reasons reasons) {
    return reasons.in(line.arch()).stream()
        .filter(r -> r.number().isPresent() && r.number().getAsInt() == line.number())
        .findFirst()
        .map(r -> words(r.reasons()))
        .orElse("");
  }

  private static String words(List<Credit> credits) {
    List<String> distinct = credits.stream().map(Credit::words).distinct().toList();
    return distinct.isEmpty() ? "" : Sentence.capital(String.join("; ", distinct)) + ".";
  }

  private static OfArch complete(
      Arch arch, Assessment assessment, Schedule schedule, Reasons reasons) {
    List<Decision> decisions = new ArrayList<>();
    reasons.in(arch).stream()
        .filter(r -> r.number().isEmpty() && !r.reasons().isEmpty())
        .forEach(r -> decisions.add(new Decision(r.name(), words(r.reasons()))));
    int components = schedule.in(arch).size();
    String design =
        components == 0
            ? "No denture for this arch"
            : components == 1 ? "One component" : components + " components";
    return new OfArch(arch, design + "; " + findings(arch, assessment.report()) + ".", decisions);
  }

  private static String findings(Arch arch, Report report) {
    List<String> out = new ArrayList<>();
    for (Severity s : Severity.values()) {
      long n =
          report.standing().stream().filter(f -> f.arch() == arch && f.severity() == s).count();
      if (n > 0) {
        out.add(n + " " + s.code());
      }
    }
    return out.isEmpty() ? "no findings stand" : "findings that stand: " + String.join(", ", out);
  }

  /** The caption of one arch; empty where it is not told of. */
  public Optional<OfArch> in(Arch arch) {
    return arches.stream().filter(a -> a.arch() == arch).findFirst();
  }

  /** All in plain text, a line for each decision. */
  public String toText() {
    StringBuilder out = new StringBuilder(stage.title()).append('\n');
    for (OfArch a : arches) {
      out.append(Sentence.capital(a.arch().code()))
          .append(" arch: ")
          .append(a.summary())
          .append('\n');
      for (Decision d : a.decisions()) {
        out.append("  ").append(d.what());
        out.append(d.why().isEmpty() ? "\n" : " \u2013 " + d.why() + "\n");
      }
    }
    return out.toString();
  }
}
