/**
 * The case file: a case as readable JSON, and back. The shape of the file is written out here by
 * hand and published as {@code docs/case-schema.json}; it does not follow the shape of the classes,
 * so that either can change without the other. No other package knows it.
 *
 * <p>Nothing here judges a design: an unwise one is read and written like any other. What is
 * refused is the impossible, in words that name the place.
 */
package saddlewright.casefile.json;
