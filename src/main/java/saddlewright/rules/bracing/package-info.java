/**
 * Rules of bracing and reciprocation: what holds a tooth against a clasp's push.
 *
 * <p>One claim, one class, one page in docs/rules.
 */
package saddlewright.rules.bracing;
