package saddlewright.rules;

/**
 * A limit that a school sets.
 *
 * @param value in the unit of the quantity
 * @param source who says so
 * @param reason why the school sets it so where others do not; may be empty
 */
public record Threshold(double value, Source source, String reason) {
  static Threshold read(double value, String citation) {
    return of(value, Source.read(citation));
  }

  static Threshold fromMemory(double value, String citation) {
    return of(value, Source.fromMemory(citation));
  }

  static Threshold commonPractice(double value, String citation) {
    return of(value, Source.commonPractice(citation));
  }

  static Threshold derived(double value, String reasoning) {
    return of(value, Source.derived(reasoning));
  }

  public static Threshold of(double value, Source source) {
    return new Threshold(value, source, "");
  }

  /** The same limit with the reason why it is set so. */
  public Threshold because(String why) {
    return new Threshold(value, source, why);
  }
}
