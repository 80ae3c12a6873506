package saddlewright.rules;

import saddlewright.design.Subject;

/**
 * What a component does for a rule: a line of the design's own argument.
 *
 * @param ruleId the rule that it answers
 * @param subject the component, or another subject that earns it
 * @param words a verb phrase that goes on from its name: "supports saddle 46 at its far end"
 */
public record Credit(String ruleId, Subject subject, String words) {}
