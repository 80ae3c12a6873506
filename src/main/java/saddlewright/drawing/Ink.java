package saddlewright.drawing;

/** What a mark stands for; each painter maps it to a colour. */
public enum Ink {
  PAPER,
  ENAMEL,
  ENAMEL_SHADE,
  TOOTH_LINE,
  FISSURE,
  FAINT,
  GINGIVA,
  MUCOSA,
  ANATOMY,
  LABEL,
  METAL,
  METAL_LINE,
  REST,
  RETENTIVE,
  RECIPROCAL,
  GUIDE,
  INDIRECT,
  ACRYLIC,
  ACRYLIC_LINE,
  MESH,
  RELIEF,
  UNDERCUT,
  EXTRACTION,
  NOTE,
  FINDING,
  CAUTION,
  ADVICE,
  QUESTION,
  NUMBER
}
