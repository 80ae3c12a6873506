/**
 * Rules of the framework: one casting, from side to side, clear of the gingivae.
 *
 * <p>One claim, one class, one page in docs/rules.
 */
package saddlewright.rules.framework;
