package saddlewright.interchange;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/**
 * A FHIR resource that is being written, with the name by which others in the bundle refer to it.
 */
final class Resource {
  private final String id;
  private final ObjectNode node = DataTypes.object();

  /**
   * An empty resource.
   *
   * @param type such as {@code Patient}
   * @param seed what makes it the same resource in two exports; its id follows from it
   */
  Resource(String type, String seed) {
    id = UUID.nameUUIDFromBytes((type + "|" + seed).getBytes(StandardCharsets.UTF_8)).toString();
    node.put("resourceType", type);
    node.put("id", id);
  }

  /** Marks an exercise as test data (R4, security labels: core security labels, HTEST). */
  Resource asTest() {
    node.putObject("meta")
        .putArray("security")
        .add(
            DataTypes.coding(
                "http://terminology.hl7.org/CodeSystem/v3-ActReason", "HTEST", "test health data"));
    return this;
  }

  Resource narrative(List<String> paragraphs) {
    node.set("text", DataTypes.narrative(paragraphs));
    return this;
  }

  /** Sets a member, unless the text is blank. */
  Resource put(String name, String text) {
    String plain = Plain.of(text);
    if (!plain.isEmpty()) {
      node.put(name, plain);
    }
    return this;
  }

  Resource put(String name, Optional<String> text) {
    return put(name, text.orElse(""));
  }

  Resource put(String name, boolean value) {
    node.put(name, value);
    return this;
  }

  Resource set(String name, ObjectNode value) {
    if (!value.isEmpty()) {
      node.set(name, value);
    }
    return this;
  }

  Resource set(String name, Resource other) {
    return set(name, other.reference());
  }

  /** Adds to a list, which is made when it is not there. */
  Resource add(String name, ObjectNode value) {
    node.withArray("/" + name).add(value);
    return this;
  }

  Resource add(String name, Resource other) {
    return add(name, other.reference());
  }

  /** Adds an identifier, unless it is blank. */
  Resource identifier(IdentifierSystem system, String value) {
    return Plain.of(value).isEmpty()
        ? this
        : add("identifier", DataTypes.identifier(system, value));
  }

  /** A Reference to it. */
  ObjectNode reference() {
    return DataTypes.object().put("reference", url());
  }

  String url() {
    return "urn:uuid:" + id;
  }

  ObjectNode node() {
    return node;
  }
}
