package saddlewright.rules.placing;

import java.util.List;
import saddlewright.rules.Rule;

/** The rules of placing, sorted by name. */
public final class PlacingRules {
  public static final List<Rule> ALL =
      List.of(
          new ComponentsStandOnStandingTeeth(),
          new DesignsAreKeptSimple(),
          new EdentulousArchesNeedNoFramework(),
          new EveryReplacedToothHasASaddle(),
          new LoneTeethAreDoubtfulAbutments(),
          new RestsHaveRoomAboveThem(),
          new RestsSitOnPreparedSeats(),
          new RestsSuitTheKindOfTooth(),
          new RootsAreCoveredNotClasped(),
          new SaddlesDoNotOverlap(),
          new SaddlesEndAtReplacedTeeth(),
          new SaddlesLieOnGaps(),
          new SaddlesRunFromAbutmentToAbutment(),
          new ShortenedArchesAreConsidered(),
          new StandingThirdMolarsServe(),
          new WorkFollowsItsOrder());

  private PlacingRules() {}
}
