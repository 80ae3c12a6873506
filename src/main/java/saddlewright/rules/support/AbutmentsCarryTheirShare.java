package saddlewright.rules.support;

import java.util.EnumSet;
import java.util.Locale;
import java.util.Set;
import saddlewright.dentition.Tooth;
import saddlewright.design.Rest;
import saddlewright.design.Subject;
import saddlewright.rules.AreaSupport;
import saddlewright.rules.Claim;
import saddlewright.rules.Judging;
import saddlewright.rules.Literature;
import saddlewright.rules.Outlook;
import saddlewright.rules.Quantity;
import saddlewright.rules.Rule;
import saddlewright.rules.SaddleTeeth;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;

/** A sound tooth carries itself and about one and a half teeth more. */
public final class AbutmentsCarryTheirShare implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "abutments-carry-their-share",
          "The rested teeth can carry the teeth that they help to replace.",
          Severity.CONSIDER,
          Source.read(Literature.BRITISH_NOTES));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  // How much a tooth can carry beside a molar or canine (derived from the size of its root).
  private static final double PREMOLAR = 0.75;
  private static final double INCISOR = 0.5;

  /** Share of the load of a free-end saddle that its tooth carries; the ridge has the rest. */
  private static final double FREE_END_SHARE = 0.5;

  @Override
  public void weigh(Situation s, Judging on) {
    double load = 0;
    for (AreaSupport a : AreaSupport.all(s)) {
      load += SaddleTeeth.of(s, a.saddle()).size() * (a.isBounded() ? 1 : FREE_END_SHARE);
    }
    Set<Tooth> rested = EnumSet.noneOf(Tooth.class);
    for (Rest r : s.design().all(Rest.class)) {
      if (s.chart().stands(r.tooth()) && !Outlook.isPoor(s, r.tooth())) {
        rested.add(r.tooth());
      }
    }
    if (load == 0 || rested.isEmpty()) {
      return;
    }
    double strength = 0;
    for (Tooth t : rested) {
      strength += t.isIncisor() ? INCISOR : t.isPremolar() ? PREMOLAR : 1;
    }
    double able = strength * s.profile().limit(Quantity.LOAD_PER_ABUTMENT);
    if (load <= able) {
      on.judged();
      return;
    }
    on.finding(s.arch().code() + " denture", Subject.of(s.arch()))
        .fact("more teeth to carry than the rested teeth are good for")
        .measured("load of " + teeth(load), "at most " + teeth(able))
        .done();
  }

  private static String teeth(double n) {
    return String.format(Locale.ROOT, "%.1f teeth", n).replace(".0 ", " ");
  }
}
