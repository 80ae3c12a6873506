package saddlewright.interchange;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import saddlewright.casefile.Assessment;
import saddlewright.casefile.order.PatientIdentity;

/**
 * A case as an HL7 FHIR R4 (4.0.1) Bundle of the type collection: patient, people, teeth, what is
 * ordered, what is to be prepared and by when, with the document for people attached.
 *
 * <p>It is a collection because the document that is signed is the PDF in it: a bundle of the type
 * document would be a second one, with nobody's signature. The same case and day give the same
 * bytes.
 */
public final class FhirBundle {
  private FhirBundle() {}

  /** The bundle with the pseudonymous reference alone. */
  public static byte[] toBytes(Assessment assessment, LocalDate date) {
    return toBytes(assessment, date, Optional.empty());
  }

  /**
   * The bundle.
   *
   * @param date the day on which it is made
   * @param patient whose case it is, when that may leave the house
   * @throws IllegalArgumentException when the identity belongs to another case
   */
  public static byte[] toBytes(
      Assessment assessment, LocalDate date, Optional<PatientIdentity> patient) {
    String reference = assessment.subject().reference();
    patient.ifPresent(
        p -> {
          if (!p.reference().equals(reference)) {
            throw new IllegalArgumentException(
                "the identity belongs to case " + p.reference() + ", not to " + reference);
          }
        });
    Order order = Order.of(assessment, date, patient);
    return Layout.bytes(bundle(order, entries(order)));
  }

  private static List<Resource> entries(Order order) {
    Entries entries = new Entries();
    People people = People.of(order, entries);
    Teeth teeth = Teeth.of(order, people, entries);
    Optional<Resource> allergy = Allergies.of(order, people, entries);
    Attachments attachments = Attachments.of(order, people, entries);
    List<Denture> dentures = Dentures.of(order, people, teeth, attachments, allergy, entries);
    Preparing.write(order, people, dentures, entries);
    Stages.write(order, people, dentures, entries);
    Signing.write(order, people, dentures, attachments, entries);
    return entries.all();
  }

  private static ObjectNode bundle(Order order, List<Resource> resources) {
    int number = order.revision().number();
    Resource bundle = order.ofRevision("Bundle", order.revision().hash() + "/" + order.date());
    ObjectNode node = bundle.node();
    node.put("language", "en-GB");
    node.set("identifier", DataTypes.identifier(IdentifierSystem.PRESCRIPTION, order.name(number)));
    node.put("type", "collection");
    DataTypes.instant(order.date()).ifPresent(i -> node.put("timestamp", i));
    ArrayNode entry = node.putArray("entry");
    for (Resource r : resources) {
      entry.addObject().put("fullUrl", r.url()).set("resource", r.node());
    }
    return node;
  }
}
