package saddlewright.rules.placing;

import java.util.List;
import saddlewright.rules.Rule;

/** The rules of the place of components, sorted by name. */
public final class PlacingRules {
  public static final List<Rule> ALL =
      List.of(
          new ComponentsStandOnStandingTeeth(),
          new EveryReplacedToothHasASaddle(),
          new RestsHaveRoomAboveThem(),
          new RestsSitOnPreparedSeats(),
          new RestsSuitTheKindOfTooth(),
          new SaddlesDoNotOverlap(),
          new SaddlesLieOnGaps());

  private PlacingRules() {}
}
