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

  /** A concept or a name in words alone; a dash where these are nothing that can be read. */
  static ObjectNode words(String text) {
    String plain = Plain.of(text);
    return object().put("text", plain.isEmpty() ? "–" : plain);
  }

  static ObjectNode identifier(IdentifierSystem system, String value) {
    return object().put("system", system.url()).put("value", Plain.of(value));
  }

  /** Someone or something that has a name here and no resource. */
  static ObjectNode named(String display) {
    return object().put("display", Plain.of(display));
  }

  /** An Annotation. */
  static ObjectNode note(String text) {
    return words(text);
  }

  /** A day as a date; empty for a year that has not four digits, which FHIR cannot write. */
  static Optional<String> date(LocalDate day) {
    return day.getYear() < 1 || day.getYear() > 9999
        ? Optional.empty()
        : Optional.of(day.toString());
  }

  /**
   * The start of a day as an instant. A case knows days only; FHIR wants a moment where it wants an
   * instant, and the start of the day in universal time is the one that the day alone gives.
   */
  static Optional<String> instant(LocalDate day) {
    return date(day).map(d -> d + "T00:00:00Z");
  }

  /** A Period up to and with a day; empty without one. */
  static ObjectNode until(Optional<LocalDate> end) {
    ObjectNode node = object();
    end.flatMap(DataTypes::date).ifPresent(d -> node.put("end", d));
    return node;
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
