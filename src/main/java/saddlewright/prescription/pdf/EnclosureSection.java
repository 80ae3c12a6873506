package saddlewright.prescription.pdf;

import java.io.IOException;
import java.util.List;
import saddlewright.casefile.order.Disinfection;
import saddlewright.casefile.order.Enclosure;
import saddlewright.casefile.order.Item;
import saddlewright.casefile.order.PrescriptionDetails;
import saddlewright.prescription.Dates;
import saddlewright.rules.Sentence;

/** What is sent along, to be ticked off at both ends, and how it was disinfected. */
final class EnclosureSection implements Section {
  private static final double MM = Sheet.MM;

  private static final double SHORT_LIST = 260;

  private final Printout printout;
  private final FormFields form;

  EnclosureSection(Printout printout) {
    this.printout = printout;
    this.form = new FormFields(printout);
  }

  @Override
  public void write(Flow flow) throws IOException {
    PrescriptionDetails p = printout.details();
    // What is ticked at the bench is ticked on one page, where it is no longer than a short list.
    flow.need(Math.min(SHORT_LIST, 90 + 17.0 * p.enclosures().size()));
    flow.heading("Enclosures and disinfection");
    if (p.enclosures().isEmpty()) {
      Fields.of(form.of(Item.ENCLOSED)).write(flow);
    } else {
      enclosures(flow, p.enclosures());
    }
    if (p.disinfections().isEmpty()) {
      Fields.of(form.of(Item.DISINFECTED)).write(flow);
    } else {
      disinfections(flow, p.disinfections());
    }
  }

  private static void enclosures(Flow flow, List<Enclosure> all) throws IOException {
    flow.subheading("Enclosures: tick when packed, and again when unpacked");
    Table table =
        new Table(
            flow,
            List.of(
                new Table.Column("Count", 6 * MM, 12 * MM, Weight.BOLD),
                new Table.Column("What", 20 * MM, 42 * MM, Weight.REGULAR),
                new Table.Column("Which, of what, in what", 64 * MM, 86 * MM, Weight.REGULAR),
                Table.Column.toTick("Received", 154 * MM, 20 * MM)),
            true);
    for (Enclosure e : all) {
      table.row(
          Integer.toString(e.count()),
          Sentence.capital(e.kind().words()),
          e.detail().isBlank() ? "–" : e.detail(),
          "");
    }
    flow.gap(6);
  }

  private static void disinfections(Flow flow, List<Disinfection> all) throws IOException {
    flow.subheading("Disinfection of what was in the mouth");
    Table table =
        new Table(
            flow,
            List.of(
                new Table.Column("What", 0, 42 * MM, Weight.REGULAR),
                new Table.Column("Agent", 43 * MM, 60 * MM, Weight.REGULAR),
                new Table.Column("Time", 104 * MM, 15 * MM, Weight.REGULAR),
                new Table.Column("By", 120 * MM, 23 * MM, Weight.REGULAR),
                new Table.Column("On", 144 * MM, 30 * MM, Weight.REGULAR)),
            false);
    for (Disinfection d : all) {
      table.row(
          Sentence.capital(d.what()),
          d.agent().isBlank() ? "not stated" : d.agent(),
          d.minutes().map(m -> m + " min").orElse("not stated"),
          d.by().isBlank() ? "not stated" : d.by(),
          d.on().map(Dates::words).orElse("not stated"));
    }
    flow.gap(6);
  }
}
