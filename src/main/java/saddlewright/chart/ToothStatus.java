package saddlewright.chart;

/** Whether and how a tooth stands in its place. */
public enum ToothStatus {
  STANDING,
  MISSING,
  /** Standing now, lost before the denture is fitted (immediate addition). */
  TO_BE_EXTRACTED,
  /** A root kept under the denture: no crown, so edentulous for the class. */
  RETAINED_ROOT,
  /** An implant in the place of the tooth. */
  IMPLANT,
  UNERUPTED
}
