package saddlewright.casefile.json;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Map;

/** NaN and Infinity, which some programs write although JSON does not know them. */
final class NonNumbers {
  private static final String CURE = "Give the measured number, or remove it.";

  private NonNumbers() {}

  static Refusal refusal(JsonNode node, Place place) {
    return Refusal.at(place, node.asText() + " is not a number", CURE);
  }

  static boolean is(JsonNode node) {
    return node.isDouble() && !Double.isFinite(node.doubleValue());
  }

  /** Looks for them anywhere inside what is kept without being understood. */
  static void refuseIn(JsonNode node, Place place) {
    if (is(node)) {
      throw refusal(node, place);
    }
    for (Map.Entry<String, JsonNode> member : node.properties()) {
      refuseIn(member.getValue(), place.member(member.getKey()));
    }
    if (node.isArray()) {
      for (int i = 0; i < node.size(); i++) {
        refuseIn(node.get(i), place.member("no. " + (i + 1)));
      }
    }
  }
}
