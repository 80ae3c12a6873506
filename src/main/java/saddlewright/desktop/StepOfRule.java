package saddlewright.desktop;

import java.util.Map;
import java.util.Optional;
import saddlewright.rules.Rule;
import saddlewright.rules.RuleGroup;

/** The step of the work to which a rule speaks. */
public final class StepOfRule {
  private static final Map<String, Step> STEPS =
      Map.ofEntries(
          Map.entry("PLACING", Step.SADDLES),
          Map.entry("SADDLES", Step.SADDLES),
          Map.entry("SUPPORT", Step.SUPPORT),
          Map.entry("RETENTION", Step.RETENTION),
          Map.entry("CLASPING", Step.RETENTION),
          Map.entry("UNDERCUT", Step.RETENTION),
          Map.entry("BRACING", Step.BRACING),
          Map.entry("FRAMEWORK", Step.CONNECTORS),
          Map.entry("UPPER_CONNECTOR", Step.CONNECTORS),
          Map.entry("LOWER_CONNECTOR", Step.CONNECTORS),
          Map.entry("HYGIENE", Step.CONNECTORS),
          Map.entry("INDIRECT", Step.INDIRECT_RETENTION),
          Map.entry("ABUTMENTS", Step.SURVEY));

  private StepOfRule() {}

  /** The step; a chapter that belongs to none is read in the review. */
  public static Step of(Optional<Rule> rule) {
    return rule.map(RuleGroup::of)
        .map(g -> STEPS.getOrDefault(g.name(), Step.REVIEW))
        .orElse(Step.REVIEW);
  }
}
