package saddlewright.rules;

import java.util.stream.Collectors;
import saddlewright.archform.ArchForm;
import saddlewright.chart.ArchChart;
import saddlewright.classification.Classification;
import saddlewright.dentition.Arch;
import saddlewright.dentition.Tooth;
import saddlewright.design.ArchDesign;
import saddlewright.layout.Layout;

/**
 * All that a rule may look at for one arch, frozen.
 *
 * @param chart what was found in the mouth
 * @param opposing the chart of the other arch
 * @param classification class of the arch
 * @param form where teeth and landmarks lie
 * @param design the components
 * @param layout where the components lie
 * @param profile the school that judges
 */
public record Situation(
    ArchChart chart,
    ArchChart opposing,
    Classification classification,
    ArchForm form,
    ArchDesign design,
    Layout layout,
    Profile profile) {

  /** Derives everything from the charts and a design. */
  public static Situation of(
      ArchChart chart, ArchChart opposing, ArchDesign design, Profile profile) {
    return of(Layout.of(ArchForm.of(chart), design), opposing, profile);
  }

  /** The situation after an edit; what did not change is taken over. */
  public Situation next(
      ArchChart nextChart, ArchChart nextOpposing, ArchDesign nextDesign, Profile nextProfile) {
    if (!nextChart.equals(chart)) {
      return of(nextChart, nextOpposing, nextDesign, nextProfile);
    }
    if (!nextDesign.equals(design)) {
      return of(layout.redesigned(nextDesign), nextOpposing, nextProfile);
    }
    return nextOpposing.equals(opposing) && nextProfile.equals(profile)
        ? this
        : new Situation(chart, nextOpposing, classification, form, design, layout, nextProfile);
  }

  private static Situation of(Layout layout, ArchChart opposing, Profile profile) {
    ArchChart chart = layout.form().chart();
    ArchDesign design = layout.design();
    Classification c =
        Classification.of(
            chart,
            Tooth.in(chart.arch()).stream()
                .filter(design::usesAsAbutment)
                .collect(Collectors.toSet()));
    return new Situation(chart, opposing, c, layout.form(), design, layout, profile);
  }

  public Arch arch() {
    return chart.arch();
  }
}
