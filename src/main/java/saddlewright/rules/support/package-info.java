/**
 * Rules of support: what carries each saddle and the denture as a whole.
 *
 * <p>One claim, one class, one page in docs/rules.
 */
package saddlewright.rules.support;
