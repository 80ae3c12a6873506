package saddlewright.prescription.pdf;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import saddlewright.prescription.Dates;
import saddlewright.prescription.NumberedReport;
import saddlewright.rules.Departure;
import saddlewright.rules.OpenQuestion;
import saddlewright.rules.Profile;
import saddlewright.rules.Report;
import saddlewright.rules.Rule;
import saddlewright.rules.RuleBook;
import saddlewright.rules.Sentence;
import saddlewright.rules.Severity;
import saddlewright.rules.Tally;
import saddlewright.rules.Waiver;

/** What the rule book has to say: what stands, what could not be judged, what was waived. */
final class FindingsSection implements Section {
  private static final double MM = Sheet.MM;

  private final Printout printout;

  FindingsSection(Printout printout) {
    this.printout = printout;
  }

  @Override
  public void write(Flow flow) throws IOException {
    Report report = printout.assessment().report();
    NumberedReport numbered = NumberedReport.of(report);
    flow.newPage();
    flow.heading("Unresolved findings" + counted(numbered.standing()));
    if (numbered.standing().isEmpty()) {
      flow.paragraph(
          "None of the teaching rules finds anything. That does not make a design safe.",
          Flow.BODY,
          Shade.INK);
    } else {
      list(flow, numbered.standing());
    }
    flow.gap(3);
    Profile school = printout.subject().profile();
    flow.paragraph(
        "Judged by the school profile: " + school.label() + ". " + tally(report.tally()),
        Flow.SMALL,
        Shade.QUIET);
    departures(flow, school);
    questions(flow, numbered.questions());
    if (!numbered.waived().isEmpty()) {
      flow.heading("Waived findings");
      list(flow, numbered.waived());
    }
    unneeded(flow, report.unneededWaivers());
  }

  /** Judgements that are kept in the case though nothing asks for them any more. */
  private void unneeded(Flow flow, List<Waiver> waivers) throws IOException {
    if (waivers.isEmpty()) {
      return;
    }
    flow.heading("Waivers that answer no finding any more");
    for (Waiver w : waivers) {
      String rule = w.findingKey().replaceAll("@.*", "");
      flow.paragraph(
          RuleBook.find(rule).map(Rule::claim).orElse(rule)
              + " Accepted"
              + by(w)
              + " on "
              + Dates.words(w.date())
              + ": "
              + w.reason(),
          Flow.BODY,
          Shade.INK);
    }
  }

  private static String by(Waiver w) {
    return w.role().isBlank() ? "" : " by the " + w.role();
  }

  /** What the school teaches otherwise than the profile on which its own is based. */
  private void departures(Flow flow, Profile school) throws IOException {
    List<Departure> departures = school.departures();
    if (departures.isEmpty()) {
      return;
    }
    flow.heading(school.title() + " departs from " + school.base().title());
    Table table =
        new Table(
            flow,
            List.of(
                new Table.Column("What", 0, 62 * MM, Weight.REGULAR),
                new Table.Column("Here", 64 * MM, 18 * MM, Weight.BOLD),
                new Table.Column("There", 84 * MM, 18 * MM, Weight.REGULAR),
                new Table.Column("Reason and source", 104 * MM, 70 * MM, Weight.REGULAR)),
            false);
    for (Departure d : departures) {
      String source = d.source().words();
      table.row(
          Sentence.capital(d.what()),
          Sentence.capital(d.here()),
          Sentence.capital(d.there()),
          (d.reason().isEmpty() ? "" : Sentence.capital(d.reason()) + ".\n")
              + Sentence.capital(source));
    }
  }

  private static String tally(Tally t) {
    return String.format(
        java.util.Locale.ROOT,
        "Rules judged: %d; waiting for a value that is not charted: %d; not applicable: %d%s.",
        t.judged(),
        t.unanswered(),
        t.notApplicable(),
        t.notTaught() == 0 ? "" : "; not taught by this school: " + t.notTaught());
  }

  /** What could not be judged: unanswered is not passed. */
  private void questions(Flow flow, List<NumberedReport.Line<OpenQuestion>> questions)
      throws IOException {
    if (questions.isEmpty()) {
      return;
    }
    flow.heading("Not judged: values that are not charted");
    Table table =
        new Table(
            flow,
            List.of(
                new Table.Column("No.", 0, 8 * MM, Weight.REGULAR),
                new Table.Column("Not charted", 10 * MM, 62 * MM, Weight.BOLD),
                new Table.Column("What waits for it", 75 * MM, 99 * MM, Weight.REGULAR)),
            false);
    for (NumberedReport.Line<OpenQuestion> q : questions) {
      String waiting =
          q.what().ruleIds().stream()
              .flatMap(id -> RuleBook.find(id).stream())
              .map(Rule::claim)
              .collect(Collectors.joining("\n"));
      table.row(Integer.toString(q.number()), Sentence.capital(q.what().field().words()), waiting);
    }
  }

  /** Such as ": 2 must, 1 consider". */
  private static String counted(List<NumberedReport.Line<Report.Entry>> entries) {
    List<String> parts = new ArrayList<>();
    for (Severity severity : Severity.values()) {
      long n = entries.stream().filter(e -> e.what().finding().severity() == severity).count();
      if (n > 0) {
        parts.add(n + " " + severity.code());
      }
    }
    return parts.isEmpty() ? "" : ": " + String.join(", ", parts);
  }

  private void list(Flow flow, List<NumberedReport.Line<Report.Entry>> entries) throws IOException {
    Table table =
        new Table(
            flow,
            List.of(
                new Table.Column("No.", 0, 8 * MM, Weight.REGULAR),
                new Table.Column("Weight", 10 * MM, 17 * MM, Weight.BOLD),
                new Table.Column("Arch", 28 * MM, 12 * MM, Weight.REGULAR),
                new Table.Column("Finding", 41 * MM, 133 * MM, Weight.REGULAR)),
            false);
    for (NumberedReport.Line<Report.Entry> l : entries) {
      Report.Entry e = l.what();
      table.row(
          Integer.toString(l.number()),
          Sentence.capital(e.finding().severity().code()),
          Printout.name(e.finding().arch()),
          e.finding().sentence() + e.waiver().map(w -> "\n" + judgement(e, w)).orElse(""));
    }
  }

  private static String judgement(Report.Entry e, Waiver w) {
    return (e.stands() ? "Waived" : "Accepted")
        + by(w)
        + " on "
        + Dates.words(w.date())
        + ": "
        + w.reason()
        + (e.stands()
            ? " The facts were then "
                + w.facts()
                + " and are now "
                + e.finding().facts()
                + ", so it stands again."
            : "");
  }
}
