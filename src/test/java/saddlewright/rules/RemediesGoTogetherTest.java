package saddlewright.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import saddlewright.dentition.End;
import saddlewright.dentition.RestSite;
import saddlewright.dentition.Zone;
import saddlewright.design.Clasp;
import saddlewright.design.ClaspForm;
import saddlewright.design.ClaspMaterial;
import saddlewright.design.Rest;
import saddlewright.rules.clasping.RpiSetsAreComplete;
import saddlewright.rules.indirect.IndirectRetentionHasTwoClasps;
import saddlewright.rules.undercut.CastArmsAreLongEnough;
import saddlewright.rules.undercut.UndercutsSuitTheMaterial;

/** A remedy that is taken puts no other mistake in the place of the one that it clears. */
class RemediesGoTogetherTest {
  private final Rule shortArm = new CastArmsAreLongEnough();

  private Designs castArmOnPremolar() {
    return Designs.lowerClassOne()
        .without(Clasp.class, 35)
        .without(Rest.class, 35)
        .rest(35, RestSite.DISTAL_OCCLUSAL)
        .clasp(35, ClaspForm.CIRCUMFERENTIAL, Zone.MESIOBUCCAL, End.DISTAL);
  }

  private List<Remedy> offered(Designs d) {
    return shortArm.judge(d.situation()).findings().get(0).remedies();
  }

  private static Situation taken(Designs d, Remedy r) {
    Situation s = d.situation();
    return Situation.of(s.chart(), s.opposing(), r.edit().applyTo(s.design()), s.profile());
  }

  /** 0.25 mm for cast arms, 0.5 mm for gold and 0.75 mm for steel wire: British teaching notes. */
  @Test
  void an_arm_is_made_of_the_wire_that_suits_its_undercut() {
    for (double depth : new double[] {0.5, 0.75}) {
      Designs d = castArmOnPremolar().undercut(35, Zone.MESIOBUCCAL, depth);
      Remedy first = offered(d).get(0);
      assertThat(first.label()).isEqualTo("Make the arm wrought");
      assertThat(new UndercutsSuitTheMaterial().judge(taken(d, first)).findings()).isEmpty();
    }
    Designs gold = castArmOnPremolar().undercut(35, Zone.MESIOBUCCAL, 0.5);
    assertThat(taken(gold, offered(gold).get(0)).design().all(Clasp.class))
        .anyMatch(c -> c.material() == ClaspMaterial.WROUGHT_GOLD);
  }

  @Test
  void a_wire_that_wants_another_undercut_comes_last_and_says_so() {
    Designs d = castArmOnPremolar().undercut(35, Zone.MESIOBUCCAL, 0.25);
    assertThat(offered(d))
        .extracting(Remedy::label)
        .containsExactly(
            "Approach from below", "Make the arm wrought, and shape an undercut of 0.75 mm for it");
  }

  /** Mesial rest, guide plate and I-bar work as one set (Krol 1973). */
  @Test
  void a_bar_at_a_free_end_brings_its_set() {
    Designs d = castArmOnPremolar().undercut(35, Zone.MESIOBUCCAL, 0.25);
    Situation after = taken(d, offered(d).get(0));
    assertThat(after.design().all(Clasp.class)).anyMatch(c -> c.form() == ClaspForm.I_BAR);
    assertThat(new RpiSetsAreComplete().judge(after).findings()).isEmpty();
  }

  @Test
  void the_clasp_that_an_axis_lacks_is_offered_on_the_bare_terminal_abutment() {
    Designs d = Designs.lowerClassOne().without(Clasp.class, 45);
    Rule axis = new IndirectRetentionHasTwoClasps();
    Remedy first = axis.judge(d.situation()).findings().get(0).remedies().get(0);
    assertThat(first.label()).isEqualTo("Clasp 45");
    assertThat(axis.judge(taken(d, first)).findings()).isEmpty();
  }

  @Test
  void no_bar_is_offered_where_no_saddle_can_root_it() {
    Designs d =
        Designs.upperClassFour()
            .undercut(15, Zone.MESIOBUCCAL, 0.25)
            .rest(15, RestSite.DISTAL_OCCLUSAL)
            .clasp(15, ClaspForm.CIRCUMFERENTIAL, Zone.MESIOBUCCAL, End.DISTAL);
    assertThat(shortArm.judge(d.situation()).findings())
        .filteredOn(f -> f.sentence().startsWith("15"))
        .singleElement()
        .satisfies(
            f ->
                assertThat(f.remedies())
                    .extracting(Remedy::label)
                    .doesNotContain("Approach from below"));
  }
}
