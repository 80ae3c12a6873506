package saddlewright.prescription.pdf;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import saddlewright.casefile.Assessment;
import saddlewright.casefile.Case;
import saddlewright.casefile.order.DocumentKind;
import saddlewright.casefile.order.PrescriptionDetails;
import saddlewright.dentition.Arch;
import saddlewright.dentition.Notation;
import saddlewright.drawing.Callout;
import saddlewright.prescription.Completeness;
import saddlewright.prescription.ComponentNumbers;
import saddlewright.prescription.PreparationPlan;
import saddlewright.prescription.Revision;
import saddlewright.prescription.Schedule;
import saddlewright.rules.Sentence;

/** What all sections print from: the case with all that follows from it, and how it is printed. */
record Printout(
    Assessment assessment,
    PrintOptions options,
    Schedule schedule,
    PreparationPlan preparations,
    Completeness completeness,
    Revision revision) {

  static Printout of(Assessment assessment, PrintOptions options) {
    return new Printout(
        assessment,
        options,
        Schedule.of(assessment, options.notation()),
        PreparationPlan.of(assessment, options.notation()),
        Completeness.of(assessment, options.patient()),
        Revision.of(assessment.subject()));
  }

  Case subject() {
    return assessment.subject();
  }

  PrescriptionDetails details() {
    return subject().prescription();
  }

  DocumentKind kind() {
    return details().kind();
  }

  boolean isCoursework() {
    return kind() == DocumentKind.COURSEWORK;
  }

  Notation notation() {
    return options.notation();
  }

  /** The case reference as it can be printed; may be empty. */
  String reference() {
    return TypeFace.printable(subject().reference()).strip();
  }

  /** What stands on the drawing: the number of each component, and what the options mark. */
  List<Callout> callouts() {
    List<Callout> out = new ArrayList<>(ComponentNumbers.callouts(subject()));
    out.addAll(options.signs());
    return out;
  }

  /** What the document is called. */
  String title() {
    String reference = subject().reference().strip();
    return kind().title() + (reference.isEmpty() ? "" : ", " + reference);
  }

  /** Such as "Revision 2, draft · a3f9 12bc". */
  String stateWords() {
    return "Revision "
        + revision.number()
        + (revision.issued() ? "" : ", draft")
        + "  ·  "
        + grouped(revision.hash()).substring(0, 9);
  }

  /** A hash in groups of four digits, as people compare them. */
  static String grouped(String hash) {
    return hash.toLowerCase(Locale.ROOT).replaceAll("(.{4})(?=.)", "$1 ");
  }

  /** Upper or Lower. */
  static String name(Arch arch) {
    return Sentence.capital(arch.code());
  }
}
