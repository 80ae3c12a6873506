package saddlewright.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import saddlewright.chart.ArchChart;
import saddlewright.dentition.Arch;
import saddlewright.dentition.Span;
import saddlewright.dentition.Tooth;
import saddlewright.design.ArchDesign;
import saddlewright.design.ComponentId;
import saddlewright.design.ConnectorForm;
import saddlewright.design.MajorConnector;
import saddlewright.design.MinorConnector;
import saddlewright.design.Plating;

/** Margins are covered where metal lies over them, and only there. */
class GumCoverTest {
  private static final ArchChart CHART = Mouths.missing(Arch.LOWER, 36, 37, 38, 46, 47, 48);

  private static GumCover gums(ArchDesign design) {
    return Mouths.laid(CHART, design).gums();
  }

  private static ArchDesign with(ConnectorForm form) {
    return ArchDesign.empty(Arch.LOWER)
        .plus(
            MajorConnector.of(ComponentId.of("major"), form, Span.of(Tooth.of(45), Tooth.of(35))));
  }

  @Test
  void nothingIsCoveredWithoutADenture() {
    assertThat(gums(ArchDesign.empty(Arch.LOWER)).share()).isEqualTo(0);
  }

  /** A bar keeps 3 mm off every margin; a dental bar lies on the crowns. */
  @Test
  void barsCoverNothing() {
    assertThat(gums(with(ConnectorForm.LINGUAL_BAR)).share()).isEqualTo(0);
    assertThat(gums(with(ConnectorForm.DENTAL_BAR)).share()).isEqualTo(0);
  }

  @Test
  void aPlateCoversTheMarginsOfAllTheTeethThatItPasses() {
    GumCover gums = gums(with(ConnectorForm.LINGUAL_PLATE));
    assertThat(gums.covered()).hasSize(10);
    assertThat(gums.share()).isGreaterThan(0.85);
  }

  @Test
  void platingCoversItsOwnTeethAlone() {
    Plating plating = new Plating(ComponentId.of("plating"), Span.of(Tooth.of(32), Tooth.of(31)));
    GumCover gums = gums(with(ConnectorForm.LINGUAL_BAR).plus(plating));
    assertThat(gums.covered()).containsExactly(Tooth.T31, Tooth.T32);
    assertThat(gums.isCovered(Tooth.T31, plating.id())).isTrue();
  }

  /** A strut is 2 to 3 mm wide where it crosses the margin of a canine, and covers that much. */
  @Test
  void aStrutCoversItsOwnWidth() {
    GumCover gums =
        gums(
            with(ConnectorForm.LINGUAL_BAR)
                .plus(
                    new MinorConnector(
                        ComponentId.of("strut"), Tooth.T33, MinorConnector.Place.LINGUAL_FACE)));
    assertThat(gums.share(Tooth.T33) * gums.length(Tooth.T33)).isCloseTo(2.3, within(0.8));
    assertThat(gums.covered()).isEmpty();
  }
}
