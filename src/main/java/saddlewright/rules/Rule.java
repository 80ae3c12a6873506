package saddlewright.rules;

import java.util.List;
import saddlewright.design.Subject;

/** One claim about a sound design. */
public interface Rule {
  /** The claim with its id, severity and source. */
  Claim stated();

  /** What is wrong with this design by this rule; empty when nothing is, or it does not apply. */
  List<Finding> judge(Situation situation);

  /** Stable id in kebab case, the class name in other letters; also names its page. */
  default String id() {
    return stated().id();
  }

  /** The claim in one sentence. */
  default String claim() {
    return stated().sentence();
  }

  /** The gravest severity of its findings. */
  default Severity severity() {
    return stated().severity();
  }

  default Source source() {
    return stated().source();
  }

  /** Whether no waiver can answer its findings. */
  default boolean isHardStop() {
    return false;
  }

  /**
   * Begins a finding.
   *
   * @param name of its chief subject, as the sentence begins
   * @param subjects what it is about, the chief one first
   */
  default Draft finding(String name, Subject... subjects) {
    return new Draft(stated(), name, List.of(subjects));
  }
}
