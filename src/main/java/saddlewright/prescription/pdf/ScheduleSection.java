package saddlewright.prescription.pdf;

import java.io.IOException;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import saddlewright.dentition.Arch;
import saddlewright.prescription.Category;
import saddlewright.prescription.MakingNote;
import saddlewright.prescription.Schedule;
import saddlewright.rules.Sentence;

/** Every component in the trade's words, numbered as on the drawing. */
final class ScheduleSection implements Section {
  private static final double MM = Sheet.MM;

  private final Printout printout;

  ScheduleSection(Printout printout) {
    this.printout = printout;
  }

  @Override
  public void write(Flow flow) throws IOException {
    if (printout.schedule().lines().isEmpty()) {
      flow.heading("Component schedule");
      flow.paragraph("No components are designed yet.", Flow.BODY, Shade.INK);
    }
    for (Arch arch : Arch.values()) {
      if (!printout.schedule().in(arch).isEmpty()) {
        components(flow, arch);
      }
    }
    sizes(flow);
  }

  /** What holds for the bench unless a line of the schedule says otherwise. */
  private void sizes(Flow flow) throws IOException {
    List<MakingNote> notes = MakingNote.of(printout.assessment(), printout.schedule());
    if (notes.isEmpty()) {
      return;
    }
    flow.heading("Sizes and shapes, unless the schedule says otherwise");
    Table table =
        new Table(
            flow,
            List.of(
                new Table.Column("For", 0, 30 * MM, Weight.BOLD),
                new Table.Column("No.", 32 * MM, 22 * MM, Weight.REGULAR),
                new Table.Column("Size and shape", 56 * MM, 118 * MM, Weight.REGULAR)),
            false);
    for (MakingNote n : notes) {
      table.row(
          n.title(),
          n.numbers().isEmpty()
              ? "all"
              : n.numbers().stream().map(String::valueOf).collect(Collectors.joining(", ")),
          Sentence.capital(n.words()) + ".");
    }
    flow.paragraph(
        "Figures of teaching texts: "
            + notes.stream()
                .map(n -> n.source().citation())
                .flatMap(c -> Stream.of(c.split("; ")))
                .distinct()
                .collect(Collectors.joining("; "))
            + ".",
        Flow.SMALL,
        Shade.QUIET);
  }

  private void components(Flow flow, Arch arch) throws IOException {
    List<Schedule.Line> lines = printout.schedule().in(arch);
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
}
