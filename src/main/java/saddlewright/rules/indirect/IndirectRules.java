package saddlewright.rules.indirect;

import java.util.List;
import saddlewright.rules.Rule;

/** The rules of indirect retention, sorted by name. */
public final class IndirectRules {
  public static final List<Rule> ALL =
      List.of(
          new ClassFourIndirectRetainersLieFarBack(),
          new ClassOneIndirectRetainersStandOnBothSides(),
          new ClassTwoIndirectRetainersStandOnTheDentateSide(),
          new DoubtfulTeethAreDesignedForLoss(),
          new IndirectRetainersLieBeyondBothAxes(),
          new IndirectRetainersLieBeyondTheAxis(),
          new IndirectRetainersLieFarFromTheAxis(),
          new IndirectRetainersSitOnStrongTeeth(),
          new IndirectRetentionHasTwoClasps(),
          new LeverRatiosAreFavourable(),
          new LiftingSaddlesHaveAnIndirectRetainer(),
          new PlatesAreNotIndirectRetainers(),
          new ToothBorneDenturesNeedNoIndirectRetainer());

  private IndirectRules() {}
}
