package saddlewright.interchange;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;

/**
 * A code system of the program's own.
 *
 * @param word last part of its address, such as {@code tooth}
 * @param title what people call it
 * @param description what its codes stand for and where they come from
 * @param codes all of them, in order
 */
record CodeList(String word, String title, String description, List<Code> codes) {
  /**
   * The start of every address here. The top level domain {@code .example} is reserved (RFC 2606)
   * and can belong to nobody: the address names and does not lead anywhere.
   */
  static final String ROOT = "https://saddlewright.example/fhir/";

  CodeList {
    codes = List.copyOf(codes);
    if (codes.stream().map(Code::word).distinct().count() < codes.size()) {
      throw new IllegalArgumentException("a code stands twice in " + word);
    }
  }

  /** A list with a code for each constant: its name in lower case with hyphens. */
  static <E extends Enum<E>> CodeList of(
      String word, String title, String description, Class<E> type, Function<E, String> display) {
    return new CodeList(
        word,
        title,
        description,
        Arrays.stream(type.getEnumConstants())
            .map(e -> Code.of(codeOf(e), display.apply(e)))
            .toList());
  }

  static String codeOf(Enum<?> value) {
    return value.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  String url() {
    return ROOT + "CodeSystem/" + word;
  }

  Code code(String code) {
    return codes.stream()
        .filter(c -> c.word().equals(code))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("no code \"" + code + "\" in " + word));
  }

  /** A Coding. */
  ObjectNode coding(String code) {
    return DataTypes.coding(url(), code(code).word(), code(code).display());
  }

  /** A CodeableConcept that reads as the code does. */
  ObjectNode concept(String code) {
    return concept(code, code(code).display());
  }

  /** A CodeableConcept with words of its own. */
  ObjectNode concept(String code, String words) {
    ObjectNode node = JsonNodeFactory.instance.objectNode();
    node.putArray("coding").add(coding(code));
    node.put("text", Plain.of(words));
    return node;
  }

  ObjectNode concept(Enum<?> value) {
    return concept(codeOf(value));
  }
}
