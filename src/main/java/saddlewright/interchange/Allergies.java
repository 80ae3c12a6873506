package saddlewright.interchange;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Optional;
import saddlewright.casefile.order.Answer;
import saddlewright.casefile.order.Item;

/** An AllergyIntolerance from the field that asks for allergies to materials. */
final class Allergies {
  private Allergies() {}

  /** What is known; empty when the field is blank, does not apply or is to follow. */
  static Optional<Resource> of(Order order, People people, Entries entries) {
    Answer answer = order.details().answer(Item.ALLERGIES);
    return switch (answer.state()) {
      case NONE -> Optional.of(entries.add(noneKnown(order, people)));
      case GIVEN ->
          Optional.of(
              entries.add(
                  answer.text().strip().equalsIgnoreCase("none known")
                      ? noneKnown(order, people)
                      : allergy(order, people, DataTypes.words(answer.text()), answer.text())));
      case BLANK, NOT_APPLICABLE, TO_FOLLOW -> Optional.empty();
    };
  }

  private static Resource noneKnown(Order order, People people) {
    ObjectNode code = LocalCodes.ALLERGY.concept("none-known");
    return allergy(order, people, code, code.get("text").asText());
  }

  private static Resource allergy(Order order, People people, ObjectNode code, String words) {
    Resource r = order.resource("AllergyIntolerance", "materials");
    r.narrative(List.of("Allergies to materials: " + words));
    r.set(
        "clinicalStatus",
        DataTypes.concept(
            "http://terminology.hl7.org/CodeSystem/allergyintolerance-clinical",
            "active",
            "Active"));
    r.set("code", code);
    return r.set("patient", people.patient());
  }
}
