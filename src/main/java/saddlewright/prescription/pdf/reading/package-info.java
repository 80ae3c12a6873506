/**
 * Gets the case back out of a document that holds one. The reader is its own and small, because it
 * opens files of strangers: it unpacks within bounds and refuses in a sentence. Nothing is written
 * here.
 */
package saddlewright.prescription.pdf.reading;
