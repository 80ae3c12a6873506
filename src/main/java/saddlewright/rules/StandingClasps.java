package saddlewright.rules;

import java.util.List;
import saddlewright.dentition.Side;
import saddlewright.dentition.Tooth;
import saddlewright.design.Clasp;
import saddlewright.design.Subject;

/** The clasps of a design that have a standing tooth to hold. */
public final class StandingClasps {
  private StandingClasps() {}

  public static List<Clasp> of(Situation s) {
    return s.design().stream(Clasp.class).filter(c -> s.chart().stands(c.tooth())).toList();
  }

  public static List<Clasp> on(Situation s, Tooth tooth) {
    return of(s).stream().filter(c -> c.tooth() == tooth).toList();
  }

  public static List<Clasp> on(Situation s, Side side) {
    return of(s).stream().filter(c -> c.tooth().side() == side).toList();
  }

  public static Subject[] subjects(Situation s, List<Clasp> clasps) {
    return clasps.stream().map(c -> Subject.of(s.arch(), c)).toArray(Subject[]::new);
  }
}
