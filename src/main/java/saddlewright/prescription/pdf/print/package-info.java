/**
 * Pages of a PDF as pictures and on a printer, at true scale: what a printer can do, whether a page
 * fits it, and the job. It takes finished documents and knows nothing of what stands on them.
 */
package saddlewright.prescription.pdf.print;
