package saddlewright.desktop;

import java.util.Optional;
import saddlewright.rules.Rule;
import saddlewright.rules.RuleGroup;

/** The step of the work to which a rule speaks. */
public final class StepOfRule {
  private StepOfRule() {}

  public static Step of(Optional<Rule> rule) {
    return rule.map(RuleGroup::of).map(StepOfRule::of).orElse(Step.REVIEW);
  }

  private static Step of(RuleGroup group) {
    return switch (group) {
      case PLACING -> Step.SADDLES;
      case SUPPORT -> Step.SUPPORT;
      case RETENTION -> Step.RETENTION;
      case BRACING -> Step.BRACING;
      case FRAMEWORK -> Step.CONNECTORS;
      case INDIRECT -> Step.INDIRECT_RETENTION;
      case ABUTMENTS -> Step.SURVEY;
      default -> Step.REVIEW;
    };
  }
}
