package saddlewright.rules.hygiene;

import java.util.List;
import saddlewright.rules.Rule;

/** The rules of minor connectors and of what lies over the gums, sorted by name. */
public final class HygieneRules {
  public static final List<Rule> ALL =
      List.of(
          new ArmsReplacePlatingWhereTheyWillDo(),
          new CoveredMarginsHaveAReason(),
          new DesignsAreOpen(),
          new GingivalMarginsAreLeftFree(),
          new MinorConnectorsCarrySomething(),
          new MinorConnectorsCrossSquarely(),
          new MinorConnectorsStandApart(),
          new MinorConnectorsStandInEmbrasures(),
          new ReliefDoesNotExcuseCover());

  private HygieneRules() {}
}
