/**
 * The rule book: what a good tutor would say of a design, each rule a class of its own, with
 * severity, source, measured and required values and remedies.
 *
 * <p>A rule is a pure function of a {@link saddlewright.rules.Situation}. Rules never gate an edit.
 */
package saddlewright.rules;
