/**
 * Rules of retention: where clasps lie, and what their arms need.
 *
 * <p>One claim, one class, one page in docs/rules.
 */
package saddlewright.rules.retention;
