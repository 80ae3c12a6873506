package saddlewright.rules.saddles;

import java.util.List;
import saddlewright.rules.Rule;

/** The rules of saddles, sorted by name. */
public final class SaddleRules {
  public static final List<Rule> ALL =
      List.of(
          new AcrylicSaddlesHaveMesh(),
          new DoubtfulTeethCanBeAdded(),
          new FlangesStayOutOfUndercuts(),
          new FreeEndBasesAreAcrylic(),
          new FreeEndBasesAreFullyExtended(),
          new FreeEndMeshesHaveATissueStop(),
          new FreeEndMeshesRunFarEnough(),
          new FrontFlangesSuitTheRidge(),
          new LongFreeEndsCarryFewerTeeth(),
          new LowFrontSaddlesTakeBackings(),
          new LowerSaddlesAreFinishedInAcrylicLingually(),
          new MeshAndAcrylicHaveHeight(),
          new MeshesEndAtFinishLines(),
          new MetalBasesSuitShortSpans(),
          new RecentRidgesTakeAcrylicBases(),
          new SaddlesMeetGuideSurfaces());

  private SaddleRules() {}
}
