package saddlewright.rules.lower;

import java.util.List;
import saddlewright.rules.Rule;

/** The rules of lower major connectors, sorted by name. */
public final class LowerConnectorRules {
  public static final List<Rule> ALL =
      List.of(
          new BarsAreHighEnough(),
          new BarsAreStiffEnough(),
          new BarsSpanAtMostFourTeeth(),
          new ContinuousBarsHaveAReason(),
          new DentalBarsDoNotCarryFreeEnds(),
          new DentalBarsHaveTallCrowns(),
          new DentalBarsRunOnUprightTeeth(),
          new HighFrenaTakeAPlate(),
          new LabialBarsAreALastResort(),
          new LabialBarsHaveRoom(),
          new LingualBarsComeFirst(),
          new LingualBarsHaveDepth(),
          new LingualBarsPassUprightTeeth(),
          new LingualPlatesAreCarriedByRests(),
          new LingualPlatesAreForShallowSulci(),
          new LowerBarsClearTheFloorOfTheMouth(),
          new LowerConnectorsAreNotBeaded(),
          new LowerConnectorsAreRelieved(),
          new MandibularToriTakeAPlate(),
          new ResorbedFreeEndsTakeAPlate(),
          new SublingualBarsHaveDepth(),
          new WeakIncisorsTakeAPlate());

  private LowerConnectorRules() {}
}
