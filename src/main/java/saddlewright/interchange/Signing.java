package saddlewright.interchange;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import saddlewright.casefile.order.Signature;

/** A Provenance that tells who signed. */
final class Signing {
  private Signing() {}

  static void write(
      Order order,
      People people,
      List<Denture> dentures,
      Attachments attachments,
      Entries entries) {
    order
        .signature()
        .ifPresent(
            s ->
                entries.add(
                    provenance(order, s, people.signer(order, s, entries), dentures, attachments)));
  }

  private static Resource provenance(
      Order order,
      Signature signature,
      Resource signer,
      List<Denture> dentures,
      Attachments attachments) {
    Resource r = order.ofRevision("Provenance", "signature");
    String manner =
        signature.manner() == Signature.Manner.BY_HAND
            ? "Signed by hand on paper"
            : "Signed in the case file";
    r.narrative(
        List.of(
            manner + " by " + signature.name() + " on " + signature.on() + ".",
            "Content of the design that was signed: " + signature.designHash() + ".",
            "The signature is a statement in the file, not a cryptographic seal."));
    dentures.forEach(d -> r.add("target", d.request()));
    r.add("target", attachments.sheet());
    r.put("occurredDateTime", DataTypes.date(signature.on()));
    r.put("recorded", DataTypes.instant(signature.on()));
    ObjectNode agent = DataTypes.object();
    agent.set(
        "type",
        DataTypes.concept(
            "http://terminology.hl7.org/CodeSystem/provenance-participant-type",
            "author",
            "Author"));
    agent.set("who", signer.reference());
    r.add("agent", agent);
    attachments
        .file()
        .ifPresent(
            f -> {
              ObjectNode entity = DataTypes.object().put("role", "source");
              entity.set("what", f.reference());
              r.add("entity", entity);
            });
    ObjectNode written = DataTypes.object();
    // The codes that R4 itself lists for the types of signature.
    written
        .putArray("type")
        .add(
            DataTypes.coding(
                "urn:iso-astm:E1762-95:2013", "1.2.840.10065.1.12.1.1", "Author's Signature"));
    DataTypes.instant(signature.on()).ifPresent(i -> written.put("when", i));
    written.set("who", signer.reference());
    return r.add("signature", written);
  }
}
