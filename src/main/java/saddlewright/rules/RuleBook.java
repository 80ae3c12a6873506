package saddlewright.rules;

import java.util.List;
import java.util.Optional;
import saddlewright.rules.bracing.EveryClaspIsReciprocated;
import saddlewright.rules.framework.ConnectorsClearTheGingivalMargins;
import saddlewright.rules.framework.DenturesAreNotOneSided;
import saddlewright.rules.framework.DenturesHaveOneMajorConnector;
import saddlewright.rules.framework.EveryComponentIsJoined;
import saddlewright.rules.framework.LingualBarsHaveDepth;
import saddlewright.rules.framework.LingualPlatesAreCarriedByRests;
import saddlewright.rules.framework.MinorConnectorsStandApart;
import saddlewright.rules.framework.PalatalToriAreSpared;
import saddlewright.rules.framework.RingsAreOpenEnough;
import saddlewright.rules.framework.StrapsAreBroadEnough;
import saddlewright.rules.indirect.IndirectRetainersLieBeyondTheAxis;
import saddlewright.rules.indirect.IndirectRetainersLieFarFromTheAxis;
import saddlewright.rules.indirect.IndirectRetentionHasTwoClasps;
import saddlewright.rules.indirect.LiftingSaddlesHaveAnIndirectRetainer;
import saddlewright.rules.placing.AbutmentsAreFirm;
import saddlewright.rules.placing.ComponentsStandOnStandingTeeth;
import saddlewright.rules.placing.EveryReplacedToothHasASaddle;
import saddlewright.rules.placing.RestsHaveRoomAboveThem;
import saddlewright.rules.placing.RestsSitOnPreparedSeats;
import saddlewright.rules.placing.RestsSuitTheKindOfTooth;
import saddlewright.rules.placing.SaddlesDoNotOverlap;
import saddlewright.rules.placing.SaddlesLieOnGaps;
import saddlewright.rules.retention.BarArmsAvoidTissueUndercuts;
import saddlewright.rules.retention.BarArmsClearTheGingivalMargin;
import saddlewright.rules.retention.BarArmsHaveRoomInTheSulcus;
import saddlewright.rules.retention.CastArmsAreLongEnough;
import saddlewright.rules.retention.ClaspsHoldBothSides;
import saddlewright.rules.retention.EveryClaspedToothIsRested;
import saddlewright.rules.retention.FreeEndAbutmentsAreNotLevered;
import saddlewright.rules.retention.TeethBearOneRetentiveArm;
import saddlewright.rules.retention.TerminalAbutmentsAreClasped;
import saddlewright.rules.retention.TipsEndInChartedUndercuts;
import saddlewright.rules.retention.UndercutsSuitTheMaterial;
import saddlewright.rules.support.BoundedSaddlesAreRestedAtBothEnds;
import saddlewright.rules.support.DenturesHaveThreeRests;
import saddlewright.rules.support.EmbrasureRestsComeInPairs;
import saddlewright.rules.support.FreeEndRestsLieAwayFromTheSaddle;
import saddlewright.rules.support.FreeEndSaddlesAreRested;
import saddlewright.rules.support.RestsStandOnBothSides;
import saddlewright.rules.support.RingClaspsHaveTwoRests;
import saddlewright.rules.support.TiltedMolarsAreNotRestedMesiallyAlone;

/** Every rule, in one explicit list sorted by id. */
public final class RuleBook {
  private static final List<Rule> RULES =
      List.of(
          new AbutmentsAreFirm(),
          new BarArmsAvoidTissueUndercuts(),
          new BarArmsClearTheGingivalMargin(),
          new BarArmsHaveRoomInTheSulcus(),
          new BoundedSaddlesAreRestedAtBothEnds(),
          new CastArmsAreLongEnough(),
          new ClaspsHoldBothSides(),
          new ComponentsStandOnStandingTeeth(),
          new ConnectorsClearTheGingivalMargins(),
          new DenturesAreNotOneSided(),
          new DenturesHaveOneMajorConnector(),
          new DenturesHaveThreeRests(),
          new EmbrasureRestsComeInPairs(),
          new EveryClaspIsReciprocated(),
          new EveryClaspedToothIsRested(),
          new EveryComponentIsJoined(),
          new EveryReplacedToothHasASaddle(),
          new FreeEndAbutmentsAreNotLevered(),
          new FreeEndRestsLieAwayFromTheSaddle(),
          new FreeEndSaddlesAreRested(),
          new IndirectRetainersLieBeyondTheAxis(),
          new IndirectRetainersLieFarFromTheAxis(),
          new IndirectRetentionHasTwoClasps(),
          new LiftingSaddlesHaveAnIndirectRetainer(),
          new LingualBarsHaveDepth(),
          new LingualPlatesAreCarriedByRests(),
          new MinorConnectorsStandApart(),
          new PalatalToriAreSpared(),
          new RestsHaveRoomAboveThem(),
          new RestsSitOnPreparedSeats(),
          new RestsStandOnBothSides(),
          new RestsSuitTheKindOfTooth(),
          new RingClaspsHaveTwoRests(),
          new RingsAreOpenEnough(),
          new SaddlesDoNotOverlap(),
          new SaddlesLieOnGaps(),
          new StrapsAreBroadEnough(),
          new TeethBearOneRetentiveArm(),
          new TerminalAbutmentsAreClasped(),
          new TiltedMolarsAreNotRestedMesiallyAlone(),
          new TipsEndInChartedUndercuts(),
          new UndercutsSuitTheMaterial());

  private RuleBook() {}

  public static List<Rule> rules() {
    return RULES;
  }

  /** The rule with this id. */
  public static Optional<Rule> find(String id) {
    return RULES.stream().filter(r -> r.id().equals(id)).findFirst();
  }
}
