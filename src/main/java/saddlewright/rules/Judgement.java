package saddlewright.rules;

import java.util.List;

/**
 * One arch with what every rule of the book has to say of it.
 *
 * @param verdicts one for each rule, in the order of {@link RuleBook#rules()}
 */
public record Judgement(Situation situation, List<Verdict> verdicts) {
  public Judgement {
    verdicts = List.copyOf(verdicts);
  }

  public static Judgement of(Situation situation) {
    return new Judgement(
        situation, RuleBook.rules().stream().map(r -> r.judge(situation)).toList());
  }

  /** The judgement of the next situation; that of the very same is taken over. */
  public Judgement next(Situation next) {
    return next == situation ? this : of(next);
  }
}
