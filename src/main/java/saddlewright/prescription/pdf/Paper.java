package saddlewright.prescription.pdf;

/** The paper that the document is printed on. */
public enum Paper {
  /** ISO 216. */
  A4("A4", 210, 297),
  /** ANSI/ASME Y14.1, size A. */
  LETTER("Letter", 215.9, 279.4);

  private final String title;
  private final double width;
  private final double height;

  Paper(String title, double width, double height) {
    this.title = title;
    this.width = width;
    this.height = height;
  }

  public String title() {
    return title;
  }

  /** In millimetres. */
  public double width() {
    return width;
  }

  /** In millimetres. */
  public double height() {
    return height;
  }
}
