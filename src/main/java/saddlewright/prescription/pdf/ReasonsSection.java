package saddlewright.prescription.pdf;

import java.io.IOException;
import java.util.List;
import java.util.stream.Collectors;
import saddlewright.dentition.Arch;
import saddlewright.dentition.Notation;
import saddlewright.prescription.Reasons;
import saddlewright.prescription.ToothWords;
import saddlewright.rules.Credit;
import saddlewright.rules.Sentence;

/** The design's own argument, on a page of its own. */
final class ReasonsSection implements Section {
  private static final double MM = Sheet.MM;

  private static final double SIZE = 7.5;

  private static final double FIRST_ROWS = 150;

  private final Printout printout;

  ReasonsSection(Printout printout) {
    this.printout = printout;
  }

  @Override
  public void write(Flow flow) throws IOException {
    Reasons reasons = Reasons.of(printout.assessment());
    if (reasons.lines().stream().allMatch(l -> l.reasons().isEmpty())) {
      return;
    }
    // The heading keeps the head of its table and the first rows with it.
    flow.need(FIRST_ROWS);
    flow.heading("Reasons for each component");
    flow.paragraph(
        "What each component does for the rules of the book, numbered as in the component schedule."
            + (printout.notation() == Notation.FDI
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
                new Table.Column("Component or tooth", 9 * MM, 35 * MM, Weight.BOLD),
                new Table.Column("What speaks for it", 46 * MM, 128 * MM, Weight.REGULAR)),
            false,
            SIZE);
    for (Arch arch : Arch.values()) {
      if (!reasons.in(arch).isEmpty()) {
        table.group(Printout.name(arch) + " arch");
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
}
