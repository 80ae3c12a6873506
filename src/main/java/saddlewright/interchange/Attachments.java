package saddlewright.interchange;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;
import java.util.List;
import java.util.Optional;
import saddlewright.casefile.json.CaseCodec;
import saddlewright.prescription.pdf.PrescriptionPdf;

/**
 * What is attached to an order.
 *
 * @param sheet the document for people
 * @param file the case for this program; empty when the exercise is handed in sealed
 */
record Attachments(Resource sheet, Optional<Resource> file) {
  static Attachments of(Order order, People people, Entries entries) {
    byte[] pdf = PrescriptionPdf.toBytes(order.assessment(), order.day());
    Resource sheet =
        entries.add(
            document(
                order,
                people,
                "design-sheet",
                order.details().kind().title(),
                "application/pdf",
                ".pdf",
                pdf));
    if (order.coursework() && order.details().coursework().sealed()) {
      return new Attachments(sheet, Optional.empty());
    }
    Resource file =
        entries.add(
            document(
                order,
                people,
                "case-file",
                "Case " + order.subject().reference(),
                "application/json",
                ".json",
                CaseCodec.toBytes(order.subject())));
    return new Attachments(sheet, Optional.of(file));
  }

  List<Resource> all() {
    return file.map(f -> List.of(sheet, f)).orElseGet(() -> List.of(sheet));
  }

  private static Resource document(
      Order order,
      People people,
      String code,
      String title,
      String contentType,
      String ending,
      byte[] bytes) {
    Resource r = order.ofRevision("DocumentReference", code);
    String described = title + ", revision " + order.revision().number();
    r.narrative(List.of(described));
    r.identifier(IdentifierSystem.PRESCRIPTION, order.name(order.revision().number()) + ending);
    r.put("status", "current");
    r.put("docStatus", order.actionable() ? "final" : "preliminary");
    r.set("type", LocalCodes.ATTACHMENT.concept(code));
    r.add("category", LocalCodes.DOCUMENT.concept(order.details().kind()));
    r.set("subject", people.patient());
    r.put("date", DataTypes.instant(order.day()));
    people.requester().ifPresent(p -> r.add("author", p));
    r.put("description", described);
    ObjectNode content = DataTypes.object();
    content.set("attachment", attachment(order, title, contentType, bytes));
    return r.add("content", content);
  }

  private static ObjectNode attachment(
      Order order, String title, String contentType, byte[] bytes) {
    ObjectNode node =
        DataTypes.object()
            .put("contentType", contentType)
            .put("language", "en-GB")
            .put("data", Base64.getEncoder().encodeToString(bytes))
            .put("size", bytes.length)
            .put("hash", Base64.getEncoder().encodeToString(sha1(bytes)))
            .put("title", Plain.of(title));
    DataTypes.date(order.day()).ifPresent(d -> node.put("creation", d));
    return node;
  }

  /** SHA-1, because FHIR says so (R4, Attachment.hash); it guards against damage, not malice. */
  private static byte[] sha1(byte[] bytes) {
    try {
      return MessageDigest.getInstance("SHA-1").digest(bytes);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java platform has SHA-1", e);
    }
  }
}
