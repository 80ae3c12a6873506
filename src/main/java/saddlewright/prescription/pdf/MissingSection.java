package saddlewright.prescription.pdf;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import saddlewright.prescription.Completeness;
import saddlewright.prescription.Level;

/** What is not yet filled in. */
final class MissingSection implements Section {
  private final Printout printout;

  MissingSection(Printout printout) {
    this.printout = printout;
  }

  @Override
  public void write(Flow flow) throws IOException {
    List<String> sentences =
        Completeness.of(printout.assessment(), Optional.empty()).gaps(Level.MUST).stream()
            .map(Completeness.Gap::sentence)
            .toList();
    if (!sentences.isEmpty()) {
      flow.heading("Not yet filled in");
      flow.paragraph(String.join(" ", sentences), Flow.BODY, Shade.INK);
    }
  }
}
