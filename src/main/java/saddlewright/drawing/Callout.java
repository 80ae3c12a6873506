package saddlewright.drawing;

import saddlewright.design.Subject;

/**
 * A sign that stands beside a subject and refers to what is written of it elsewhere.
 *
 * <p>Signs of findings stand close to their subject; the numbers of components stand around the
 * arch and in the free room inside it, as item references of a technical drawing do.
 *
 * @param subject what it stands beside
 * @param form told apart by shape as well as by colour
 * @param answered whether what it refers to was accepted: the sign is hollow then
 * @param letter inside the sign
 * @param number beside the sign, of the lines that it refers to; may be empty
 */
public record Callout(Subject subject, Form form, boolean answered, String letter, String number) {
  /** Shape and ink of a sign. */
  public enum Form {
    OCTAGON(Ink.FINDING, "M"),
    TRIANGLE(Ink.CAUTION, "S"),
    CIRCLE(Ink.ADVICE, "C"),
    SQUARE(Ink.QUESTION, "?"),
    BALLOON(Ink.NUMBER, "1");

    private final Ink ink;
    private final String letter;

    Form(Ink ink, String letter) {
      this.ink = ink;
      this.letter = letter;
    }

    /** What stands in it by rule: the initial of its meaning, or the first number. */
    public String letter() {
      return letter;
    }

    Ink ink() {
      return ink;
    }
  }

  /** The number under which a list has a component. */
  public static Callout number(Subject component, int number) {
    return new Callout(component, Form.BALLOON, false, Integer.toString(number), "");
  }

  boolean isNumber() {
    return form == Form.BALLOON;
  }
}
