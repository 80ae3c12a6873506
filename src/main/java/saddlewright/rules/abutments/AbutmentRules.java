package saddlewright.rules.abutments;

import java.util.List;
import saddlewright.rules.Rule;

/** The rules of abutments and occlusion, sorted by name. */
public final class AbutmentRules {
  public static final List<Rule> ALL =
      List.of(
          new AbutmentsAreFirm(),
          new AbutmentsAreFreeOfDecay(),
          new AbutmentsHaveEnoughBone(),
          new AbutmentsHaveEnoughRoot(),
          new AbutmentsLeanLittle(),
          new CombinationSyndromeIsForeseen(),
          new FreeEndRidgesAreRecordedUnderLoad(),
          new ReplacedTeethHaveAnOpponent(),
          new RootFilledAbutmentsAreSpared(),
          new WeakAbutmentsShareTheirLoad());

  private AbutmentRules() {}
}
