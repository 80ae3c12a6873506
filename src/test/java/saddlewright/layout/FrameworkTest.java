package saddlewright.layout;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import saddlewright.archform.ArchForm;
import saddlewright.chart.ArchChart;
import saddlewright.dentition.Arch;
import saddlewright.dentition.RestSite;
import saddlewright.dentition.Span;
import saddlewright.dentition.Tooth;
import saddlewright.design.ArchDesign;
import saddlewright.design.ComponentId;
import saddlewright.design.ConnectorForm;
import saddlewright.design.MajorConnector;
import saddlewright.design.MinorConnector;
import saddlewright.design.Rest;

/** What hangs together is measured on the drawing (every part must be joined: common practice). */
class FrameworkTest {
  private static final ComponentId REST = ComponentId.of("rest");
  private static final ComponentId STRUT = ComponentId.of("strut");

  private final ArchDesign design =
      ArchDesign.empty(Arch.LOWER)
          .plus(
              MajorConnector.of(ComponentId.of("bar"), ConnectorForm.LINGUAL_BAR, Span.of(46, 36)))
          .plus(Rest.of(REST, Tooth.T34, RestSite.MESIAL_OCCLUSAL))
          .plus(new MinorConnector(STRUT, Tooth.T34, MinorConnector.Place.MESIAL_EMBRASURE));

  private static Framework framework(ArchDesign design) {
    return Layout.of(ArchForm.of(ArchChart.full(Arch.LOWER)), design).framework();
  }

  @Test
  void a_strut_joins_its_rest_to_the_bar() {
    assertThat(framework(design).isJoined(REST)).isTrue();
    assertThat(framework(design).gap(REST)).hasValue(0);
    assertThat(framework(design).metal().pieces()).hasSize(1);
  }

  @Test
  void a_rest_comes_loose_when_its_strut_is_taken_away() {
    Framework loose = framework(design.without(STRUT));
    assertThat(loose.isJoined(REST)).isFalse();
    // The bar keeps at least 3 mm from the margin, and the rest lies inside the crown.
    assertThat(loose.gap(REST).orElseThrow()).isGreaterThan(3);
    assertThat(loose.metal().pieces()).hasSize(2);
  }

  @Test
  void what_has_no_body_has_no_gap() {
    assertThat(framework(design).gap(ComponentId.of("absent"))).isEmpty();
  }
}
