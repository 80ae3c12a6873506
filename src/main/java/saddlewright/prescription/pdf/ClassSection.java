package saddlewright.prescription.pdf;

import java.io.IOException;
import saddlewright.dentition.Arch;

/** The class of each arch with the reasoning that leads to it. */
final class ClassSection implements Section {
  private final Printout printout;

  ClassSection(Printout printout) {
    this.printout = printout;
  }

  @Override
  public void write(Flow flow) throws IOException {
    flow.heading("Class");
    for (Arch arch : Arch.values()) {
      var c = printout.assessment().arch(arch).classification();
      flow.subheading(Printout.name(arch) + " arch: " + c.label());
      String none =
          printout.schedule().in(arch).isEmpty() ? " No denture is designed for this arch." : "";
      flow.paragraph(String.join(" ", c.reasoning()) + none, Flow.BODY, Shade.QUIET);
    }
  }
}
