package saddlewright.mechanics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import saddlewright.dentition.End;
import saddlewright.dentition.RestSite;
import saddlewright.dentition.Tooth;
import saddlewright.dentition.Zone;
import saddlewright.design.ClaspForm;
import saddlewright.design.Rest;
import saddlewright.design.Saddle;
import saddlewright.geometry.Point;
import saddlewright.layout.Layout;
import saddlewright.rules.Designs;

/** Lever arms of real designs, checked against the places that they are made of. */
class IndirectRetentionTest {

  private static IndirectRetention classOne() {
    Layout layout = Designs.lowerClassOne().situation().layout();
    Saddle left = layout.design().saddleAt(Tooth.T36).orElseThrow();
    return IndirectRetention.aboutClasps(layout, left).orElseThrow();
  }

  @Test
  void a_symmetric_class_one_turns_about_a_line_straight_across() {
    IndirectRetention facts = classOne();
    assertThat(facts.axis().from().y()).isCloseTo(facts.axis().to().y(), within(0.05));
    Layout layout = Designs.lowerClassOne().situation().layout();
    Point last = layout.form().tooth(Tooth.T37).centre();
    assertThat(facts.load()).isEqualTo(last);
    assertThat(facts.loadDistance()).isCloseTo(last.y() - facts.axis().from().y(), within(0.05));
  }

  @Test
  void canine_rests_lie_beyond_and_both_equally_far() {
    IndirectRetention facts = classOne();
    List<Rest> marked =
        facts.rests().stream()
            .map(IndirectRetention.Reach::rest)
            .filter(Rest::indirectRetainer)
            .toList();
    assertThat(marked).hasSize(2);
    assertThat(facts.reach(marked.get(0))).isPositive();
    assertThat(facts.reach(marked.get(0))).isCloseTo(facts.reach(marked.get(1)), within(0.05));
    assertThat(facts.leverRatio(marked.get(0)))
        .isCloseTo(facts.reach(marked.get(0)) / facts.loadDistance(), within(1e-12));
  }

  @Test
  void the_support_axis_leaves_marked_retainers_out() {
    Layout layout = Designs.lowerClassOne().situation().layout();
    Saddle left = layout.design().saddleAt(Tooth.T36).orElseThrow();
    IndirectRetention facts = IndirectRetention.aboutRests(layout, left).orElseThrow();
    Point seat = layout.form().tooth(Tooth.T35).seat(RestSite.MESIAL_OCCLUSAL);
    assertThat(facts.axis().to()).isEqualTo(seat);
  }

  @Test
  void clasps_at_all_four_corners_leave_a_bounded_saddle_next_to_no_lever() {
    Layout two = Designs.upperClassThree().situation().layout();
    Layout four =
        Designs.upperClassThree()
            .clasp(13, ClaspForm.I_BAR, Zone.DISTOBUCCAL, End.DISTAL)
            .clasp(23, ClaspForm.I_BAR, Zone.DISTOBUCCAL, End.DISTAL)
            .situation()
            .layout();
    assertThat(lever(two)).isGreaterThan(10);
    assertThat(lever(four)).isLessThan(4);
  }

  private static double lever(Layout layout) {
    Saddle right = layout.design().saddleAt(Tooth.T14).orElseThrow();
    return IndirectRetention.aboutClasps(layout, right)
        .map(IndirectRetention::loadDistance)
        .orElse(0.0);
  }
}
