/**
 * Rules of saddles: their bases, flanges, metalwork and teeth.
 *
 * <p>One claim, one class, one page in docs/rules.
 */
package saddlewright.rules.saddles;
