package saddlewright.prescription.pdf;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import saddlewright.casefile.order.Answer;
import saddlewright.casefile.order.Item;
import saddlewright.prescription.Dates;
import saddlewright.prescription.FormField;
import saddlewright.prescription.Level;

/** The fields of the form as they stand on this document. */
final class FormFields {
  /** Stands in a field that nobody has to fill in and nobody has. */
  private static final String NOT_STATED = "not stated";

  private final Printout printout;

  FormFields(Printout printout) {
    this.printout = printout;
  }

  /** Those of the fields that this document asks for. */
  List<Fields.Field> of(Item... items) {
    return Stream.of(items).flatMap(i -> one(i).stream()).toList();
  }

  /** The field; empty when this document does not ask for it. */
  Optional<Fields.Field> one(Item item) {
    FormField f = FormField.of(item);
    Level level = f.level(printout.details());
    String words = words(item);
    if (level == Level.NOT_ASKED) {
      return Optional.empty();
    }
    boolean idle = words.isEmpty() && level == Level.OPTIONAL;
    if (idle && printout.isCoursework()) {
      return Optional.empty();
    }
    return Optional.of(
        new Fields.Field(
            f.title(),
            idle ? NOT_STATED : words,
            item.form() == Item.Form.LINES ? 2 : 1,
            level == Level.MUST));
  }

  /** What stands in a field, as it is printed; empty when it is blank. */
  String words(Item item) {
    return words(printout.details().answer(item), item.form());
  }

  private static String words(Answer answer, Item.Form form) {
    return switch (answer.state()) {
      case BLANK -> "";
      case GIVEN -> form == Item.Form.DATE ? Dates.words(answer.text()) : answer.text().strip();
      case NONE -> "none";
      case NOT_APPLICABLE -> "not applicable";
      case TO_FOLLOW ->
          answer
              .by()
              .map(d -> "to follow by " + Dates.words(d))
              .orElse("to follow, no date is given");
    };
  }

  /** Whether the document cannot do without a field of the table. */
  boolean isRequired(String key) {
    return FormField.of(key).level(printout.details()) == Level.MUST;
  }

  /** Whether the document has a place for a field of the table. */
  boolean isAsked(String key) {
    return FormField.of(key).level(printout.details()) != Level.NOT_ASKED;
  }
}
