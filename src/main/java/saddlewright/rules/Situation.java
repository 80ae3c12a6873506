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
    Classification c =
        Classification.of(
            chart,
            Tooth.in(chart.arch()).stream()
                .filter(design::usesAsAbutment)
                .collect(Collectors.toSet()));
    ArchForm form = ArchForm.of(chart);
    return new Situation(chart, c, form, design, Layout.of(form, design), profile);
  }

  public Arch arch() {
    return chart.arch();
  }
}
