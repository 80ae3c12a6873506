package saddlewright.rules.retention;

import java.util.List;
import saddlewright.rules.Rule;

/** The rules of retention, sorted by name. */
public final class RetentionRules {
  public static final List<Rule> ALL =
      List.of(
          new ClaspAxesBisectTheDenture(),
          new ClaspedTeethAreSound(),
          new ClaspsHoldBothSides(),
          new ClaspsStandBackFromAClassFourSaddle(),
          new ClaspsStayOutOfTheSmile(),
          new ClassOneDenturesHaveTwoClasps(),
          new ClassThreeClaspsStandOnADiagonal(),
          new ClassTwoDenturesAreClaspedFarBackOpposite(),
          new ClassTwoDenturesHaveTwoOrThreeClasps(),
          new DenturesHaveFewClasps(),
          new EveryClaspedToothIsRested(),
          new GripIsEvenOnBothSides(),
          new MolarsAreClaspedBeforeVisibleTeeth(),
          new RetentionIsOpposedAcrossTheArch(),
          new TeethBearOneRetentiveArm(),
          new TerminalAbutmentsAreClasped());

  private RetentionRules() {}
}
