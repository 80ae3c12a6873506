package saddlewright.design;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import saddlewright.chart.ArchChart;
import saddlewright.chart.GapDecision;
import saddlewright.chart.ToothFindings;
import saddlewright.chart.ToothStatus;
import saddlewright.dentition.Arch;
import saddlewright.dentition.End;
import saddlewright.dentition.Face;
import saddlewright.dentition.RestSite;
import saddlewright.dentition.Side;
import saddlewright.dentition.Span;
import saddlewright.dentition.Tooth;
import saddlewright.dentition.Zone;

class MirroredTest {
  /** 36–38 and 46–48 missing, and 34. */
  private static ArchChart chart() {
    ArchChart c = ArchChart.full(Arch.LOWER);
    for (int fdi : new int[] {34, 36, 37, 38, 46, 47, 48}) {
      c = c.with(Tooth.of(fdi), ToothFindings.of(ToothStatus.MISSING, GapDecision.REPLACED));
    }
    return c;
  }

  private static final Rest REST =
      Rest.of(ComponentId.of("rest-1"), Tooth.T45, RestSite.MESIAL_OCCLUSAL);
  private static final Clasp CLASP =
      Clasp.of(ComponentId.of("clasp-1"), Tooth.T45, ClaspForm.I_BAR, Zone.MID_BUCCAL, End.DISTAL);
  private static final ReciprocalArm ON_44 =
      new ReciprocalArm(ComponentId.of("recip-1"), Tooth.T44, Face.LINGUAL, End.MESIAL);
  private static final Saddle SADDLE = Saddle.of(ComponentId.of("saddle-1"), Span.of(46, 48));
  private static final MajorConnector BAR =
      MajorConnector.of(ComponentId.of("connector-1"), ConnectorForm.LINGUAL_BAR, Span.of(45, 35));

  private static ArchDesign design(Component... components) {
    return new ArchDesign(Arch.LOWER, List.of(components));
  }

  @Test
  void what_stands_on_teeth_goes_to_the_same_place_of_the_other_side() {
    ArchDesign d = design(REST, CLASP, SADDLE);
    Mirrored m = Mirrored.of(chart(), d, d.components());
    assertThat(m.left()).isEmpty();
    assertThat(m.placed())
        .extracting(c -> c.teeth().toString())
        .containsExactly("[35]", "[35]", "[36, 37, 38]");
    assertThat(m.edit().orElseThrow().applyTo(d).components()).hasSize(6);
  }

  @Test
  void what_the_other_side_cannot_bear_is_named_and_left() {
    ArchDesign d = design(ON_44, BAR, REST);
    Mirrored m = Mirrored.of(chart(), d, d.components());
    assertThat(m.left()).containsExactly(ON_44, BAR);
    assertThat(m.placed()).hasSize(1);
  }

  @Test
  void what_is_there_already_is_not_placed_again() {
    ArchDesign d = design(REST, REST.mirrored(ComponentId.of("rest-2")));
    Mirrored m = Mirrored.of(chart(), d, List.of(REST));
    assertThat(m.placed()).isEmpty();
    assertThat(m.left()).isEmpty();
  }

  @Test
  void one_side_is_made_like_the_other_and_keeps_what_is_right() {
    Rest right = (Rest) REST.mirrored(ComponentId.of("rest-2"));
    Rest wrong = Rest.of(ComponentId.of("rest-3"), Tooth.T33, RestSite.CINGULUM);
    ArchDesign d = design(REST, CLASP, BAR, right, wrong);
    ArchDesign next = Mirrored.side(chart(), d, Side.RIGHT).orElseThrow().applyTo(d);
    assertThat(next.find(right.id())).hasValue(right);
    assertThat(next.find(wrong.id())).isEmpty();
    assertThat(next.find(BAR.id())).hasValue(BAR);
    assertThat(next.all(Clasp.class))
        .extracting(Clasp::tooth)
        .containsExactly(Tooth.T45, Tooth.T35);
    assertThat(Mirrored.side(chart(), next, Side.RIGHT)).as("once is enough").isEmpty();
  }

  @Test
  void to_a_clasp_belong_its_rest_and_arm_and_to_a_saddle_its_metalwork() {
    RetentionMesh mesh =
        new RetentionMesh(ComponentId.of("mesh-1"), Span.of(46, 47), RetentionMesh.Form.LATTICE);
    ArchDesign d = design(REST, CLASP, ON_44, SADDLE, mesh, BAR);
    assertThat(Belonging.to(d, CLASP)).containsExactly(REST, CLASP);
    assertThat(Belonging.to(d, SADDLE)).containsExactly(SADDLE, mesh);
    assertThat(Belonging.to(d, BAR)).containsExactly(BAR);
  }
}
