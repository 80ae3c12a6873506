package saddlewright.rules.retention;

import saddlewright.classification.KennedyClass;
import saddlewright.design.Subject;
import saddlewright.rules.Amount;
import saddlewright.rules.Claim;
import saddlewright.rules.Judging;
import saddlewright.rules.Literature;
import saddlewright.rules.Quantity;
import saddlewright.rules.Rule;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;
import saddlewright.rules.StandingClasps;

/** Every clasp is one more thing that shows, gathers plaque and can break. */
public final class DenturesHaveFewClasps implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "dentures-have-few-clasps",
          "Three clasps are enough for most dentures; four at the corners of a tooth-borne one are"
              + " the most.",
          Severity.SHOULD,
          Source.read(
              Literature.STEWART_NOTES + ": three are enough; the limit of four from memory"));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    int n = StandingClasps.of(s).size();
    if (n == 0) {
      return;
    }
    int most = (int) s.profile().limit(Quantity.CLASPS);
    int usual = (int) s.profile().limit(Quantity.CLASPS_USUAL);
    KennedyClass k = s.classification().kennedy();
    boolean toothBorne = k == KennedyClass.III || k == KennedyClass.IV;
    int allowed = toothBorne ? most : usual;
    if (n > allowed) {
      on.finding(s.arch().code() + " denture", Subject.of(s.arch()))
          .fact("more clasps than its retention asks for")
          .measured(Amount.of(n, "clasp"), "at most " + allowed)
          .weighing(n > most ? Severity.SHOULD : Severity.CONSIDER)
          .done();
    } else {
      on.judged();
    }
  }
}
