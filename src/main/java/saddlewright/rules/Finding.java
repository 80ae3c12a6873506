package saddlewright.rules;

import java.util.List;
import java.util.stream.Collectors;
import saddlewright.dentition.Arch;
import saddlewright.design.Subject;

/**
 * What a rule has to say of a design.
 *
 * @param ruleId the rule, such as "saddle-supported-at-both-ends"
 * @param severity how much it weighs in the school that judges
 * @param arch the arch it concerns
 * @param subjects what it is about, the chief one first; never empty
 * @param sentence one plain sentence: subject: fact (actual against required)
 * @param comparison the measured and the required value
 * @param remedies edits that would clear it, best first
 */
public record Finding(
    String ruleId,
    Severity severity,
    Arch arch,
    List<Subject> subjects,
    String sentence,
    Comparison comparison,
    List<Remedy> remedies) {

  public Finding {
    subjects = List.copyOf(subjects);
    remedies = List.copyOf(remedies);
    if (subjects.isEmpty()) {
      throw new IllegalArgumentException("a finding needs a subject");
    }
  }

  /** The same finding of another weight. */
  public Finding weighing(Severity other) {
    return other == severity
        ? this
        : new Finding(ruleId, other, arch, subjects, sentence, comparison, remedies);
  }

  /** Identity of the finding: its rule and subjects, never its text. */
  public String key() {
    return ruleId
        + "@"
        + subjects.stream().map(Subject::key).sorted().collect(Collectors.joining("+"));
  }

  /** The facts that a waiver was given for; when they change, the waiver is stale. */
  public String facts() {
    return comparison.actual() + " / " + comparison.required();
  }
}
