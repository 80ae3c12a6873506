package saddlewright.prescription;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import saddlewright.casefile.Assessment;
import saddlewright.dentition.Arch;
import saddlewright.dentition.Notation;
import saddlewright.design.Component;
import saddlewright.design.Subject;
import saddlewright.rules.Credit;
import saddlewright.rules.Naming;

/**
 * The design's own argument: for each component of the schedule, what it does for the rules.
 *
 * @param lines one for each component, in the order and with the numbers of the {@link Schedule}
 */
public record Reasons(List<Line> lines) {
  /**
   * A component with its reasons.
   *
   * @param number of its line in the schedule
   * @param name such as "Mesial rest on 47"
   * @param reasons verb phrases that go on from the name; empty when no rule speaks for it
   */
  public record Line(int number, Arch arch, String name, List<Credit> reasons) {
    public Line {
      reasons = List.copyOf(reasons);
    }
  }

  public Reasons {
    lines = List.copyOf(lines);
  }

  public static Reasons of(Assessment assessment) {
    Map<Subject, List<Credit>> credits =
        assessment.report().credits().stream().collect(Collectors.groupingBy(Credit::subject));
    List<Line> out = new ArrayList<>();
    for (Schedule.Line l : Schedule.of(assessment, Notation.FDI).lines()) {
      Optional<Component> c = assessment.arch(l.arch()).design().find(l.id());
      c.ifPresent(
          x ->
              out.add(
                  new Line(
                      l.number(),
                      l.arch(),
                      OneLine.of(capital(Naming.of(x))),
                      credits.getOrDefault(Subject.of(l.arch(), x), List.of()))));
    }
    return new Reasons(out);
  }

  /** The lines of one arch. */
  public List<Line> in(Arch arch) {
    return lines.stream().filter(l -> l.arch() == arch).toList();
  }

  /** Plain text: each component with its reasons below it, and the rule that each one answers. */
  public String toText() {
    StringBuilder out = new StringBuilder("REASONS FOR EACH COMPONENT\n");
    for (Arch arch : Arch.values()) {
      if (!in(arch).isEmpty()) {
        out.append('\n').append(arch == Arch.UPPER ? "UPPER ARCH\n" : "LOWER ARCH\n");
      }
      for (Line l : in(arch)) {
        out.append(String.format(java.util.Locale.ROOT, "%4d  %s", l.number(), l.name()));
        out.append(l.reasons().isEmpty() ? ": no rule of the book speaks for it\n" : "\n");
        for (Credit c : l.reasons()) {
          out.append("      - ").append(c.words());
          out.append(" [").append(c.ruleId()).append("]\n");
        }
      }
    }
    return out.toString();
  }

  private static String capital(String words) {
    return words.isEmpty()
        ? words
        : words.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + words.substring(1);
  }
}
