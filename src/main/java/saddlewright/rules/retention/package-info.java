/**
 * Rules of retention: how many clasps a denture has and where they stand.
 *
 * <p>One claim, one class, one page in docs/rules.
 */
package saddlewright.rules.retention;
