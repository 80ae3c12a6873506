package saddlewright.rules;

import java.util.List;

/** One claim about a sound design. */
public interface Rule {
  /** Stable id in kebab case, the class name in other letters; also names its page. */
  String id();

  /** The claim in one sentence. */
  String claim();

  Severity severity();

  Source source();

  /** What is wrong with this design by this rule; empty when nothing is, or it does not apply. */
  List<Finding> judge(Situation situation);
}
