/**
 * A case for the computer systems of other people: a bundle of HL7 FHIR R4 resources, with the
 * program's own code lists.
 *
 * <p>It says what the prescription says and decides nothing of its own; levels, preparations,
 * stages and the PDF come from {@code prescription}, which does not know of it. The resources are
 * written as trees of JSON, without a FHIR library: such a library weighs more than the program,
 * and serves the tests as an independent reader.
 */
package saddlewright.interchange;
