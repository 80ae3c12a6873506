package saddlewright.rules.indirect;

import java.util.List;
import saddlewright.design.Clasp;
import saddlewright.design.Subject;
import saddlewright.rules.Amount;
import saddlewright.rules.Claim;
import saddlewright.rules.Draft;
import saddlewright.rules.Judging;
import saddlewright.rules.Literature;
import saddlewright.rules.NewClasp;
import saddlewright.rules.Rule;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;
import saddlewright.rules.TerminalAbutment;

/** An indirect retainer acts only while clasps hold the axis down. */
public final class IndirectRetentionHasTwoClasps implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "indirect-retention-has-two-clasps",
          "Where a saddle may lift, at least two clasps hold the axis.",
          Severity.MUST,
          Source.read(Literature.BDJ_INDIRECT));

  /** Two points make an axis. */
  private static final int LEAST = 2;

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    if (IndirectNeed.saddles(s).isEmpty()) {
      return;
    }
    List<Clasp> clasps =
        s.design().stream(Clasp.class).filter(c -> s.chart().stands(c.tooth())).toList();
    long teeth = clasps.stream().map(Clasp::tooth).distinct().count();
    if (s.chart().standing().size() < LEAST) {
      on.judged(); // That a single tooth cannot hold a denture is a finding of its own.
      return;
    }
    if (teeth >= LEAST) {
      clasps.forEach(
          c ->
              on.upheld(
                  "holds down the axis about which the saddles could lift",
                  Subject.of(s.arch(), c)));
      return;
    }
    Draft d =
        on.finding(s.arch().code() + " denture", Subject.of(s.arch()))
            .fact("too few clasps to hold the axis about which its saddles lift")
            .measured(Amount.of(teeth, "clasp"), "at least " + Amount.of(LEAST, "clasp"));
    if (teeth == LEAST - 1) {
      for (TerminalAbutment a : TerminalAbutment.all(s)) {
        NewClasp.edit(s, a.tooth()).ifPresent(e -> d.remedy(NewClasp.label(a.tooth()), e));
      }
    }
    d.done();
  }
}
