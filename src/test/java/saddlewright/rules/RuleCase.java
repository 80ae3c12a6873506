package saddlewright.rules;

import java.util.LinkedHashMap;
import java.util.Map;

/**
 * Designs at which a rule fires, with the sentence it says, and designs at which it is silent.
 *
 * @param rule the rule
 * @param firing by what was done to the design
 * @param quiet by why there is nothing to say
 */
record RuleCase(Rule rule, Map<String, Firing> firing, Map<String, Situation> quiet) {

  /** A faulty design and the sentence of its first finding; # stands for a measured number. */
  record Firing(Situation situation, Severity severity, String sentence) {}

  static RuleCase of(Rule rule) {
    return new RuleCase(rule, new LinkedHashMap<>(), new LinkedHashMap<>());
  }

  /** Fires with the rule's own severity. */
  RuleCase fires(String name, Designs design, String sentence) {
    return fires(name, design, rule.severity(), sentence);
  }

  RuleCase fires(String name, Designs design, Severity severity, String sentence) {
    firing.put(name, new Firing(design.situation(), severity, sentence));
    return this;
  }

  RuleCase quiet(String name, Designs design) {
    quiet.put(name, design.situation());
    return this;
  }
}
