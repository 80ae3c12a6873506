/**
 * The prescription as a PDF document: pages, type and the painter of the drawing; the only place
 * that sees the PDF library. What is said is decided in {@code prescription}.
 */
package saddlewright.prescription.pdf;
