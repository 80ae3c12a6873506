/**
 * Rules of placing: components where a tooth or a gap can bear them.
 *
 * <p>One claim, one class, one page in docs/rules.
 */
package saddlewright.rules.placing;
