package saddlewright.prescription.pdf;

import saddlewright.casefile.Assessment;
import saddlewright.casefile.Case;
import saddlewright.dentition.Arch;
import saddlewright.dentition.Notation;
import saddlewright.prescription.Schedule;
import saddlewright.rules.Sentence;

/** What all sections print from: the case with all that follows from it, and how it is printed. */
record Printout(Assessment assessment, PrintOptions options, Schedule schedule) {
  static final String KIND = "Laboratory prescription: cast partial denture";

  static Printout of(Assessment assessment, PrintOptions options) {
    return new Printout(assessment, options, Schedule.of(assessment, options.notation()));
  }

  Case subject() {
    return assessment.subject();
  }

  Notation notation() {
    return options.notation();
  }

  /** The case reference as it can be printed; may be empty. */
  String reference() {
    return TypeFace.printable(subject().reference()).strip();
  }

  /** What the document is called. */
  String title() {
    String reference = subject().reference().strip();
    return KIND + (reference.isEmpty() ? "" : ", " + reference);
  }

  /** Upper or Lower. */
  static String name(Arch arch) {
    return Sentence.capital(arch.code());
  }
}
