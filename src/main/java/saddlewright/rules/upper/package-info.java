/**
 * Rules of upper major connectors: which form for which saddles, and where its borders lie.
 *
 * <p>One claim, one class, one page in docs/rules.
 */
package saddlewright.rules.upper;
