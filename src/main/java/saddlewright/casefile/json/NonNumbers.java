package saddlewright.casefile.json;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Map;

/** A look through a whole file for NaN and Infinity, which JSON does not know. */
final class NonNumbers {
  private NonNumbers() {}

  static void refuse(JsonNode node, Place place) {
    if (node.isDouble() && !Double.isFinite(node.doubleValue())) {
      throw Refusal.at(
          place, node.asText() + " is not a number", "Give the measured number, or remove it.");
    }
    for (Map.Entry<String, JsonNode> member : node.properties()) {
      refuse(member.getValue(), place.member(member.getKey()));
    }
    if (node.isArray()) {
      for (int i = 0; i < node.size(); i++) {
        refuse(node.get(i), item(place, node.get(i), i));
      }
    }
  }

  private static Place item(Place list, JsonNode item, int index) {
    JsonNode id = item.get("id");
    return list.member(id != null && id.isTextual() ? "\"" + id.asText() + "\"" : "no. " + (index + 1));
  }
}
