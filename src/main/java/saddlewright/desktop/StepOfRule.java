package saddlewright.desktop;

import java.util.Optional;
import saddlewright.rules.Rule;
import saddlewright.rules.RuleGroup;

/** The step of the work to which a rule speaks. */
public final class StepOfRule {
  private StepOfRule() {}

  /** The step; what belongs to no rule is read in the review. */
  public static Step of(Optional<Rule> rule) {
    return rule.map(RuleGroup::of).map(StepOfRule::of).orElse(Step.REVIEW);
  }

  private static Step of(RuleGroup chapter) {
    return switch (chapter) {
      case ABUTMENTS -> Step.SURVEY;
      case PLACING, SADDLES -> Step.SADDLES;
      case SUPPORT -> Step.SUPPORT;
      case RETENTION, CLASPING, UNDERCUT -> Step.RETENTION;
      case BRACING -> Step.BRACING;
      case FRAMEWORK, UPPER_CONNECTOR, LOWER_CONNECTOR, HYGIENE -> Step.CONNECTORS;
      case INDIRECT -> Step.INDIRECT_RETENTION;
    };
  }
}
