package saddlewright.prescription.pdf;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import saddlewright.dentition.Arch;
import saddlewright.drawing.ArchDrawing;
import saddlewright.drawing.Drawing;
import saddlewright.drawing.DrawingOptions;
import saddlewright.geometry.Box;
import saddlewright.geometry.Transform;
import saddlewright.layout.Layout;
import saddlewright.prescription.Category;
import saddlewright.prescription.Schedule;
import saddlewright.prescription.growth.GrowthStage;

/**
 * The design as it grows, step by step in the order in which it is taught, at half scale: the only
 * drawings of the document that are not at true scale, and each says so.
 */
final class GrowthSection implements Section {
  private static final double SCALE = 0.5;

  /** In millimetres: small drawings need fewer points. */
  private static final double FINEST = 0.03;

  private static final int IN_A_ROW = 3;
  private static final double GUTTER = 6 * Sheet.MM;
  private static final double CAPTION = 34;

  /** The stages at which components are placed. */
  private static final List<GrowthStage> STEPS =
      List.of(
          GrowthStage.SADDLES,
          GrowthStage.SUPPORT,
          GrowthStage.RETENTION,
          GrowthStage.BRACING,
          GrowthStage.CONNECTORS,
          GrowthStage.INDIRECT_RETENTION);

  private final Printout printout;

  GrowthSection(Printout printout) {
    this.printout = printout;
  }

  @Override
  public void write(Flow flow) throws IOException {
    for (Arch arch : Arch.values()) {
      if (!printout.schedule().in(arch).isEmpty()) {
        arch(flow, arch);
      }
    }
  }

  private void arch(Flow flow, Arch arch) throws IOException {
    List<Drawing> steps = new ArrayList<>();
    for (GrowthStage step : STEPS) {
      steps.add(at(arch, step));
    }
    double cell = (Flow.MEASURE - GUTTER * (IN_A_ROW - 1)) / IN_A_ROW;
    double height =
        steps.stream().mapToDouble(d -> DrawingPainter.extent(d).height()).max().orElse(0)
            * Sheet.MM;
    flow.need(height + CAPTION + 50);
    flow.heading("The design step by step: " + arch.code() + " arch");
    flow.paragraph(
        "Drawn at scale 1:2, half of true size; do not measure on these drawings.", 8, Shade.QUIET);
    flow.gap(3);
    for (int i = 0; i < steps.size(); i += IN_A_ROW) {
      flow.need(height + CAPTION);
      double top = flow.y();
      for (int j = i; j < Math.min(i + IN_A_ROW, steps.size()); j++) {
        double x = flow.left() + (j - i) * (cell + GUTTER);
        step(flow, steps.get(j), arch, j, x, top, cell, height);
      }
      flow.moveTo(top + height + CAPTION);
    }
  }

  /** The arch with all components up to a step, turned as on the design sheet, at half scale. */
  private Drawing at(Arch arch, GrowthStage step) {
    Layout whole = printout.assessment().arch(arch).layout();
    double turn = arch == Arch.LOWER ? -1 : 1;
    return ArchDrawing.of(step.of(whole), new DrawingOptions(printout.notation(), false, false))
        .transformed(Transform.scaling(SCALE, turn * SCALE));
  }

  private void step(
      Flow flow, Drawing d, Arch arch, int index, double x, double top, double cell, double height)
      throws IOException {
    Category category = STEPS.get(index).category().orElseThrow();
    Box extent = DrawingPainter.extent(d);
    String added = added(arch, category);
    String caption =
        (index + 1)
            + ". "
            + category.title()
            + " (1:2)"
            + "\n"
            + (added.isEmpty() ? "nothing is added" : "added: " + added);
    double left = x + (cell - extent.width() * Sheet.MM) / 2;
    var area = flow.sheet().area(left, top, extent.width() * Sheet.MM, height);
    var figure =
        flow.tags()
            .figure(
                flow.tags().document(),
                "The "
                    + arch.code()
                    + " design after the step of "
                    + category.title().toLowerCase(Locale.ROOT)
                    + ", at half scale.",
                area);
    flow.sheet().begin(figure);
    DrawingPainter.paint(
        d,
        printout.options().palette(),
        flow.sheet(),
        left - extent.minX() * Sheet.MM,
        top - extent.minY() * Sheet.MM,
        FINEST);
    flow.sheet().end();
    flow.sheet().begin(flow.tags().under(flow.tags().document(), "Caption"));
    double y = top + height + 11;
    List<String> lines = Wrap.lines(caption, Weight.REGULAR, Flow.SMALL, cell);
    for (String line : lines.subList(0, Math.min(2, lines.size()))) {
      flow.sheet().text(x, y, line, Weight.REGULAR, Flow.SMALL, Shade.INK);
      y += Flow.leading(Flow.SMALL);
    }
    flow.sheet().end();
  }

  private String added(Arch arch, Category category) {
    List<Integer> numbers =
        printout.schedule().in(arch).stream()
            .filter(l -> l.category() == category)
            .map(Schedule.Line::number)
            .toList();
    if (numbers.isEmpty()) {
      return "";
    }
    return numbers.size() < 3
        ? numbers.stream().map(n -> "no. " + n).collect(Collectors.joining(", "))
        : "nos. " + numbers.get(0) + "–" + numbers.get(numbers.size() - 1);
  }
}
