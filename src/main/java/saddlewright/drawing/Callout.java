package saddlewright.drawing;

import saddlewright.design.Subject;

/**
 * A sign that stands beside a subject and refers to what is written of it elsewhere.
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
    OCTAGON(Ink.FINDING),
    TRIANGLE(Ink.CAUTION),
    CIRCLE(Ink.ADVICE),
    SQUARE(Ink.QUESTION);

    private final Ink ink;

    Form(Ink ink) {
      this.ink = ink;
    }

    Ink ink() {
      return ink;
    }
  }
}
