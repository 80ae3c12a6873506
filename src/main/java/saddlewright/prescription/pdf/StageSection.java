package saddlewright.prescription.pdf;

import java.io.IOException;
import java.util.List;
import saddlewright.casefile.order.PlannedStage;
import saddlewright.casefile.order.TreatmentStage;
import saddlewright.prescription.Dates;
import saddlewright.prescription.Gate;
import saddlewright.prescription.Timetable;
import saddlewright.rules.Sentence;

/** The stages of the treatment with their dates, and what stands in their way. */
final class StageSection implements Section {
  private static final double MM = Sheet.MM;

  private final Timetable times;

  StageSection(Printout printout) {
    this.times =
        Timetable.of(printout.assessment(), printout.preparations(), printout.options().date());
  }

  @Override
  public void write(Flow flow) throws IOException {
    flow.newPage();
    flow.heading("Stages and dates");
    flow.paragraph(
        times
                .plan()
                .requested()
                .map(s -> "Asked of the laboratory now: " + s.title() + ". ")
                .orElse("")
            + times
                .plan()
                .fitting()
                .map(d -> "Fitting on " + Dates.withWeekday(d) + "; ")
                .orElse("No day set for the fitting; ")
            + (times.plan().everyDay()
                ? "every day counts."
                : "Monday to Friday count, public holidays are not left out.")
            + times.wanting().map(w -> " " + w).orElse(""),
        Flow.BODY,
        Shade.INK);
    Table table =
        new Table(
            flow,
            List.of(
                new Table.Column("No.", 0, 7 * MM, Weight.REGULAR),
                new Table.Column("Stage", 8 * MM, 60 * MM, Weight.BOLD),
                new Table.Column("Where", 70 * MM, 20 * MM, Weight.REGULAR),
                new Table.Column("Days", 91 * MM, 10 * MM, Weight.REGULAR),
                Table.Column.toWriteIn("To be finished by", 102 * MM, 33 * MM),
                Table.Column.toWriteIn("Done on, by", 138 * MM, 36 * MM)),
            false);
    int number = 0;
    for (Timetable.Row r : times.rows()) {
      number++;
      if (r.isActive() || r.isDone()) {
        row(table, r, number);
      }
    }
    leftOut(flow);
    gates(flow);
    remarks(flow);
  }

  private static void row(Table table, Timetable.Row r, int number) throws IOException {
    PlannedStage p = r.planned();
    String due = r.due().map(Dates::brief).orElse("") + p.time().map(t -> ", " + t).orElse("");
    String late = r.state() == Timetable.State.OVERDUE ? "\noverdue" : "";
    table.row(
        Integer.toString(number),
        r.stage().title(),
        r.stage().place() == TreatmentStage.Place.CLINIC ? "Clinic" : "Laboratory",
        p.days().map(d -> Integer.toString(d)).orElse(""),
        due.isEmpty() && r.isDone() ? "–" : due + late,
        p.done().map(Dates::brief).orElse("")
            + (p.by().isBlank() ? "" : (p.done().isPresent() ? "\n" : "") + p.by()));
  }

  private void leftOut(Flow flow) throws IOException {
    List<String> titles =
        times.rows().stream()
            .filter(r -> !r.isActive() && !r.isDone())
            .map(r -> r.stage().title())
            .toList();
    if (!titles.isEmpty()) {
      flow.gap(3);
      flow.paragraph("Left out: " + String.join("; ", titles) + ".", Flow.SMALL, Shade.QUIET);
    }
  }

  private void gates(Flow flow) throws IOException {
    List<Timetable.Row> held = times.rows().stream().filter(r -> !r.gates().isEmpty()).toList();
    if (held.isEmpty()) {
      return;
    }
    flow.subheading("Before a stage can begin");
    Table table =
        new Table(
            flow,
            List.of(
                new Table.Column("Stage", 0, 42 * MM, Weight.BOLD),
                new Table.Column("Effect", 44 * MM, 14 * MM, Weight.REGULAR),
                new Table.Column(
                    "What is wanting, or to be known", 60 * MM, 114 * MM, Weight.REGULAR)),
            false);
    for (Timetable.Row r : held) {
      for (Gate g : r.gates()) {
        table.row(
            g == r.gates().get(0) ? r.stage().title() : "",
            g.closed() ? "Waits" : "Note",
            g.words() + " [" + Sentence.capital(g.source().words()) + "]");
      }
    }
  }

  private void remarks(Flow flow) throws IOException {
    if (times.remarks().isEmpty()) {
      return;
    }
    flow.subheading("Out of order");
    for (String r : times.remarks()) {
      flow.paragraph(r, Flow.BODY, Shade.INK);
    }
  }
}
