/**
 * Teeth as ISO 3950 numbers them: arches, sides, surfaces, zones, display notations and published
 * crown dimensions.
 *
 * <p>Nothing here knows what was found in a mouth; that is {@code chart}.
 */
package saddlewright.dentition;
