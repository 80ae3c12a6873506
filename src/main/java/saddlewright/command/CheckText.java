package saddlewright.command;

import java.util.List;
import java.util.Locale;
import saddlewright.casefile.Case;
import saddlewright.casefile.Cautions;
import saddlewright.dentition.Arch;
import saddlewright.rules.Finding;
import saddlewright.rules.OpenQuestion;
import saddlewright.rules.Report;
import saddlewright.rules.Sentence;
import saddlewright.rules.Severity;
import saddlewright.rules.Tally;

/** The report of a check as text for people. */
final class CheckText {
  private CheckText() {}

  static String write(List<CheckedCase> cases) {
    StringBuilder out = new StringBuilder();
    for (CheckedCase c : cases) {
      one(c, out);
      out.append('\n');
    }
    if (!cases.isEmpty()) {
      out.append(Cautions.LINE).append('\n');
      out.append("Findings are general teaching rules and not advice on a patient.\n");
    }
    return out.toString();
  }

  private static void one(CheckedCase c, StringBuilder out) {
    Case subject = c.assessment().subject();
    out.append(c.file()).append(": ").append(subject.reference());
    if (!subject.title().isBlank()) {
      out.append(", ").append(subject.title());
    }
    out.append('\n');
    for (Arch arch : Arch.values()) {
      out.append(arch == Arch.UPPER ? "Upper: " : "Lower: ")
          .append(c.assessment().arch(arch).classification().label())
          .append('\n');
    }
    Report report = c.assessment().report();
    out.append("School profile: ").append(subject.profile().label()).append('\n');
    findings(report, out);
    questions(report, out);
    Tally t = report.tally();
    out.append(
        String.format(
            Locale.ROOT,
            "Rules: %d judged, %d wait for a value, %d do not apply, %d not taught.\n",
            t.judged(),
            t.unanswered(),
            t.notApplicable(),
            t.notTaught()));
  }

  /** What could not be judged: unanswered is not passed. */
  private static void questions(Report report, StringBuilder out) {
    for (OpenQuestion q : report.questions()) {
      out.append("?        ")
          .append(Sentence.capital(q.sentence()))
          .append(" [")
          .append(q.field().arch().code())
          .append(", ")
          .append(String.join(", ", q.ruleIds()))
          .append("]\n");
    }
  }

  private static void findings(Report report, StringBuilder out) {
    if (report.entries().isEmpty()) {
      out.append("No findings.\n");
      return;
    }
    for (Report.Entry e : report.entries()) {
      Finding f = e.finding();
      out.append(
          String.format(
                  Locale.ROOT,
                  "%-8s %s [%s, %s]%n",
                  e.stands() ? f.severity().name() : "waived",
                  f.sentence(),
                  f.arch().code(),
                  f.ruleId())
              .replace(System.lineSeparator(), "\n"));
      e.waiver()
          .ifPresent(
              w ->
                  out.append("         ")
                      .append(e.stands() ? "waiver is stale, the facts have changed: " : "waived: ")
                      .append(w.reason())
                      .append(" (")
                      .append(w.role())
                      .append(", ")
                      .append(w.date())
                      .append(")\n"));
    }
    long waived = report.entries().stream().filter(e -> !e.stands()).count();
    out.append(
        String.format(
            Locale.ROOT,
            "%d must, %d should, %d consider, %d waived.\n",
            report.count(Severity.MUST),
            report.count(Severity.SHOULD),
            report.count(Severity.CONSIDER),
            waived));
  }
}
