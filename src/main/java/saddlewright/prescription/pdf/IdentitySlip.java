package saddlewright.prescription.pdf;

import java.io.IOException;
import java.util.List;
import saddlewright.casefile.order.PatientIdentity;
import saddlewright.prescription.Dates;

/**
 * Whose case it is, on a page of its own that is kept apart from the rest. Nowhere else in the
 * document is the patient named.
 */
final class IdentitySlip implements Section {
  private final Printout printout;
  private final PatientIdentity patient;

  IdentitySlip(Printout printout, PatientIdentity patient) {
    this.printout = printout;
    this.patient = patient;
  }

  @Override
  public void write(Flow flow) throws IOException {
    flow.newPage();
    flow.heading("Patient identity slip: keep apart");
    flow.paragraph(
        "Take this page off and keep it apart from the prescription. The case reference alone"
            + " joins the two.",
        Flow.BODY,
        Shade.INK);
    flow.gap(4);
    Fields.of(
            List.of(
                Fields.Field.of("Case reference", printout.reference()),
                Fields.Field.of("Patient: name", patient.name()),
                Fields.Field.of(
                    "Patient: date of birth", patient.born().map(Dates::words).orElse("")),
                Fields.Field.of("Patient: record number", patient.record())))
        .write(flow);
  }
}
