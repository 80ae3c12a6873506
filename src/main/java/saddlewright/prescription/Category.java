package saddlewright.prescription;

import saddlewright.design.Component;

/** A step of the trade's order of design, by which a component schedule is grouped. */
public enum Category {
  SADDLES("Saddles"),
  SUPPORT("Support"),
  RETENTION("Retention"),
  BRACING("Bracing and reciprocation"),
  CONNECTORS("Connectors"),
  INDIRECT_RETENTION("Indirect retention"),
  OTHER("Notes and other");

  private final String title;

  Category(String title) {
    this.title = title;
  }

  /** The step at which a component is placed. */
  public static Category of(Component component) {
    return component.accept(ComponentPlace.FINDER).category();
  }

  /** Heading in a schedule. */
  public String title() {
    return title;
  }
}
