package saddlewright.casefile.order;

/** What the paper is: an order to a laboratory, or an exercise that must never be taken for one. */
public enum DocumentKind {
  PRESCRIPTION("Laboratory prescription"),
  COURSEWORK("Coursework – not a prescription");

  private final String title;

  DocumentKind(String title) {
    this.title = title;
  }

  /** Heading of the document. */
  public String title() {
    return title;
  }
}
