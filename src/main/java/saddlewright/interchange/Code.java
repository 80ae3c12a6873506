package saddlewright.interchange;

/**
 * A concept of a {@link CodeList}.
 *
 * @param word the code: lower case letters, digits and hyphens
 * @param display what people read
 * @param definition what it means, when the display does not say it; may be empty
 */
record Code(String word, String display, String definition) {
  static Code of(String word, String display) {
    return new Code(word, display, "");
  }
}
