/**
 * Rules of abutments and of what bites against them: whether the teeth can bear what is asked.
 *
 * <p>One claim, one class, one page in docs/rules.
 */
package saddlewright.rules.abutments;
