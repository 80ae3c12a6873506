package saddlewright.prescription.pdf;

import java.io.IOException;
import java.util.List;
import saddlewright.prescription.Completeness;

/** What is not yet filled in. */
final class MissingSection implements Section {
  private final Printout printout;

  MissingSection(Printout printout) {
    this.printout = printout;
  }

  @Override
  public void write(Flow flow) throws IOException {
    List<String> sentences = Completeness.missing(printout.assessment());
    if (!sentences.isEmpty()) {
      flow.heading("Not yet filled in");
      flow.paragraph(String.join(" ", sentences), Flow.BODY, Shade.INK);
    }
  }
}
