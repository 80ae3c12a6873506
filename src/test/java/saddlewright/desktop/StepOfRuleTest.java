package saddlewright.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import saddlewright.rules.Rule;
import saddlewright.rules.RuleBook;

/** The findings of every rule are counted at a step of the work. */
class StepOfRuleTest {
  @Test
  void every_rule_speaks_to_a_step_before_the_review() {
    Set<Step> reached = EnumSet.noneOf(Step.class);
    for (Rule r : RuleBook.rules()) {
      Step step = StepOfRule.of(Optional.of(r));
      assertThat(step).as(r.id()).isNotIn(Step.REVIEW, Step.PRESCRIPTION);
      reached.add(step);
    }
    assertThat(reached)
        .contains(Step.SADDLES, Step.SUPPORT, Step.RETENTION, Step.BRACING, Step.CONNECTORS)
        .contains(Step.INDIRECT_RETENTION);
  }
}
