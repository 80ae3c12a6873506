package saddlewright.prescription.pdf;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import saddlewright.casefile.order.Disinfection;
import saddlewright.dentition.Arch;
import saddlewright.prescription.Dates;

/** Small labels to cut out: one for the cast of each arch, one for the parcel. */
final class LabelSection implements Section {
  private static final double WIDTH = 54 * Sheet.MM;
  private static final double HEIGHT = 26 * Sheet.MM;
  private static final double GUTTER = 6 * Sheet.MM;
  private static final double INSET = 6;

  private record Label(String title, List<String> lines) {}

  private final Printout printout;

  LabelSection(Printout printout) {
    this.printout = printout;
  }

  @Override
  public void write(Flow flow) throws IOException {
    flow.need(HEIGHT + 70);
    flow.heading("Labels to cut out");
    flow.gap(2);
    double x = flow.left();
    double top = flow.y();
    for (Label l : labels()) {
      label(flow, l, x, top);
      x += WIDTH + GUTTER;
    }
    flow.moveTo(top + HEIGHT + 8);
  }

  private List<Label> labels() {
    String state =
        "Revision "
            + printout.revision().number()
            + " · "
            + Printout.grouped(printout.revision().hash());
    List<Label> out = new ArrayList<>();
    for (Arch arch : Arch.values()) {
      out.add(
          new Label(
              Printout.name(arch) + " cast",
              List.of(
                  "Patient's cast, disinfected on " + day(arch),
                  "Teeth " + printout.notation() + " · tripod marks: keep",
                  state)));
    }
    out.add(
        new Label(
            "Disinfected",
            List.of(
                "All that was in the mouth and is packed here has been disinfected and rinsed.",
                "On __________ By __________",
                state)));
    return out;
  }

  /** The day on which something of that arch was disinfected, where it is known. */
  private String day(Arch arch) {
    return printout.details().disinfections().stream()
        .filter(d -> d.what().toLowerCase(Locale.ROOT).contains(arch.code()))
        .map(Disinfection::on)
        .flatMap(Optional::stream)
        .max(java.util.Comparator.naturalOrder())
        .map(d -> Dates.words(d))
        .orElse("__________");
  }

  private void label(Flow flow, Label l, double x, double top) throws IOException {
    Sheet s = flow.sheet();
    double width = WIDTH - 2 * INSET;
    s.begin(flow.tags().under(flow.tags().document(), "P"));
    String ref = printout.reference().isEmpty() ? "Case ____________" : printout.reference();
    double y = top + 13;
    s.text(x + INSET, y, shortened(ref, Weight.BOLD, 9.5, width), Weight.BOLD, 9.5, Shade.INK);
    y += 12;
    s.text(x + INSET, y, l.title(), Weight.BOLD, 9, Shade.INK);
    y += 4;
    for (String line : l.lines()) {
      for (String part : Wrap.lines(line, Weight.REGULAR, 6.5, width)) {
        y += 8.2;
        s.text(x + INSET, y, part, Weight.REGULAR, 6.5, Shade.INK);
      }
    }
    s.end();
    s.beginArtifact();
    s.dashedBox(x, top, WIDTH, HEIGHT, 0.6, Shade.QUIET);
    s.end();
  }

  private static String shortened(String words, Weight weight, double size, double width) {
    List<String> lines = Wrap.lines(words, weight, size, width);
    return lines.size() < 2 ? words : lines.get(0);
  }
}
