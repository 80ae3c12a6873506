package saddlewright.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import saddlewright.archform.ArchForm;
import saddlewright.chart.ArchChart;
import saddlewright.dentition.Arch;
import saddlewright.dentition.End;
import saddlewright.dentition.Face;
import saddlewright.dentition.RestSite;
import saddlewright.dentition.Span;
import saddlewright.dentition.Tooth;
import saddlewright.dentition.Zone;
import saddlewright.design.ArchDesign;
import saddlewright.design.Clasp;
import saddlewright.design.ClaspForm;
import saddlewright.design.ClaspUnit;
import saddlewright.design.Component;
import saddlewright.design.ComponentId;
import saddlewright.design.DesignEdit;
import saddlewright.design.GuidePlate;
import saddlewright.design.MinorConnector;
import saddlewright.design.Plating;
import saddlewright.design.ReciprocalArm;
import saddlewright.design.Rest;

/** A clasp unit holds its tooth over more than 180 degrees, or the tooth slips out of it. */
class EmbraceTest {
  private static final ArchChart CHART = Mouths.missing(Arch.LOWER, 36, 37);

  private static double degrees(Tooth tooth, List<Component> parts) {
    Layout layout = Layout.of(ArchForm.of(CHART), new ArchDesign(Arch.LOWER, parts));
    return Embrace.of(layout, tooth).degrees();
  }

  private static List<Component> unit(ClaspUnit unit, Tooth tooth, Zone zone) {
    ArchDesign design = ArchDesign.empty(Arch.LOWER);
    for (Component c : unit.on(CHART, design, tooth, zone).parts()) {
      design = new DesignEdit.Place(c).applyTo(design);
    }
    return design.components();
  }

  private static List<Component> without(Class<?> kind, List<Component> parts) {
    return parts.stream().filter(c -> !kind.isInstance(c)).toList();
  }

  /** Arms of a three-arm clasp: 146 degrees over one face and 128 over the other, from one rest. */
  @Test
  void a_three_arm_clasp_holds_the_sum_of_its_two_arms() {
    List<Component> parts = unit(ClaspUnit.THREE_ARM, Tooth.T46, Zone.DISTOBUCCAL);
    assertThat(degrees(Tooth.T46, parts)).isCloseTo(146 + 128, within(4.0));
  }

  @Test
  void without_its_reciprocal_arm_it_holds_less_than_half() {
    List<Component> parts = unit(ClaspUnit.THREE_ARM, Tooth.T35, Zone.MESIOBUCCAL);
    assertThat(degrees(Tooth.T35, without(ReciprocalArm.class, parts))).isBetween(146.0, 179.0);
  }

  /** Rest and strut, plate and I-bar are three separate points around the tooth (Krol 1973). */
  @Test
  void three_points_count_by_the_widest_opening_between_them() {
    List<Component> parts = unit(ClaspUnit.RPI, Tooth.T35, Zone.MID_BUCCAL);
    assertThat(degrees(Tooth.T35, parts)).isBetween(200.0, 300.0);
    assertThat(degrees(Tooth.T35, without(GuidePlate.class, parts))).isLessThan(180);
    assertThat(degrees(Tooth.T35, without(Clasp.class, parts))).isLessThan(250);
  }

  @Test
  void a_strut_in_the_embrasure_touches_both_neighbours() {
    List<Component> strut =
        List.of(
            new MinorConnector(
                ComponentId.of("m"), Tooth.T44, MinorConnector.Place.DISTAL_EMBRASURE));
    assertThat(degrees(Tooth.T44, strut)).isPositive();
    assertThat(degrees(Tooth.T45, strut)).isPositive();
    assertThat(degrees(Tooth.T43, strut)).isZero();
  }

  @Test
  void plating_takes_the_lingual_half() {
    List<Component> plate = List.of(new Plating(ComponentId.of("p"), Span.of(34, 34)));
    assertThat(degrees(Tooth.T34, plate)).isCloseTo(180, within(4.0));
    List<Component> held =
        List.of(
            plate.get(0),
            Clasp.of(ComponentId.of("c"), Tooth.T34, ClaspForm.I_BAR, Zone.MID_BUCCAL, End.DISTAL));
    assertThat(degrees(Tooth.T34, held)).isGreaterThan(180);
  }

  @Test
  void a_ring_clasp_goes_nearly_all_the_way_round() {
    List<Component> ring = unit(ClaspUnit.RING, Tooth.T46, Zone.MESIOBUCCAL);
    assertThat(degrees(Tooth.T46, ring)).isGreaterThan(300);
  }

  /** Right and left are mirror images, and so are their sectors. */
  @Test
  void sides_are_alike() {
    for (Face face : Face.values()) {
      Component right = new ReciprocalArm(ComponentId.of("r"), Tooth.T44, face, End.MESIAL);
      Component left = right.mirrored(ComponentId.of("r"));
      assertThat(degrees(Tooth.T34, List.of(left)))
          .isCloseTo(degrees(Tooth.T44, List.of(right)), within(4.0));
    }
  }

  @Test
  void a_rest_alone_is_a_narrow_hold_and_nothing_is_none() {
    assertThat(
            degrees(
                Tooth.T46,
                List.of(Rest.of(ComponentId.of("r"), Tooth.T46, RestSite.MESIAL_OCCLUSAL))))
        .isBetween(15.0, 60.0);
    assertThat(degrees(Tooth.T46, List.of())).isZero();
  }
}
