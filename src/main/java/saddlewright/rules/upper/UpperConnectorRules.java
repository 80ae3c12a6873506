package saddlewright.rules.upper;

import java.util.List;
import saddlewright.rules.Rule;

/** The rules of upper major connectors, sorted by name. */
public final class UpperConnectorRules {
  public static final List<Rule> ALL =
      List.of(
          new FrontSaddlesTakeARing(),
          new HorseshoeLimbsAreBroadEnough(),
          new HorseshoesDoNotCarryFreeEnds(),
          new HorseshoesSuitToriAndFrontSaddles(),
          new LastAbutmentPremolarsTakeAPlate(),
          new PalatalBarsLieFarBack(),
          new PalatalBarsServeShortBoundedSaddles(),
          new PalatalPlatesSuitLongSaddles(),
          new PalatalToriAreSpared(),
          new RingLimbsAreBroadEnough(),
          new RingsAreOpenEnough(),
          new ShortBoundedSaddlesTakeAStrap(),
          new SideLimbsAreBroadEnough(),
          new StrapsAreBroadEnough(),
          new UpperConnectorsAreBeaded(),
          new UpperConnectorsAreNotRelieved(),
          new UpperConnectorsCrossTheMidlineSquarely(),
          new UpperConnectorsEndOnTheHardPalate(),
          new UpperConnectorsLeaveTheRugaeFree(),
          new UpperFreeEndsTakeABroadPlate(),
          new WeakFrontTeethTakeACompletePalate());

  private UpperConnectorRules() {}
}
