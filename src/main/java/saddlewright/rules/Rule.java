package saddlewright.rules;

/** One claim about a sound design. */
public interface Rule {
  /** The claim with its id, severity and source. */
  Claim stated();

  /** Says everything that the rule has to say of this design; it changes nothing else. */
  void weigh(Situation situation, Judging on);

  /** The verdict of the rule, weighed as the school of the situation weighs it. */
  default Verdict judge(Situation situation) {
    if (!situation.profile().teaches(this)) {
      return Verdict.NOT_APPLICABLE;
    }
    Judging on = new Judging(stated(), situation.profile());
    weigh(situation, on);
    return on.verdict();
  }

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
}
