package saddlewright.classification;

/**
 * What carries a saddle: teeth, mucosa or both (Craddock's three classes; glossary entry, from
 * memory).
 */
public enum SupportClass {
  /** Craddock I: rests on teeth at both ends carry all of it. */
  TOOTH("tooth-borne"),
  /** Craddock II: no rest carries it. */
  MUCOSA("mucosa-borne"),
  /** Craddock III: rests carry one part and the ridge the other. */
  TOOTH_AND_MUCOSA("tooth-and-mucosa-borne");

  /**
   * Most teeth that a bounded saddle can replace and still be carried by its two abutments alone: a
   * sound abutment carries itself and one and a half teeth more (common teaching in British
   * revision notes).
   */
  public static final int LONGEST_TOOTH_BORNE = 3;

  private final String words;

  SupportClass(String words) {
    this.words = words;
  }

  /** Such as "tooth-and-mucosa-borne". */
  public String words() {
    return words;
  }

  /**
   * The support of a saddle that fills an area.
   *
   * @param restBefore a rest carries its end on the patient's right
   * @param restAfter a rest carries its end on the patient's left
   */
  public static SupportClass of(EdentulousArea area, boolean restBefore, boolean restAfter) {
    return of(area.freeEnd(), area.replaced().size(), restBefore, restAfter);
  }

  /**
   * The support of a saddle. Strong abutments at both ends (canine and molar) tolerate a longer
   * span; that is left to the judgement of whoever reads the result.
   *
   * @param freeEnd no tooth stands behind the saddle on a side
   * @param replaced number of teeth on it
   * @param restBefore a rest carries its end on the patient's right
   * @param restAfter a rest carries its end on the patient's left
   */
  public static SupportClass of(
      boolean freeEnd, int replaced, boolean restBefore, boolean restAfter) {
    if (!restBefore && !restAfter) {
      return MUCOSA;
    }
    boolean bothEnds = restBefore && restAfter && !freeEnd;
    return bothEnds && replaced <= LONGEST_TOOTH_BORNE ? TOOTH : TOOTH_AND_MUCOSA;
  }
}
