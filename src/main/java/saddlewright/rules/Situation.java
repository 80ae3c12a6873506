package saddlewright.rules;

import java.util.stream.Collectors;
import saddlewright.archform.ArchForm;
import saddlewright.chart.ArchChart;
import saddlewright.classification.Classification;
import saddlewright.dentition.Arch;
import saddlewright.dentition.Tooth;
import saddlewright.design.ArchDesign;
import saddlewright.layout.Layout;

/** All that a rule may look at for one arch, frozen. */
public record Situation(
    ArchChart chart,
    Classification classification,
    ArchForm form,
    ArchDesign design,
    Layout layout,
    Profile profile) {

  /** Derives everything from a chart and a design. */
  public static Situation of(ArchChart chart, ArchDesign design, Profile profile) {
    return of(Layout.of(ArchForm.of(chart), design), profile);
  }

  /** The situation after an edit; the arch form is taken over where the chart did not change. */
  public Situation next(ArchChart nextChart, ArchDesign nextDesign) {
    if (!nextChart.equals(chart)) {
      return of(nextChart, nextDesign, profile);
    }
    return nextDesign.equals(design) ? this : of(layout.redesigned(nextDesign), profile);
  }

  private static Situation of(Layout layout, Profile profile) {
    ArchChart chart = layout.form().chart();
    ArchDesign design = layout.design();
    Classification c =
        Classification.of(
            chart,
            Tooth.in(chart.arch()).stream()
                .filter(design::usesAsAbutment)
                .collect(Collectors.toSet()));
    return new Situation(chart, c, layout.form(), design, layout, profile);
  }

  public Arch arch() {
    return chart.arch();
  }
}
