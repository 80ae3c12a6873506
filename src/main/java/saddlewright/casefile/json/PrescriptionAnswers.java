package saddlewright.casefile.json;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Map;
import saddlewright.casefile.order.Item;

/**
 * The step from version 1, in which a prescription was twelve texts side by side, to version 2, in
 * which each field has an answer. Nothing is interpreted: the texts go whole into the fields that
 * come nearest.
 */
final class PrescriptionAnswers {
  private static final Map<String, Item> NEAREST =
      Map.ofEntries(
          Map.entry("prescriber", Item.PRESCRIBER_NAME),
          Map.entry("practice", Item.PRACTICE),
          Map.entry("laboratory", Item.LABORATORY_NAME),
          Map.entry("dateIssued", Item.DATE_ISSUED),
          Map.entry("dateRequired", Item.DATE_REQUIRED),
          Map.entry("frameworkAlloy", Item.FRAMEWORK_ALLOY),
          Map.entry("baseMaterial", Item.BASE_POLYMER),
          Map.entry("toothMaterial", Item.TOOTH_MATERIAL),
          Map.entry("shade", Item.TOOTH_SHADE),
          Map.entry("enclosures", Item.ENCLOSED),
          Map.entry("disinfection", Item.DISINFECTED),
          Map.entry("instructions", Item.SPECIAL_INSTRUCTIONS));

  private PrescriptionAnswers() {}

  static ObjectNode fromFlatTexts(ObjectNode old) {
    ObjectNode file = old.deepCopy();
    if (file.get("prescription") instanceof ObjectNode prescription) {
      ObjectNode answers = file.objectNode();
      NEAREST.forEach(
          (member, item) -> {
            JsonNode text = prescription.remove(member);
            if (text != null) {
              answers.set(PrescriptionFormat.member(item), text);
            }
          });
      if (!answers.isEmpty()) {
        prescription.set("answers", answers);
      }
    }
    return file;
  }
}
