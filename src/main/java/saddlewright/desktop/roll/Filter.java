package saddlewright.desktop.roll;

/** Which lines of the list are shown, with those above them. */
enum Filter {
  ALL,
  COMPONENTS,
  FINDINGS,
  STANDING
}
