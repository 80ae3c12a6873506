package saddlewright.prescription.pdf;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import saddlewright.casefile.order.IssuedRevision;
import saddlewright.prescription.Dates;
import saddlewright.prescription.Revision;
import saddlewright.prescription.ToothWords;

/** The head of the first page: what the document is, whose case it is, and which state of it. */
final class TitleBlock implements Section {
  private static final double TITLE = 20;
  private static final double REFERENCE = 12;
  private static final double STATE = 66 * Sheet.MM;
  private static final double GUTTER = 8 * Sheet.MM;

  private final Printout printout;

  TitleBlock(Printout printout) {
    this.printout = printout;
  }

  @Override
  public void write(Flow flow) throws IOException {
    double top = flow.y();
    double width = Flow.MEASURE - STATE - GUTTER;
    Fields state = Fields.of(state());
    int page = flow.sheets().size();
    letterhead(flow);
    line(flow, "H1", width, printout.kind().title(), Weight.BOLD, TITLE);
    flow.gap(4);
    if (printout.isCoursework()) {
      line(flow, "P", width, Stamp.EXERCISE, Weight.BOLD, 9.5);
      flow.gap(4);
      String candidate = TypeFace.printable(printout.details().coursework().candidate()).strip();
      line(
          flow,
          "P",
          width,
          "Candidate number: " + (candidate.isEmpty() ? "____________" : candidate),
          Weight.BOLD,
          REFERENCE);
    }
    if (printout.reference().isEmpty()) {
      line(flow, "P", width, "Case reference: ____________", Weight.BOLD, REFERENCE);
    } else {
      line(flow, "P", width, printout.reference(), Weight.BOLD, REFERENCE);
    }
    if (!printout.subject().title().isBlank()) {
      line(flow, "P", width, printout.subject().title(), Weight.REGULAR, 10);
    }
    flow.gap(3);
    String teeth = "Teeth are numbered by " + ToothWords.name(printout.notation()) + ".";
    var p = flow.tags().under(flow.tags().document(), "P");
    flow.block(p, flow.left(), width, teeth, Weight.REGULAR, 8, Shade.QUIET);
    if (flow.sheets().size() == page) {
      double below = flow.y();
      double right = state.draw(flow, flow.right() - STATE, top, STATE);
      flow.moveTo(Math.max(below, right) + 6);
    } else {
      flow.gap(6);
      state.write(flow);
    }
    flow.sheet().beginArtifact();
    flow.sheet().rule(flow.left(), flow.y(), flow.right(), 1.4, Shade.INK);
    flow.sheet().end();
    flow.gap(7);
  }

  private void letterhead(Flow flow) throws IOException {
    Optional<Letterhead> letterhead = printout.options().letterhead();
    if (letterhead.isEmpty() || printout.isCoursework()) {
      return;
    }
    Letterhead l = letterhead.get();
    String words = "Letterhead of the practice";
    flow.sheet()
        .begin(
            flow.tags()
                .figure(
                    flow.tags().document(),
                    words,
                    flow.sheet().area(flow.left(), flow.y(), l.width(), l.height())));
    flow.sheet().picture(l.picture(), flow.left(), flow.y(), l.width(), l.height());
    flow.sheet().end();
    flow.gap(l.height() + 8);
  }

  private static void line(
      Flow flow, String type, double width, String words, Weight weight, double size)
      throws IOException {
    flow.block(
        flow.tags().under(flow.tags().document(), type),
        flow.left(),
        width,
        words,
        weight,
        size,
        Shade.INK);
  }

  private List<Fields.Field> state() {
    Revision r = printout.revision();
    return List.of(
        Fields.Field.of("Revision", r.number() + (r.issued() ? "" : " – draft, not issued")),
        Fields.Field.of(
            "Replaces", r.replaces().map(TitleBlock::words).orElse("none: this is the first")),
        Fields.Field.of("Content hash", Printout.grouped(r.hash())),
        Fields.Field.of("Printed", Dates.words(printout.options().date())));
  }

  private static String words(IssuedRevision r) {
    return "revision "
        + r.number()
        + " of "
        + Dates.words(r.on())
        + " ("
        + Printout.grouped(r.hash())
        + ")";
  }
}
