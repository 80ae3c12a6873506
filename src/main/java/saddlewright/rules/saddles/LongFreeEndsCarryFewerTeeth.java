package saddlewright.rules.saddles;

import java.util.List;
import saddlewright.dentition.Tooth;
import saddlewright.design.Subject;
import saddlewright.rules.AreaSupport;
import saddlewright.rules.Claim;
import saddlewright.rules.Judging;
import saddlewright.rules.Literature;
import saddlewright.rules.Naming;
import saddlewright.rules.Quantity;
import saddlewright.rules.Rule;
import saddlewright.rules.SaddleTeeth;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;

/** The farther back a free-end base is loaded, the longer the lever on its abutment. */
public final class LongFreeEndsCarryFewerTeeth implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "long-free-ends-carry-fewer-teeth",
          "A free-end base carries few teeth, and none on the last rise of the ridge.",
          Severity.CONSIDER,
          Source.read(Literature.STATIC_ANALYSIS));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    double most = s.profile().limit(Quantity.FREE_END_TEETH);
    for (AreaSupport a : AreaSupport.all(s)) {
      if (!a.isFreeEnd()) {
        continue;
      }
      List<Tooth> teeth = SaddleTeeth.of(s, a.saddle());
      Subject subject = Subject.of(s.arch(), a.saddle());
      List<Tooth> third = teeth.stream().filter(t -> t.position() == 8).toList();
      if (!third.isEmpty()) {
        on.finding(Naming.of(a.saddle()), subject)
            .fact("carries an artificial third molar on the rise of the ridge")
            .measured("last tooth " + third.get(0), "no third molar")
            .done();
      } else if (teeth.size() > most) {
        on.finding(Naming.of(a.saddle()), subject)
            .fact("a long row of teeth behind its only abutment")
            .measured(SaddleTeeth.count(teeth.size()), "at most " + SaddleTeeth.count((long) most))
            .done();
      } else {
        on.upheld(
            "carries no more than "
                + SaddleTeeth.count(teeth.size())
                + " behind its abutment, which keeps the lever short",
            subject);
      }
    }
  }
}
