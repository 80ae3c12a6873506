package saddlewright.interchange;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** Values of FHIR's data types as JSON. */
final class DataTypes {
  private DataTypes() {}

  static ObjectNode object() {
    return JsonNodeFactory.instance.objectNode();
  }

  static ObjectNode coding(String system, String code, String display) {
    return object().put("system", system).put("code", code).put("display", display);
  }

  /** A concept of a code system that HL7 publishes with FHIR. */
  static ObjectNode concept(String system, String code, String display) {
    ObjectNode node = object();
    node.putArray("coding").add(coding(system, code, display));
    return node;
  }

  /** A concept in words alone. */
  static ObjectNode words(String text) {
    return object().put("text", Plain.of(text));
  }

  static ObjectNode identifier(IdentifierSystem system, String value) {
    return object().put("system", system.url()).put("value", Plain.of(value));
  }

  /** Someone or something that has a name here and no resource. */
  static ObjectNode named(String display) {
    return object().put("display", Plain.of(display));
  }

  static ObjectNode note(String text) {
    return object().put("text", Plain.of(text));
  }

  static ObjectNode period(Optional<LocalDate> start, Optional<LocalDate> end) {
    ObjectNode node = object();
    start.ifPresent(d -> node.put("start", d.toString()));
    end.ifPresent(d -> node.put("end", d.toString()));
    return node;
  }

  /**
   * The start of a day as an instant. A case knows days only; FHIR wants a moment where it wants an
   * instant, and the start of the day in universal time is the one that the day alone gives.
   */
  static String instant(LocalDate day) {
    return day + "T00:00:00Z";
  }

  /** A Narrative of paragraphs that says what the resource says. */
  static ObjectNode narrative(List<String> paragraphs) {
    StringBuilder div = new StringBuilder("<div xmlns=\"http://www.w3.org/1999/xhtml\">");
    for (String p : paragraphs) {
      if (!p.isBlank()) {
        div.append("<p>").append(Plain.escaped(p)).append("</p>");
      }
    }
    return object().put("status", "generated").put("div", div.append("</div>").toString());
  }
}
