package saddlewright.prescription.pdf;

import java.io.IOException;
import java.util.List;

/** What stands on the paper as squares, by the numbers of the characters in Unicode. */
final class UnprintableSection implements Section {
  private final Printout printout;

  UnprintableSection(Printout printout) {
    this.printout = printout;
  }

  @Override
  public void write(Flow flow) throws IOException {
    List<Unprintable> all = Unprintable.of(printout.subject(), printout.options().patient());
    if (all.isEmpty()) {
      return;
    }
    flow.heading("To be written in by hand");
    flow.paragraph(
        "These characters cannot be printed here and stand as squares ("
            + Character.toString(TypeFace.SUBSTITUTE)
            + "), named by their numbers in Unicode: "
            + Unprintable.byPlace(all, Unprintable::number)
            + ". Write them in by hand.",
        Flow.BODY,
        Shade.INK);
  }
}
