package saddlewright.rules.framework;

import java.util.List;
import saddlewright.rules.Rule;

/** The rules of how the parts hang together, sorted by name. */
public final class FrameworkRules {
  public static final List<Rule> ALL =
      List.of(
          new ConnectorsClearTheGingivalMargins(),
          new DenturesAreNotOneSided(),
          new DenturesHaveOneMajorConnector(),
          new EveryComponentIsJoined());

  private FrameworkRules() {}
}
