package saddlewright.prescription;

import java.util.Optional;
import saddlewright.casefile.order.PatientIdentity;
import saddlewright.casefile.order.PrescriptionDetails;

/** Who is named on the slip that goes with a document: nobody, unless the form must name them. */
public final class NamedPatient {
  private NamedPatient() {}

  /** The patient, where known and where this document has to name them. */
  public static Optional<PatientIdentity> on(
      PrescriptionDetails document, Optional<PatientIdentity> known) {
    return known.filter(p -> FormField.of("patient-name").level(document) == Level.MUST);
  }
}
