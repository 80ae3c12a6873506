package saddlewright.design;

/** Material of a clasp arm and how it was worked. */
public enum ClaspMaterial {
  CAST_COBALT_CHROMIUM,
  CAST_TITANIUM,
  CAST_GOLD,
  WROUGHT_STAINLESS_STEEL,
  WROUGHT_COBALT_CHROMIUM,
  WROUGHT_GOLD,
  POLYMER;

  public boolean isWrought() {
    return this == WROUGHT_STAINLESS_STEEL
        || this == WROUGHT_COBALT_CHROMIUM
        || this == WROUGHT_GOLD;
  }

  public boolean isCast() {
    return !isWrought() && this != POLYMER;
  }
}
