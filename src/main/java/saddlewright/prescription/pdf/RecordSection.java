package saddlewright.prescription.pdf;

import java.io.IOException;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import saddlewright.casefile.order.Item;
import saddlewright.prescription.KeepUntil;

/** How long the document is kept, by whom it is completed, and what the patient was offered. */
final class RecordSection implements Section {
  private final Printout printout;
  private final FormFields form;

  RecordSection(Printout printout) {
    this.printout = printout;
    this.form = new FormFields(printout);
  }

  @Override
  public void write(Flow flow) throws IOException {
    List<Fields.Field> fields = new ArrayList<>();
    fields.add(
        Fields.Field.of("Keep until", KeepUntil.of(printout.details().regime()).words(issued())));
    fields.add(Fields.Field.of("Completed by the rules of", printout.details().regime().title()));
    fields.addAll(form.of(Item.PATIENT_STATEMENT));
    if (!SignatureSection.hasCountersignature(form)) {
      fields.addAll(form.of(Item.COUNTERSIGNED_BY, Item.COUNTERSIGNED_ON));
    }
    flow.need(130);
    flow.heading("Records");
    Fields.of(fields).write(flow);
  }

  /** The day of issue, or the day of printing while there is none. */
  private LocalDate issued() {
    try {
      return LocalDate.parse(printout.details().text(Item.DATE_ISSUED).strip());
    } catch (DateTimeParseException e) {
      return printout.options().date();
    }
  }
}
