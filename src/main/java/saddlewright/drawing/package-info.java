/**
 * The sheet as a list of marks in millimetres: strokes, fills, dots and labels, each with a layer,
 * an ink role and what it is about. Painters turn it into nodes, PDF, SVG or PNG.
 *
 * <p>Knows ink roles, never colours of a screen, and nothing of rules.
 */
package saddlewright.drawing;
