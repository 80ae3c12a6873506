/**
 * What the laboratory and the chairside need to read off a case: the component schedule, the mouth
 * preparations that the design demands, and what is still missing from the form.
 *
 * <p>All of it is derived from the same model as the drawing, so that list and drawing cannot
 * disagree. The document itself is composed in {@code prescription.pdf}, the only place that sees
 * the PDF library.
 */
package saddlewright.prescription;
