package saddlewright.casefile.order;

import java.util.Locale;

/**
 * A field of the form that a person answers in words. What it is called, how it is grouped and
 * where it must be filled stands in the table {@code prescription-fields}.
 */
public enum Item {
  PRESCRIBER_NAME(Form.LINE),
  PRESCRIBER_REGISTRATION(Form.LINE),
  PRACTICE(Form.LINES),
  PRESCRIBER_CONTACT(Form.LINE),
  LABORATORY_NAME(Form.LINE),
  LABORATORY_ADDRESS(Form.LINES),
  LABORATORY_REGISTRATION(Form.LINE),
  LABORATORY_ATTENTION(Form.LINE),
  COUNTERSIGNED_BY(Form.LINE),
  COUNTERSIGNED_ON(Form.DATE),
  DATE_ISSUED(Form.DATE),
  DATE_REQUIRED(Form.DATE),
  CLASS_UPPER(Form.LINE),
  CLASS_LOWER(Form.LINE),
  CLASS_REASON(Form.LINE),
  DEVICE_TYPE(Form.LINE),
  PATH_OF_INSERTION(Form.LINES),
  TRIPOD_MARKS(Form.LINE),
  FRAMEWORK_ALLOY(Form.LINE),
  ALLOY_COMPOSITION(Form.LINE),
  NICKEL_FREE(Form.LINE),
  BASE_POLYMER(Form.LINE),
  TOOTH_MATERIAL(Form.LINE),
  OTHER_MATERIALS(Form.LINE),
  ALLERGIES(Form.LINES),
  TOOTH_SHADE(Form.LINE),
  SHADE_GUIDE(Form.LINE),
  TOOTH_MOULD(Form.LINE),
  GINGIVAL_SHADE(Form.LINE),
  OCCLUSAL_SCHEME(Form.LINE),
  VERTICAL_DIMENSION(Form.LINE),
  OCCLUSAL_CONTACTS(Form.LINE),
  ARTICULATOR(Form.LINE),
  RELIEF_AND_BLOCKOUT(Form.LINES),
  ENCLOSED(Form.LINES),
  DISINFECTED(Form.LINES),
  FUTURE_LOSS(Form.LINES),
  IDENTIFICATION_MARK(Form.LINE),
  SPECIAL_INSTRUCTIONS(Form.LINES),
  AESTHETICS(Form.LINES),
  SPEECH_AND_GAG(Form.LINE),
  QUERIES(Form.LINES),
  PATIENT_STATEMENT(Form.LINE);

  /** What is written into a field. */
  public enum Form {
    LINE,
    LINES,
    /** A day, or words such as "to be agreed". */
    DATE
  }

  private final Form form;

  Item(Form form) {
    this.form = form;
  }

  public Form form() {
    return form;
  }

  /** Its name in tables, such as {@code tooth-shade}. */
  public String key() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
