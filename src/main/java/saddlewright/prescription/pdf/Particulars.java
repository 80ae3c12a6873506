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
import saddlewright.prescription.Preparation;
import saddlewright.prescription.Schedule;
import saddlewright.prescription.ToothWords;
import saddlewright.rules.Report;
import saddlewright.rules.Severity;
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
            ToothWords.list(p.teeth(), notation), p.surface(), capital(p.target()), reason(p));
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
    return capital(p.reason()) + (numbers.isEmpty() ? "" : " (" + numbers + ")");
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
    List<Report.Entry> standing = new ArrayList<>();
    List<Report.Entry> waived = new ArrayList<>();
    for (Report.Entry e : assessment.report().entries()) {
      (e.stands() ? standing : waived).add(e);
    }
    flow.heading("Unresolved findings" + counted(standing));
    if (standing.isEmpty()) {
      flow.paragraph(
          "None of the teaching rules finds anything. That does not make a design safe.",
          Flow.BODY,
          Shade.INK);
    } else {
      list(standing);
    }
    if (!waived.isEmpty()) {
      flow.heading("Waived findings");
      list(waived);
    }
  }

  /** Such as ": 2 must, 1 consider". */
  private static String counted(List<Report.Entry> entries) {
    List<String> parts = new ArrayList<>();
    for (Severity severity : Severity.values()) {
      long n = entries.stream().filter(e -> e.finding().severity() == severity).count();
      if (n > 0) {
        parts.add(n + " " + severity.code());
      }
    }
    return parts.isEmpty() ? "" : ": " + String.join(", ", parts);
  }

  private void list(List<Report.Entry> entries) throws IOException {
    Table table =
        new Table(
            flow,
            List.of(
                new Table.Column("Weight", 0, 18 * MM, Weight.BOLD),
                new Table.Column("Arch", 20 * MM, 14 * MM, Weight.REGULAR),
                new Table.Column("Finding", 36 * MM, 138 * MM, Weight.REGULAR)),
            false);
    for (Report.Entry e : entries) {
      table.row(
          capital(e.finding().severity().code()),
          name(e.finding().arch()),
          e.finding().sentence() + e.waiver().map(w -> "\n" + judgement(e, w)).orElse(""));
    }
  }

  private static String judgement(Report.Entry e, Waiver w) {
    String by = w.role().isBlank() ? "" : " by the " + w.role();
    return (e.stands() ? "Waived" + by + " on " : "Accepted" + by + " on ")
        + Dates.words(w.date())
        + ": "
        + w.reason()
        + (e.stands() ? " The facts have changed since, so it stands again." : "");
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

  private static String name(Arch arch) {
    return arch == Arch.UPPER ? "Upper" : "Lower";
  }

  private static String capital(String words) {
    return words.isEmpty()
        ? words
        : words.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + words.substring(1);
  }
}
