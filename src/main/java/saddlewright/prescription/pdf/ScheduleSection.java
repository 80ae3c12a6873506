package saddlewright.prescription.pdf;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import saddlewright.casefile.order.Item;
import saddlewright.dentition.Arch;
import saddlewright.prescription.Category;
import saddlewright.prescription.DesignStatement;
import saddlewright.prescription.MakingNote;
import saddlewright.prescription.Schedule;
import saddlewright.rules.Sentence;

/**
 * Every component in the trade's words, numbered as on the drawing. Saddles, support, retention and
 * connectors are spoken of for each arch, also where there are none.
 */
final class ScheduleSection implements Section {
  private static final double MM = Sheet.MM;

  private static final double SIZE = 8.5;

  private final Printout printout;

  ScheduleSection(Printout printout) {
    this.printout = printout;
  }

  @Override
  public void write(Flow flow) throws IOException {
    for (Arch arch : Arch.values()) {
      flow.heading("Component schedule: " + arch.code() + " arch");
      if (printout.schedule().in(arch).isEmpty()) {
        flow.paragraph(
            "Saddles, support, retention and connectors: none. No denture is designed for this"
                + " arch.",
            Flow.BODY,
            Shade.INK);
      } else {
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
    flow.subheading("Sizes and shapes, unless the schedule says otherwise");
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
    Fields.ofSection("Teeth that may be lost", new FormFields(printout).of(Item.FUTURE_LOSS))
        .write(flow);
  }

  private void components(Flow flow, Arch arch) throws IOException {
    List<Schedule.Line> lines = printout.schedule().in(arch);
    Map<Category, DesignStatement> audited =
        DesignStatement.of(printout.assessment().arch(arch), printout.schedule()).stream()
            .collect(Collectors.toMap(DesignStatement::category, Function.identity()));
    boolean justified = printout.isCoursework() && printout.details().coursework().justified();
    Table table = new Table(flow, columns(justified), false, SIZE);
    for (Category category : Category.values()) {
      List<Schedule.Line> group = lines.stream().filter(l -> l.category() == category).toList();
      if (group.isEmpty() && audited.containsKey(category)) {
        table.group(category.title() + " – " + audited.get(category).words());
      } else if (!group.isEmpty()) {
        table.group(category.title());
      }
      for (Schedule.Line l : group) {
        table.row(cells(l, justified).toArray(String[]::new));
      }
    }
    flow.gap(6);
  }

  private static List<Table.Column> columns(boolean justified) {
    List<Table.Column> out = new ArrayList<>();
    out.add(new Table.Column("No.", 0, 9 * MM, Weight.REGULAR));
    out.add(new Table.Column("Tooth", 10 * MM, 20 * MM, Weight.BOLD));
    out.add(new Table.Column("Component", 32 * MM, (justified ? 70 : 142) * MM, Weight.REGULAR));
    if (justified) {
      out.add(Table.Column.toWriteIn("Justification", 106 * MM, 68 * MM));
    }
    return out;
  }

  private List<String> cells(Schedule.Line l, boolean justified) {
    List<String> out = new ArrayList<>();
    out.add(Integer.toString(l.number()));
    out.add(l.place());
    out.add(l.text());
    if (justified) {
      out.add(
          printout
              .details()
              .coursework()
              .justifications()
              .getOrDefault(l.arch().code() + "/" + l.id(), ""));
    }
    return out;
  }
}
