package saddlewright.rules.retention;

import java.util.List;
import saddlewright.rules.Rule;

/** The rules of retention, sorted by name. */
public final class RetentionRules {
  public static final List<Rule> ALL =
      List.of(
          new BarArmsAvoidTissueUndercuts(),
          new BarArmsClearTheGingivalMargin(),
          new BarArmsCrossTheMarginSquarely(),
          new BarArmsHaveRoomInTheSulcus(),
          new CastArmsAreLongEnough(),
          new ClaspsHoldBothSides(),
          new EveryClaspedToothIsRested(),
          new FreeEndAbutmentsAreNotLevered(),
          new TeethBearOneRetentiveArm(),
          new TerminalAbutmentsAreClasped(),
          new TipsEndInChartedUndercuts(),
          new UndercutsSuitTheMaterial());

  private RetentionRules() {}
}
