package saddlewright.prescription.pdf;

import java.io.IOException;
import saddlewright.casefile.Cautions;

/** The words of caution in full. */
final class CautionsSection implements Section {

  @Override
  public void write(Flow flow) throws IOException {
    flow.need(24 + 16 * Cautions.FULL.size());
    flow.heading("Cautions");
    for (String sentence : Cautions.FULL) {
      flow.paragraph(sentence, Flow.BODY, Shade.INK);
    }
  }
}
