/**
 * What is ordered from the laboratory besides the design: who, by when, of what, with what sent
 * along; what has been done in the mouth; which stage comes next; who signed, and what has gone
 * out. Values only: which of it is required, and what it looks like on paper, is decided in {@code
 * prescription}.
 */
package saddlewright.casefile.order;
