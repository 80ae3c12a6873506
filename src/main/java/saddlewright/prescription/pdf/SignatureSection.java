package saddlewright.prescription.pdf;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import saddlewright.casefile.order.Item;
import saddlewright.casefile.order.Signature;
import saddlewright.prescription.Dates;
import saddlewright.prescription.SignedDesign;

/** The boxes for the prescriber's signature and the countersignature, at the foot of the order. */
final class SignatureSection implements Section {
  private static final double HEIGHT = 27 * Sheet.MM;

  /** Low enough not to turn the page for a little room, high enough to sign in. */
  private static final double LEAST = 20 * Sheet.MM;

  private static final double LINE = 11.5;

  private final Printout printout;
  private final FormFields form;

  SignatureSection(Printout printout) {
    this.printout = printout;
    this.form = new FormFields(printout);
  }

  @Override
  public void write(Flow flow) throws IOException {
    boolean twice = hasCountersignature(form);
    double width = twice ? Fields.COLUMN : Flow.MEASURE;
    List<String> signed = lines(signed(), width);
    List<String> counter = lines(countersigned(), width);
    double words = 20 + LINE * (1.4 + Math.max(signed.size(), counter.size()));
    double least = Math.max(LEAST, words);
    double height = flow.room() < HEIGHT && flow.room() >= least ? least : Math.max(HEIGHT, words);
    flow.need(height);
    double top = flow.isAtTop() ? flow.y() : Math.max(flow.y(), flow.bottom() - height);
    box(flow, flow.left(), top, width, height, "Signature of the prescriber", signed);
    if (twice) {
      double x = flow.right() - width;
      box(flow, x, top, width, height, "Countersignature of the tutor or supervisor", counter);
    }
    flow.moveTo(top + height);
  }

  /** Whether the order has a box for a countersignature. */
  static boolean hasCountersignature(FormFields form) {
    return form.isRequired(Item.COUNTERSIGNED_BY.key())
        || !form.words(Item.COUNTERSIGNED_BY).isEmpty();
  }

  private static List<String> lines(List<String> sentences, double width) {
    List<String> out = new ArrayList<>();
    sentences.forEach(s -> out.addAll(Wrap.lines(s, Weight.REGULAR, Flow.BODY, width - 14)));
    return out;
  }

  private List<String> signed() {
    SignedDesign design = SignedDesign.of(printout.subject());
    if (design.signature().isEmpty()) {
      return List.of();
    }
    Signature by = design.signature().get();
    List<String> out = new ArrayList<>();
    out.add(
        (by.manner() == Signature.Manner.ELECTRONIC
                ? "Signed electronically by "
                : "Signed by hand by ")
            + by.name()
            + (by.registration().isBlank() ? "" : ", " + by.registration())
            + ", on "
            + Dates.words(by.on())
            + ".");
    if (design.saysWhat()) {
      out.add(
          design.holds()
              ? "The signature holds: the design is the one that was signed ("
                  + Printout.grouped(by.designHash())
                  + ")."
              : "The signature no longer holds: the design has been changed since.");
    }
    return out;
  }

  private List<String> countersigned() {
    String by = form.words(Item.COUNTERSIGNED_BY);
    String on = form.words(Item.COUNTERSIGNED_ON);
    return by.isEmpty()
        ? List.of()
        : List.of("Countersigned by " + by + (on.isEmpty() ? "" : ", on " + on) + ".");
  }

  private static void box(
      Flow flow,
      double x,
      double top,
      double width,
      double height,
      String title,
      List<String> lines)
      throws IOException {
    Sheet s = flow.sheet();
    s.begin(flow.tags().under(flow.tags().document(), "P"));
    s.text(x + 7, top + 11.5, title, Weight.BOLD, Fields.LABEL, Shade.INK);
    double y = top + 26;
    for (String line : lines) {
      s.text(x + 7, y, line, Weight.REGULAR, Flow.BODY, Shade.INK);
      y += LINE;
    }
    double foot = top + height - 6;
    if (lines.isEmpty()) {
      s.text(x + 7, foot, "Name, registration", Weight.REGULAR, 6.5, Shade.QUIET);
      s.text(x + width * 0.66, foot, "Date", Weight.REGULAR, 6.5, Shade.QUIET);
    }
    s.end();
    s.beginArtifact();
    s.box(x, top, width, height, 0.9, Shade.INK);
    if (lines.isEmpty()) {
      s.rule(x + 7, foot - 8, x + width * 0.62, 0.5, Shade.RULE);
      s.rule(x + width * 0.66, foot - 8, x + width - 7, 0.5, Shade.RULE);
    }
    s.end();
  }
}
