package saddlewright.prescription.pdf;

/** A tone of the text and rules of the document. */
enum Shade {
  INK(0x1f2429),
  /** For labels and asides; 7:1 on white. */
  QUIET(0x4f5860),
  RULE(0xa9b0b6),
  HAIRLINE(0xd3d8dc),
  /** For large words behind the text. */
  WATERMARK(0xe3e7ea);

  private final int rgb;

  Shade(int rgb) {
    this.rgb = rgb;
  }

  float red() {
    return (rgb >> 16 & 255) / 255f;
  }

  float green() {
    return (rgb >> 8 & 255) / 255f;
  }

  float blue() {
    return (rgb & 255) / 255f;
  }
}
