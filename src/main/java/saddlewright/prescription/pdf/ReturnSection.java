package saddlewright.prescription.pdf;

import java.io.IOException;
import java.util.List;

/** What the laboratory fills in and sends back with the work. */
final class ReturnSection implements Section {

  @Override
  public void write(Flow flow) throws IOException {
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
    double height = record.height(Flow.MEASURE);
    flow.need(height + 60);
    flow.heading("Laboratory record");
    flow.paragraph(
        "To be filled in by the laboratory and returned with the work. Ask the prescriber before"
            + " altering the design.",
        Flow.SMALL,
        Shade.QUIET);
    flow.gap(2);
    flow.moveTo(record.draw(flow, flow.left(), flow.y(), Flow.MEASURE));
  }
}
