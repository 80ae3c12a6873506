package saddlewright.rules.framework;

import java.util.List;
import saddlewright.rules.Rule;

/** The rules of connectors and how the parts hang together, sorted by name. */
public final class FrameworkRules {
  public static final List<Rule> ALL =
      List.of(
          new ConnectorsClearTheGingivalMargins(),
          new DenturesAreNotOneSided(),
          new DenturesHaveOneMajorConnector(),
          new EveryComponentIsJoined(),
          new LingualBarsHaveDepth(),
          new LingualPlatesAreCarriedByRests(),
          new MinorConnectorsStandApart(),
          new PalatalToriAreSpared(),
          new RingsAreOpenEnough(),
          new StrapsAreBroadEnough());

  private FrameworkRules() {}
}
