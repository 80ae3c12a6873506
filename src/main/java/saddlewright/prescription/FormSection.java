package saddlewright.prescription;

/** A group of fields that stand together in the window and on paper. */
public enum FormSection {
  DOCUMENT("Document"),
  PATIENT("Patient"),
  PEOPLE("Prescriber and laboratory"),
  DATES("Dates and stages"),
  MOUTH("Mouth"),
  DESIGN("Design"),
  MATERIALS("Materials"),
  SHADES("Shades and mould"),
  OCCLUSION("Occlusion"),
  SURVEY("Survey and path of insertion"),
  PREPARATION("Mouth preparations"),
  ENCLOSURES("Enclosures and disinfection"),
  INSTRUCTIONS("Instructions"),
  SIGNATURE("Signature"),
  RECORDS("Records");

  private final String title;

  FormSection(String title) {
    this.title = title;
  }

  public String title() {
    return title;
  }
}
