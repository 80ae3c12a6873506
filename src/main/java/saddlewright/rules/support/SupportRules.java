package saddlewright.rules.support;

import java.util.List;
import saddlewright.rules.Rule;

/** The rules of support, sorted by name. */
public final class SupportRules {
  public static final List<Rule> ALL =
      List.of(
          new BoundedSaddlesAreRestedAtBothEnds(),
          new DenturesHaveThreeRests(),
          new EmbrasureRestsComeInPairs(),
          new FreeEndRestsLieAwayFromTheSaddle(),
          new FreeEndSaddlesAreRested(),
          new RestsStandOnBothSides(),
          new RingClaspsHaveTwoRests(),
          new TiltedMolarsAreNotRestedMesiallyAlone());

  private SupportRules() {}
}
