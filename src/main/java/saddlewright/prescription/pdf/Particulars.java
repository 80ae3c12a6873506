package saddlewright.prescription.pdf;

import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import saddlewright.casefile.Assessment;
import saddlewright.casefile.Cautions;
import saddlewright.dentition.Arch;
import saddlewright.dentition.Notation;
import saddlewright.prescription.Category;
import saddlewright.prescription.Completeness;
import saddlewright.prescription.MouthPreparations;
import saddlewright.prescription.NumberedReport;
import saddlewright.prescription.Preparation;
import saddlewright.prescription.Reasons;
import saddlewright.prescription.Schedule;
import saddlewright.prescription.ToothWords;
import saddlewright.rules.Credit;
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

/** What follows the first page, section by section. */
final class Particulars {
  private static final double MM = Sheet.MM;

  private final Assessment assessment;
  private final Notation notation;
  private final Schedule schedule;
  private final Flow flow;

  Particulars(Assessment assessment, Notation notation, Flow flow) {
    this.assessment = assessment;
    this.notation = notation;
    this.schedule = Schedule.of(assessment, notation);
    this.flow = flow;
  }

  void write() throws IOException {
    classes();
    schedule();
    preparations();
    findings();
    missing();
    laboratoryRecord();
    cautions();
    reasons();
  }

  private void classes() throws IOException {
    flow.heading("Class");
    for (Arch arch : Arch.values()) {
      var c = assessment.arch(arch).classification();
      flow.subheading(name(arch) + " arch: " + c.label());
      String none = schedule.in(arch).isEmpty() ? " No denture is designed for this arch." : "";
      flow.paragraph(String.join(" ", c.reasoning()) + none, Flow.BODY, Shade.QUIET);
    }
  }

  private void schedule() throws IOException {
    if (schedule.lines().isEmpty()) {
      flow.heading("Component schedule");
      flow.paragraph("No components are designed yet.", Flow.BODY, Shade.INK);
    }
    for (Arch arch : Arch.values()) {
      if (!schedule.in(arch).isEmpty()) {
        components(arch);
      }
    }
  }

  private void components(Arch arch) throws IOException {
    List<Schedule.Line> lines = schedule.in(arch);
    flow.heading("Component schedule: " + arch.code() + " arch");
    Table table =
        new Table(
            flow,
            List.of(
                new Table.Column("No.", 0, 9 * MM, Weight.REGULAR),
                new Table.Column("Tooth", 10 * MM, 20 * MM, Weight.BOLD),
                new Table.Column("Component", 32 * MM, 142 * MM, Weight.REGULAR)),
            false);
    for (Category category : Category.values()) {
      List<Schedule.Line> group = lines.stream().filter(l -> l.category() == category).toList();
      if (!group.isEmpty()) {
        table.group(category.title());
      }
      for (Schedule.Line l : group) {
        table.row(Integer.toString(l.number()), l.place(), l.text());
      }
    }
  }

  private void preparations() throws IOException {
    List<Preparation> all = MouthPreparations.of(assessment, notation);
    flow.heading("Mouth preparations before the master impression");
    if (all.isEmpty()) {
      flow.paragraph("The design asks for none.", Flow.BODY, Shade.INK);
      return;
    }
    flow.paragraph(
        "In clinical order. Sizes are teaching figures; enamel may be thin. What is cut does not"
            + " grow back: agree it with the patient first.",
        Flow.SMALL,
        Shade.QUIET);
    Table table =
        new Table(
            flow,
            List.of(
                new Table.Column("Tooth", 6 * MM, 18 * MM, Weight.BOLD),
                new Table.Column("Surface", 26 * MM, 25 * MM, Weight.REGULAR),
                new Table.Column("What to do", 52 * MM, 86 * MM, Weight.REGULAR),
                new Table.Column("For", 140 * MM, 34 * MM, Weight.REGULAR)),
            true);
    for (Preparation.Stage stage : Preparation.Stage.values()) {
      List<Preparation> group = all.stream().filter(p -> p.stage() == stage).toList();
      if (!group.isEmpty()) {
        table.group(stage.title());
      }
      for (Preparation p : group) {
        table.row(
            ToothWords.list(p.teeth(), notation),
            p.surface(),
            Sentence.capital(p.target()),
            reason(p));
      }
    }
    flow.gap(3);
    flow.paragraph("Sizes after: " + sources(all) + ".", Flow.SMALL, Shade.QUIET);
  }

  private String reason(Preparation p) {
    String numbers =
        p.components().stream()
            .flatMap(id -> schedule.find(p.arch(), id).stream())
            .map(l -> "no. " + l.number())
            .collect(Collectors.joining(", "));
    return Sentence.capital(p.reason()) + (numbers.isEmpty() ? "" : " (" + numbers + ")");
  }

