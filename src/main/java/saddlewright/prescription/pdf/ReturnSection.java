package saddlewright.prescription.pdf;

import java.io.IOException;
import java.util.List;

/** What the laboratory fills in and sends back with the work, on a page of its own. */
final class ReturnSection implements Section {
  private final Printout printout;

  ReturnSection(Printout printout) {
    this.printout = printout;
  }

  @Override
  public void write(Flow flow) throws IOException {
    flow.newPage();
    flow.heading("Laboratory return");
    flow.paragraph(
        "To be filled in by the laboratory and returned with the work. Ask the prescriber before"
            + " altering the design.",
        8,
        Shade.QUIET);
    flow.gap(4);
    Fields.beside(
        flow,
        Fields.ofSection(
            "Made by",
            List.of(
                blank("Laboratory", 1),
                blank("Technician", 1),
                blank("Registration", 1),
                blank("Made where, every site", 2))),
        Fields.ofSection(
            "Made for",
            List.of(
                Fields.Field.of(
                    "Case reference", printout.reference().isEmpty() ? "" : printout.reference()),
                Fields.Field.of(
                    "Prescription",
                    "revision "
                        + printout.revision().number()
                        + ", "
                        + Printout.grouped(printout.revision().hash())),
                blank("Received on", 1),
                blank("Returned on", 1),
                blank("Enclosures complete?", 1))));
    batches(flow);
    Fields.ofSection(
            "Changes",
            List.of(
                blank("Changes made", 2),
                blank("Agreed with whom, by what means, when", 1),
                blank("Questions to the prescriber", 1)))
        .write(flow);
    Fields.ofSection(
            "Checked before it left",
            List.of(
                blank("Seats on the cast; clasps, rests and borders as drawn", 1),
                blank("Fitting surface free of sharp edges; polished as prescribed", 1),
                blank("Checked by, on", 1)))
        .write(flow);
    flow.need(90);
    flow.subheading("Statement");
    flow.paragraph(
        "This device was made for the exclusive use of the patient known by the case reference"
            + " above, to the prescription named above, of the materials listed here. Differences"
            + " from the prescription are those stated under Changes.",
        Flow.BODY,
        Shade.INK);
    flow.gap(2);
    Fields.of(List.of(blank("Name, signature, date", 1))).write(flow);
  }

  private static Fields.Field blank(String label, int lines) {
    return new Fields.Field(label, "", lines, false);
  }

  private static void batches(Flow flow) throws IOException {
    double mm = Sheet.MM;
    flow.subheading("Materials used");
    Table table =
        new Table(
            flow,
            List.of(
                new Table.Column("Material", 0, 34 * mm, Weight.REGULAR),
                Table.Column.toWriteIn("Product and maker", 36 * mm, 62 * mm),
                Table.Column.toWriteIn("Batch", 102 * mm, 34 * mm),
                Table.Column.toWriteIn("Composition or class", 140 * mm, 34 * mm)),
            false);
    for (String what :
        List.of("Alloy", "Denture base resin", "Artificial teeth", "Solder or wire", "Other")) {
      table.row(what, "", "", "");
    }
    flow.gap(8);
  }
}
