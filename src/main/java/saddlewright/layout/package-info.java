/**
 * Where each component lies on the arch form, in millimetres: outlines, centrelines, tips, lengths
 * and clearances.
 *
 * <p>Measures only; whether a measure is good enough is said by {@code rules}. A component that
 * cannot lie anywhere sensible (a clasp on a missing tooth) is still laid out at its place in the
 * arch.
 */
package saddlewright.layout;
