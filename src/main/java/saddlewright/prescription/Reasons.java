package saddlewright.prescription;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import saddlewright.casefile.Assessment;
import saddlewright.dentition.Arch;
import saddlewright.dentition.Notation;
import saddlewright.design.Component;
import saddlewright.design.Subject;
import saddlewright.rules.Credit;
import saddlewright.rules.Naming;
import saddlewright.rules.Report;
import saddlewright.rules.Sentence;

/**
 * The design's own argument: for each component of the schedule, what it does for the rules; then
 * what speaks for the teeth that serve and for the design as a whole.
 *
 * @param lines one for each component, in the order and with the numbers of the {@link Schedule},
 *     and one for each tooth, area or arch of which something can be said
 */
public record Reasons(List<Line> lines) {
  /**
   * A component, tooth, area or arch with its reasons.
   *
   * @param number of its line in the schedule; empty for what is no component
   * @param name such as "Mesial rest on 47" or "Tooth 47"
   * @param reasons verb phrases that go on from the name; empty when no rule speaks for it
   */
  public record Line(OptionalInt number, Arch arch, String name, List<Credit> reasons) {
    public Line {
      reasons = List.copyOf(reasons);
    }
  }

  public Reasons {
    lines = List.copyOf(lines);
  }

  public static Reasons of(Assessment assessment) {
    Report report = assessment.report();
    List<Line> out = new ArrayList<>();
    for (Schedule.Line l : Schedule.of(assessment, Notation.FDI).lines()) {
      Optional<Component> c = assessment.arch(l.arch()).design().find(l.id());
      c.ifPresent(
          x ->
              out.add(
                  new Line(
                      OptionalInt.of(l.number()),
                      l.arch(),
                      OneLine.of(Sentence.capital(Naming.of(x))),
                      report.creditsOf(Subject.of(l.arch(), x)))));
    }
    report.credits().stream()
        .map(Credit::subject)
        .distinct()
        .filter(s -> s.component().isEmpty())
        .sorted(Comparator.comparing(Subject::arch).thenComparing(Reasons::order))
        .forEach(
            s -> out.add(new Line(OptionalInt.empty(), s.arch(), name(s), report.creditsOf(s))));
    return new Reasons(out);
  }

  /** Teeth along the arch, then areas, then the arch. */
  private static int order(Subject s) {
    if (s instanceof Subject.OfTooth t) {
      return t.tooth().place();
    }
    return s instanceof Subject.OfArea a ? 100 + a.span().first().place() : 1000;
  }

  private static String name(Subject s) {
    if (s instanceof Subject.OfTooth t) {
      return "Tooth " + t.tooth();
    }
    if (s instanceof Subject.OfArea a) {
      return "Gap " + a.span();
    }
    return Sentence.capital(s.arch().code()) + " denture";
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
        String number = l.number().isPresent() ? Integer.toString(l.number().getAsInt()) : "";
        out.append(String.format(java.util.Locale.ROOT, "%4s  %s", number, l.name()));
        out.append(l.reasons().isEmpty() ? ": no rule of the book speaks for it\n" : "\n");
        for (Credit c : l.reasons()) {
          out.append("      - ").append(c.words());
          out.append(" [").append(c.ruleId()).append("]\n");
        }
      }
    }
    return out.toString();
  }
}
