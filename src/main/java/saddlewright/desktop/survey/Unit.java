package saddlewright.desktop.survey;

/** What a number of the survey is counted in. */
public enum Unit {
  MILLIMETRES("mm", " mm"),
  DEGREES("°", "°"),
  PER_CENT("%", " %"),
  TO_ONE(": 1", " : 1");

  private final String sign;
  private final String behind;

  Unit(String sign, String behind) {
    this.sign = sign;
    this.behind = behind;
  }

  /** The sign alone, as it stands behind a field. */
  public String sign() {
    return sign;
  }

  /** A number with its unit. */
  public String amount(String number) {
    return number + behind;
  }
}
