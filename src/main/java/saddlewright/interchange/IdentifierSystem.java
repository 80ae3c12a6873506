package saddlewright.interchange;

import java.util.Locale;

/** A sort of identifier, by the address that tells it from other sorts. */
enum IdentifierSystem {
  /** Pseudonymous reference of a case. */
  CASE,
  /** Number of a patient's record where the patient is treated. */
  RECORD,
  /** One revision of the prescription of a case. */
  PRESCRIPTION,
  /** The order of the denture of one arch in one revision. */
  DENTURE,
  /** A charted tooth of a case. */
  TOOTH,
  /** A mouth preparation of a case. */
  PREPARATION,
  /** A stage of a case. */
  STAGE,
  /** Registration or licence number of a prescriber, with whatever body keeps the register. */
  PRESCRIBER,
  /** Registration number of a laboratory, with whatever body keeps the register. */
  LABORATORY;

  String url() {
    return CodeList.ROOT + "NamingSystem/" + name().toLowerCase(Locale.ROOT);
  }
}
