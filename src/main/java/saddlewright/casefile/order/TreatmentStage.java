package saddlewright.casefile.order;

/**
 * A stage on the way from the first impression to the review, in the order in which they follow one
 * another (school stage guides: see {@code docs/prescription.md}).
 */
public enum TreatmentStage {
  PRIMARY_IMPRESSION("Primary impressions", Place.CLINIC),
  SPECIAL_TRAY("Special trays and rims", Place.LABORATORY),
  REGISTRATION("Jaw registration", Place.CLINIC),
  DESIGN("Mounting, survey and design; the design is signed", Place.CLINIC),
  CONSENT("Design agreed with the patient", Place.CLINIC),
  MOUTH_PREPARATION("Mouth preparations", Place.CLINIC),
  MASTER_IMPRESSION("Master impressions", Place.CLINIC),
  FRAMEWORK("Framework made", Place.LABORATORY),
  FRAMEWORK_TRY_IN("Framework try-in", Place.CLINIC),
  RIMS_ON_FRAMEWORK("Rims on the framework", Place.LABORATORY),
  FRAMEWORK_REGISTRATION("Registration on the framework", Place.CLINIC),
  SETTING_UP("Teeth set up", Place.LABORATORY),
  TOOTH_TRY_IN("Tooth try-in", Place.CLINIC),
  FINISH("Processing and finishing", Place.LABORATORY),
  DELIVERY("Fitting", Place.CLINIC),
  REVIEW("Review", Place.CLINIC);

  /** Where a stage is done. */
  public enum Place {
    CLINIC,
    LABORATORY
  }

  private final String title;
  private final Place place;

  TreatmentStage(String title, Place place) {
    this.title = title;
    this.place = place;
  }

  public String title() {
    return title;
  }

  public Place place() {
    return place;
  }
}