  private static String sources(List<Preparation> all) {
    Map<String, String> words = new LinkedHashMap<>();
    for (Preparation p : all) {
      words.put(p.source().citation(), p.source().evidence().words());
    }
    return words.entrySet().stream()
        .map(e -> e.getKey() + " (" + e.getValue() + ")")
        .collect(Collectors.joining("; "));
  }

  private void findings() throws IOException {
    Report report = assessment.report();
    NumberedReport numbered = NumberedReport.of(report);
    flow.heading("Unresolved findings" + counted(numbered.standing()));
    if (numbered.standing().isEmpty()) {
      flow.paragraph(
          "None of the teaching rules finds anything. That does not make a design safe.",
          Flow.BODY,
          Shade.INK);
    } else {
      list(numbered.standing());
    }
    flow.gap(3);
    Profile school = assessment.subject().profile();
    flow.paragraph(
        "Judged by the school profile: " + school.label() + ". " + tally(report.tally()),
        Flow.SMALL,
        Shade.QUIET);
    departures(school);
    questions(numbered.questions());
    if (!numbered.waived().isEmpty()) {
      flow.heading("Waived findings");
      list(numbered.waived());
    }
    unneeded(report.unneededWaivers());
  }

  /** Judgements that are kept in the case though nothing asks for them any more. */
  private void unneeded(List<Waiver> waivers) throws IOException {
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
  private void departures(Profile school) throws IOException {
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
  private void questions(List<NumberedReport.Line<OpenQuestion>> questions) throws IOException {
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

  private void list(List<NumberedReport.Line<Report.Entry>> entries) throws IOException {
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
          name(e.finding().arch()),
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

  private void missing() throws IOException {
    List<String> sentences = Completeness.missing(assessment);
    if (!sentences.isEmpty()) {
      flow.heading("Not yet filled in");
      flow.paragraph(String.join(" ", sentences), Flow.BODY, Shade.INK);
    }
  }

  private void laboratoryRecord() throws IOException {
    Fields record =
        new Fields(
            List.of(
                List.of(
                    new Fields.Field("Technician, registration", "", 1),
                    new Fields.Field("Date returned", "", 1)),
                List.of(
                    new Fields.Field("Alloy and batch", "", 1),
                    new Fields.Field("Resin, teeth and batches", "", 1)),
                List.of(new Fields.Field("Changes made, and with whom they were agreed", "", 1))));
    double height = record.height(Flow.measure());
    flow.need(height + 60);
    flow.heading("Laboratory record");
    flow.paragraph(
        "To be filled in by the laboratory and returned with the work. Ask the prescriber before"
            + " altering the design.",
        Flow.SMALL,
        Shade.QUIET);
    flow.gap(2);
    flow.moveTo(record.draw(flow, Flow.SIDE, flow.y(), Flow.measure()));
  }

  private void cautions() throws IOException {
    flow.need(24 + 16 * Cautions.FULL.size());
    flow.heading("Cautions");
    for (String sentence : Cautions.FULL) {
      flow.paragraph(sentence, Flow.BODY, Shade.INK);
    }
  }

  /** The design's own argument, on a page of its own. */
  private void reasons() throws IOException {
    Reasons reasons = Reasons.of(assessment);
    if (reasons.lines().stream().allMatch(l -> l.reasons().isEmpty())) {
      return;
    }
    flow.turn();
    flow.heading("Reasons for each component");
    flow.paragraph(
        "What each component does for the rules of the book, numbered as in the component schedule."
            + (notation == Notation.FDI
                ? ""
                : " In findings and reasons teeth are numbered by "
                    + ToothWords.name(Notation.FDI)
                    + "."),
        Flow.SMALL,
        Shade.QUIET);
    Table table =
        new Table(
            flow,
            List.of(
                new Table.Column("No.", 0, 8 * MM, Weight.REGULAR),
                new Table.Column("Component or tooth", 10 * MM, 48 * MM, Weight.BOLD),
                new Table.Column("What speaks for it", 60 * MM, 114 * MM, Weight.REGULAR)),
            false);
    for (Arch arch : Arch.values()) {
      if (!reasons.in(arch).isEmpty()) {
        table.group(name(arch) + " arch");
      }
      for (Reasons.Line l : reasons.in(arch)) {
        String why =
            Sentence.capital(
                l.reasons().stream()
                    .map(Credit::words)
                    .distinct()
                    .collect(Collectors.joining("; ")));
        table.row(
            l.number().isPresent() ? Integer.toString(l.number().getAsInt()) : "",
            l.name(),
            why.isEmpty() ? "No rule of the book speaks for it." : why + ".");
      }
    }
  }

  private static String name(Arch arch) {
    return arch == Arch.UPPER ? "Upper" : "Lower";
  }
}
