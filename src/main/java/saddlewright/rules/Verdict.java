package saddlewright.rules;

import java.util.List;

/**
 * Everything that one rule has to say of one arch.
 *
 * @param findings what is wrong
 * @param questions what could not be judged
 * @param credits what answers the rule
 * @param applies whether the rule found anything to judge, or to ask about
 */
public record Verdict(
    List<Finding> findings, List<Question> questions, List<Credit> credits, boolean applies) {
  static final Verdict NOT_APPLICABLE = new Verdict(List.of(), List.of(), List.of(), false);

  public Verdict {
    findings = List.copyOf(findings);
    questions = List.copyOf(questions);
    credits = List.copyOf(credits);
  }
}
