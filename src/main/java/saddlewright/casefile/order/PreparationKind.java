package saddlewright.casefile.order;

/**
 * When in the order of treatment a preparation is done: surgery and disease first, then surfaces
 * that are parallel to the path, then contours and undercuts, then seats, and polishing last
 * (teaching texts on mouth preparation).
 */
public enum PreparationKind {
  EXTRACTION("Extractions"),
  TISSUES("Soft tissues and gums"),
  RESTORATION("Caries and restorations"),
  GUIDE_PLANE("Guide planes"),
  SURVEY_LINE("Survey lines"),
  UNDERCUT("Undercuts"),
  REST_SEAT("Rest seats and clearance"),
  FINISH("Finishing"),
  LATER("Planned for later");

  private final String title;

  PreparationKind(String title) {
    this.title = title;
  }

  /** Heading in a list. */
  public String title() {
    return title;
  }

  /** Whether sound tooth substance is cut or added to, which no later change of mind undoes. */
  public boolean altersTeeth() {
    return this == GUIDE_PLANE || this == SURVEY_LINE || this == UNDERCUT || this == REST_SEAT;
  }
}
