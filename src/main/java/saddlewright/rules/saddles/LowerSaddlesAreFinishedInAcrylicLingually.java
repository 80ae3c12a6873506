package saddlewright.rules.saddles;

import saddlewright.dentition.Arch;
import saddlewright.design.DesignEdit;
import saddlewright.design.Saddle;
import saddlewright.design.Subject;
import saddlewright.rules.Claim;
import saddlewright.rules.Judging;
import saddlewright.rules.Literature;
import saddlewright.rules.Naming;
import saddlewright.rules.Rule;
import saddlewright.rules.SaddleHeight;
import saddlewright.rules.SaddleTeeth;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;

/** What meets the tongue and the floor of the mouth is eased chairside, and only acrylic can be. */
public final class LowerSaddlesAreFinishedInAcrylicLingually implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "lower-saddles-are-finished-in-acrylic-lingually",
          "The lingual face of a lower saddle is finished in acrylic.",
          Severity.CONSIDER,
          Source.read(Literature.OKLAHOMA + " (question only)"));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    if (s.arch() != Arch.LOWER) {
      return;
    }
    for (Saddle saddle : s.design().all(Saddle.class)) {
      Subject subject = Subject.of(s.arch(), saddle);
      if (saddle.lingualFinish() == Saddle.Finish.ACRYLIC) {
        on.upheld("is finished in acrylic where the tongue lies, so it can be eased", subject);
      } else if (SaddleHeight.of(s, SaddleTeeth.of(s, saddle)).isLow()) {
        on.judged();
      } else {
        on.finding(Naming.of(saddle), subject)
            .fact("the tongue meets metal")
            .measured("a metal lingual finish", "acrylic")
            .remedy(
                "Finish it in acrylic lingually",
                new DesignEdit.Change(saddle.withLingualFinish(Saddle.Finish.ACRYLIC)))
            .done();
      }
    }
  }
}
