package saddlewright.rules.indirect;

import java.util.List;
import saddlewright.rules.Rule;

/** The rules of indirect retention, sorted by name. */
public final class IndirectRules {
  public static final List<Rule> ALL =
      List.of(
          new IndirectRetainersLieBeyondTheAxis(),
          new IndirectRetainersLieFarFromTheAxis(),
          new IndirectRetentionHasTwoClasps(),
          new LiftingSaddlesHaveAnIndirectRetainer());

  private IndirectRules() {}
}
