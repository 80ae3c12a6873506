/**
 * Rules of lower major connectors: which form fits the sulcus and the teeth, and how stout it is.
 *
 * <p>One claim, one class, one page in docs/rules.
 */
package saddlewright.rules.lower;
