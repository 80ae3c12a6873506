package saddlewright.interchange;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import saddlewright.casefile.Assessment;
import saddlewright.casefile.Case;
import saddlewright.casefile.order.DocumentKind;
import saddlewright.casefile.order.PatientIdentity;
import saddlewright.casefile.order.PrescriptionDetails;
import saddlewright.casefile.order.Signature;
import saddlewright.dentition.Arch;
import saddlewright.prescription.Completeness;
import saddlewright.prescription.Issue;
import saddlewright.prescription.Level;
import saddlewright.prescription.Revision;
import saddlewright.prescription.SignedDesign;

/**
 * What a bundle is made from, and what follows from it for all of its resources.
 *
 * @param date the day on which the bundle is made
 * @param patient whose case it is, when that may be told
 * @param lacking what must be filled in and is not
 */
record Order(
    Assessment assessment,
    LocalDate date,
    Optional<PatientIdentity> patient,
    Revision revision,
    List<Completeness.Gap> lacking) {

  static Order of(Assessment assessment, LocalDate date, Optional<PatientIdentity> patient) {
    return new Order(
        assessment,
        date,
        patient,
        Revision.of(assessment.subject()),
        Completeness.of(assessment, patient).gaps(Level.MUST));
  }

  Case subject() {
    return assessment.subject();
  }

  PrescriptionDetails details() {
    return subject().prescription();
  }

  boolean coursework() {
    return details().kind() == DocumentKind.COURSEWORK;
  }

  /**
   * The signature, while the design is the one that was signed; an exercise has none. One on a day
   * that FHIR cannot write cannot be told.
   */
  Optional<Signature> signature() {
    SignedDesign signed = SignedDesign.of(subject());
    return signed
        .signature()
        .filter(s -> signed.holds() && !coursework())
        .filter(s -> DataTypes.instant(s.on()).isPresent());
  }

  /** Whether others may act on it: it has been issued as it is, and is signed. */
  boolean actionable() {
    return revision.issued() && signature().isPresent();
  }

  /** The day that its document bears: of the issue, where it has been issued as it is. */
  LocalDate day() {
    return new Issue(assessment, patient, date).day();
  }

  /** An exercise proposes; only a prescription orders (R4, request intent). */
  String intent() {
    return coursework() ? "proposal" : "order";
  }

  String status() {
    return actionable() ? "active" : "draft";
  }

  /** An identifier of something that stays the same through all revisions. */
  String name(String part) {
    return subject().reference() + "/" + part;
  }

  /** The identifier of a revision, such as {@code HTC-0101/r2}. */
  String name(int number) {
    return subject().reference() + "/r" + number;
  }

  /** The identifier of the denture of an arch in a revision, such as {@code HTC-0101/lower/r2}. */
  String name(Arch arch, int number) {
    return subject().reference() + "/" + arch.code() + "/r" + number;
  }

  /** An empty resource that is the same in every export of the case. */
  Resource resource(String type, String part) {
    Resource r = new Resource(type, name(part));
    return coursework() ? r.asTest() : r;
  }

  /** An empty resource that belongs to this revision. */
  Resource ofRevision(String type, String part) {
    return resource(type, part + "/r" + revision.number());
  }
}
