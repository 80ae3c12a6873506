package saddlewright.rules;

/** A limit that a school sets, with its source. */
public record Threshold(double value, Source source) {
  static Threshold read(double value, String citation) {
    return new Threshold(value, Source.read(citation));
  }

  static Threshold fromMemory(double value, String citation) {
    return new Threshold(value, Source.fromMemory(citation));
  }

  static Threshold commonPractice(double value, String citation) {
    return new Threshold(value, Source.commonPractice(citation));
  }

  static Threshold derived(double value, String reasoning) {
    return new Threshold(value, Source.derived(reasoning));
  }
}
