package saddlewright.layout;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import saddlewright.chart.ArchChart;
import saddlewright.dentition.Arch;
import saddlewright.dentition.RestSite;
import saddlewright.dentition.Tooth;
import saddlewright.design.ArchDesign;
import saddlewright.design.ComponentId;
import saddlewright.design.ConnectorForm;
import saddlewright.design.MinorConnector;
import saddlewright.design.Rest;

class LayoutTest {
  private static final ArchChart CHART = Mouths.missing(Arch.LOWER, 36, 37, 46, 47);

  /** A part tried for size lies where it would lie once it is placed. */
  @Test
  void aFurtherPartLiesAsInALayoutMadeAnew() {
    ArchDesign design = Mouths.designed(CHART, ConnectorForm.LINGUAL_BAR);
    MinorConnector strut =
        new MinorConnector(ComponentId.of("strut"), Tooth.T33, MinorConnector.Place.LINGUAL_FACE);
    Rest rest = Rest.of(ComponentId.of("rest"), Tooth.T34, RestSite.MESIAL_OCCLUSAL);
    Layout grown = Mouths.laid(CHART, design).plus(strut).plus(rest);
    Layout anew = Mouths.laid(CHART, design.plus(strut).plus(rest));
    assertThat(grown.design()).isEqualTo(anew.design());
    for (ComponentId id : new ComponentId[] {strut.id(), rest.id()}) {
      assertThat(grown.find(id).orElseThrow().measures())
          .isEqualTo(anew.find(id).orElseThrow().measures());
      assertThat(grown.find(id).orElseThrow().body().box())
          .isEqualTo(anew.find(id).orElseThrow().body().box());
    }
  }
}
