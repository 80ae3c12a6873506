package saddlewright.design;

/** Shape of a retentive arm and the side from which it reaches the undercut. */
public enum ClaspForm {
  /** The retentive arm of a three-arm clasp: from its rest around one face. */
  CIRCUMFERENTIAL(true),
  /** Nearly encircles the tooth from one line angle back to it. */
  RING(true),
  /** Rounds the tooth from a lingual minor connector, past the far end, to the buccal face. */
  BACK_ACTION(true),
  /** Comes over the embrasure between two standing teeth, back to back with its neighbour. */
  EMBRASURE(true),
  /** A wrought retentive arm paired with a cast reciprocal one. */
  COMBINATION(true),
  I_BAR(false),
  T_BAR(false),
  HALF_T(false),
  L_BAR(false);

  private final boolean occlusal;

  ClaspForm(boolean occlusal) {
    this.occlusal = occlusal;
  }

  /** Comes from above the survey line. */
  public boolean isOcclusallyApproaching() {
    return occlusal;
  }

  /** Comes from below, across the gingival margin. */
  public boolean isGingivallyApproaching() {
    return !occlusal;
  }

  /** Holds the tooth against its own tip, so that no other reciprocal part is needed. */
  public boolean isSelfReciprocating() {
    return this == RING || this == BACK_ACTION;
  }

  public ClaspMaterial usualMaterial() {
    return this == COMBINATION
        ? ClaspMaterial.WROUGHT_STAINLESS_STEEL
        : ClaspMaterial.CAST_COBALT_CHROMIUM;
  }
}
