package saddlewright.prescription.pdf;

import java.io.IOException;

/**
 * A part of the document with one subject. It begins where the last one has ended, or turns the
 * page, and leaves the flow below its last line.
 */
interface Section {
  void write(Flow flow) throws IOException;
}
