package saddlewright.rules.support;

import java.util.List;
import saddlewright.rules.Rule;

/** The rules of support, sorted by name. */
public final class SupportRules {
  public static final List<Rule> ALL =
      List.of(
          new AbutmentsCarryTheirShare(),
          new BoundedSaddlesAreRestedAtBothEnds(),
          new CaninesAreRestedBeforeIncisors(),
          new ClassFourPalatesShareTheLoad(),
          new ClassFourRestsReachFarBack(),
          new DenturesHaveThreeRests(),
          new EmbrasureRestsComeInPairs(),
          new EmbrasureRestsHaveRoom(),
          new FreeEndRestsLieAwayFromTheSaddle(),
          new FreeEndSaddlesAreRested(),
          new IncisalRestsStandInTheLowerArch(),
          new LoneTeethAreRestedOnBothFaces(),
          new LongBoundedSaddlesShareTheLoad(),
          new LowerCanineSeatsAreBuiltUp(),
          new LowerCastDenturesAreToothBorne(),
          new MucosaBornePlatesCoverThePalate(),
          new OcclusalRestsAreBroadEnough(),
          new RestsAvoidAmalgam(),
          new RestsSpreadOverATriangle(),
          new RestsStandOnBothSides(),
          new RingClaspsHaveTwoRests(),
          new TiltedMolarsAreNotRestedMesiallyAlone(),
          new TiltedTeethAreLoadedAlongTheirAxis(),
          new ToothBorneDenturesStandOnFourRests());

  private SupportRules() {}
}
