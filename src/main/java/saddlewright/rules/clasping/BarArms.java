package saddlewright.rules.clasping;

import java.util.List;
import java.util.function.Function;
import saddlewright.chart.ChartField;
import saddlewright.dentition.Tooth;
import saddlewright.design.Clasp;
import saddlewright.rules.Draft;
import saddlewright.rules.Judging;
import saddlewright.rules.Situation;
import saddlewright.rules.StandingClasps;
import saddlewright.rules.WroughtArm;

/** The gingivally approaching arms of a design that have a standing tooth to hold. */
final class BarArms {
  private BarArms() {}

  static List<Clasp> of(Situation s) {
    return StandingClasps.of(s).stream().filter(c -> c.form().isGingivallyApproaching()).toList();
  }

  /** Asks for a value beside every one of the arms at once. */
  static void ask(
      Situation s, Judging on, List<Clasp> arms, Function<List<Tooth>, ChartField> field) {
    if (!arms.isEmpty()) {
      on.unanswered(
          field.apply(arms.stream().map(Clasp::tooth).toList()), StandingClasps.subjects(s, arms));
    }
  }

  static void offerFromAbove(Situation s, Draft d, Clasp c) {
    WroughtArm wrought = WroughtArm.fromAbove(s, c);
    d.remedy(wrought.fromAboveLabel(), wrought.edit());
  }
}
