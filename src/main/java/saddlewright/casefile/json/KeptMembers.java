package saddlewright.casefile.json;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.LinkedHashMap;
import java.util.Map;

/** The members of a file that this version does not know, found by the object they stand in. */
final class KeptMembers {
  private final Map<String, Map<String, JsonNode>> byParent = new LinkedHashMap<>();

  /**
   * @param extras JSON text by JSON pointer, as {@code Case} holds them
   */
  KeptMembers(Map<String, String> extras) {
    extras.forEach(
        (pointer, json) -> {
          int cut = pointer.lastIndexOf('/');
          if (cut < 0) {
            throw new IllegalArgumentException("\"" + pointer + "\" is not a JSON pointer");
          }
          byParent
              .computeIfAbsent(pointer.substring(0, cut), p -> new LinkedHashMap<>())
              .put(Place.unescaped(pointer.substring(cut + 1)), JsonText.parseKept(json));
        });
  }

  Map<String, JsonNode> in(Place object) {
    return byParent.getOrDefault(object.pointer(), Map.of());
  }
}
