package saddlewright.rules.abutments;

import java.util.List;
import java.util.Optional;
import saddlewright.dentition.Arch;
import saddlewright.dentition.End;
import saddlewright.dentition.Tooth;
import saddlewright.design.Subject;
import saddlewright.rules.Amount;
import saddlewright.rules.AreaSupport;
import saddlewright.rules.Claim;
import saddlewright.rules.Judging;
import saddlewright.rules.Naming;
import saddlewright.rules.Rule;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;

/** A tooth that nothing bites on loads its abutments and is cleaned round for no gain. */
public final class ReplacedTeethHaveAnOpponent implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "replaced-teeth-have-an-opponent",
          "A tooth at a free end is replaced only where an opposing tooth, natural or artificial,"
              + " bites on it.",
          Severity.CONSIDER,
          Source.read(
              "Creugers, Int J Dent 2010, and British teaching notes on the shortened arch: three"
                  + " to five pairs at the back are enough"));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    for (AreaSupport a : AreaSupport.all(s)) {
      if (!a.isFreeEnd()) {
        continue;
      }
      List<Tooth> teeth = a.saddle().span().teeth();
      List<Tooth> unopposed = teeth.stream().filter(t -> !isOpposed(s, t)).toList();
      if (unopposed.isEmpty()) {
        on.upheld("carries teeth that are bitten on", Subject.of(s.arch(), a.saddle()));
      } else {
        on.finding(Naming.of(a.saddle()), Subject.of(s.arch(), a.saddle()))
            .fact(
                "no opposing tooth bites on its "
                    + Amount.teeth(unopposed.size(), "hindmost")
                    + "; consider a shorter saddle")
            .measured(unopposed.size() + " of " + teeth.size() + " unopposed", "none unopposed")
            .done();
      }
    }
  }

  /** A lower tooth meets its namesake and the one in front of it; an upper one that behind. */
  private static boolean isOpposed(Situation s, Tooth t) {
    Tooth namesake = Tooth.of(across(t));
    Optional<Tooth> second = namesake.neighbour(t.arch() == Arch.LOWER ? End.MESIAL : End.DISTAL);
    return bites(s, namesake) || second.filter(x -> bites(s, x)).isPresent();
  }

  private static boolean bites(Situation s, Tooth opposing) {
    return s.opposing().stands(opposing) || s.opposing().isReplaced(opposing);
  }

  /** Quadrants 1 and 4 lie on one side of the mouth, 2 and 3 on the other. */
  private static int across(Tooth t) {
    return (5 - t.fdi() / 10) * 10 + t.position();
  }
}
