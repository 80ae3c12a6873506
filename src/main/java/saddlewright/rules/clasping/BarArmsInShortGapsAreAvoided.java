package saddlewright.rules.clasping;

import java.util.List;
import saddlewright.design.Clasp;
import saddlewright.design.Subject;
import saddlewright.rules.Amount;
import saddlewright.rules.AreaSupport;
import saddlewright.rules.Claim;
import saddlewright.rules.Draft;
import saddlewright.rules.Judging;
import saddlewright.rules.Literature;
import saddlewright.rules.Naming;
import saddlewright.rules.Quantity;
import saddlewright.rules.Rule;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;

/** In a short gap a bar arm is stiff and shuts food in against its tooth. */
public final class BarArmsInShortGapsAreAvoided implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "bar-arms-in-short-gaps-are-avoided",
          "A gap of one tooth bounded on both sides is not filled with the root of a bar arm.",
          Severity.CONSIDER,
          Source.read(Literature.OKLAHOMA));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    double longest = s.profile().limit(Quantity.SHORT_GAP);
    List<AreaSupport> bounded = AreaSupport.all(s).stream().filter(AreaSupport::isBounded).toList();
    for (Clasp c : BarArms.of(s)) {
      for (AreaSupport a : bounded) {
        boolean rootedThere =
            a.ends().stream().anyMatch(e -> e.abutment() == c.tooth() && e.facing() == c.origin());
        if (!rootedThere) {
          continue;
        }
        int teeth = a.saddle().span().size();
        if (teeth > longest) {
          on.judged();
          continue;
        }
        Draft d =
            on.finding(c.tooth().toString(), Subject.of(s.arch(), c))
                .fact("the " + Naming.of(c) + " is rooted in a short bounded gap")
                .measured(
                    "gap of " + Amount.of(teeth, "tooth"),
                    "a gap longer than " + Amount.of(Math.round(longest), "tooth"));
        BarArms.offerFromAbove(s, d, c);
        d.done();
        // Two saddles over the same gap are a fault of their own.
        break;
      }
    }
  }
}
