package saddlewright.casefile.order;

/**
 * A body of rules by which a prescription is complete: where it is written, or that it is written
 * in a teaching clinic. It decides which fields must be filled, never what stands in them.
 */
public enum Regime {
  TEACHING("Teaching clinic"),
  UK("United Kingdom"),
  EU("European Union"),
  US("United States, generic");

  private final String title;

  Regime(String title) {
    this.title = title;
  }

  public String title() {
    return title;
  }
}
