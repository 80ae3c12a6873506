/**
 * Rules of minor connectors and gingival hygiene: the gums are left free where that can be.
 *
 * <p>One claim, one class, one page in docs/rules.
 */
package saddlewright.rules.hygiene;
