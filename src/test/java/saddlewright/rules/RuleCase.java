package saddlewright.rules;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Supplier;

/**
 * Designs at which a rule fires, with the sentence it says, and designs at which it is silent.
 *
 * @param rule the rule
 * @param firing by what was done to the design
 * @param quiet by why there is nothing to say
 * @param asking by what was not charted
 * @param upholding by what answers the rule
 */
record RuleCase(
    Rule rule,
    Map<String, Firing> firing,
    Map<String, Supplier<Situation>> quiet,
    Map<String, Spoken> asking,
    Map<String, Spoken> upholding) {

  /** A faulty design and the sentence of its first finding; # stands for a measured number. */
  record Firing(Supplier<Situation> design, Severity severity, String sentence) {
    Situation situation() {
      return design.get();
    }
  }

  /** A design and the words that the rule has for it; # stands for a measured number. */
  record Spoken(Supplier<Situation> design, String words) {
    Situation situation() {
      return design.get();
    }
  }

  static RuleCase of(Rule rule) {
    return new RuleCase(
        rule,
        new LinkedHashMap<>(),
        new LinkedHashMap<>(),
        new LinkedHashMap<>(),
        new LinkedHashMap<>());
  }

  /** Fires with the rule's own severity. */
  RuleCase fires(String name, Designs design, String sentence) {
    return fires(name, design, rule.severity(), sentence);
  }

  RuleCase fires(String name, Designs design, Severity severity, String sentence) {
    firing.put(name, new Firing(design.frozen(), severity, sentence));
    return this;
  }

  /** Cannot be judged; the words name the wanting value, such as "lingual sulcus depth at 31". */
  RuleCase asks(String name, Designs design, String field) {
    asking.put(name, new Spoken(design.frozen(), field));
    return this;
  }

  /** Is answered, by a credit in these words. */
  RuleCase upholds(String name, Designs design, String credit) {
    upholding.put(name, new Spoken(design.frozen(), credit));
    return this;
  }

  RuleCase quiet(String name, Designs design) {
    quiet.put(name, design.frozen());
    return this;
  }
}
