package saddlewright.prescription.pdf;

/** A weight of the type. */
enum Weight {
  REGULAR,
  BOLD
}
