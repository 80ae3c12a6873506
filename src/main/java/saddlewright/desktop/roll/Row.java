package saddlewright.desktop.roll;

import saddlewright.design.Subject;

/**
 * A line of the list.
 *
 * @param kind what sort of line it is
 * @param subject what it is about
 */
record Row(Kind kind, Subject subject) {
  /** What a line is about; an arch has a line of its own and one for its soft tissues. */
  enum Kind {
    ARCH,
    AREA,
    TOOTH,
    COMPONENT,
    SOFT_TISSUES
  }
}
