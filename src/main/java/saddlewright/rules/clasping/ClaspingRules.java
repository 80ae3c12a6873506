package saddlewright.rules.clasping;

import java.util.List;
import saddlewright.rules.Rule;

/** The rules of clasping, sorted by name. */
public final class ClaspingRules {
  public static final List<Rule> ALL =
      List.of(
          new BackActionClaspsAreAvoided(),
          new BarArmsAvoidFrena(),
          new BarArmsAvoidLinguallyTiltedTeeth(),
          new BarArmsAvoidTissueUndercuts(),
          new BarArmsClearTheGingivalMargin(),
          new BarArmsCrossTheMarginSquarely(),
          new BarArmsHaveRoomInTheSulcus(),
          new BarArmsInShortGapsAreAvoided(),
          new EmbrasureClaspsAreSplitWhereTheyCan(),
          new EmbrasureClaspsComeInPairs(),
          new EmbrasureClaspsHaveRoom(),
          new EmbrasureClaspsStandOnTheToothedSide(),
          new FreeEndAbutmentsAreNotLevered(),
          new FreeEndAbutmentsTakeReleasingClasps(),
          new FullTBarsAreAvoided(),
          new MolarsTakeArmsFromAbove(),
          new RpiSetsAreComplete(),
          new SingleRootedTeethTakeArmsFromBelow());

  private ClaspingRules() {}
}
