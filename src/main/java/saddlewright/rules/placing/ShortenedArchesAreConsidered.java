package saddlewright.rules.placing;

import java.util.ArrayList;
import java.util.List;
import saddlewright.dentition.Tooth;
import saddlewright.design.Saddle;
import saddlewright.design.Subject;
import saddlewright.rules.Amount;
import saddlewright.rules.AreaSupport;
import saddlewright.rules.Claim;
import saddlewright.rules.Judging;
import saddlewright.rules.Literature;
import saddlewright.rules.Quantity;
import saddlewright.rules.Rule;
import saddlewright.rules.SaddleTeeth;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;

/** Three to five pairs of back teeth serve most people well, without a free-end denture. */
public final class ShortenedArchesAreConsidered implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "shortened-arches-are-considered",
          "Where enough back teeth still meet, leaving the free ends unrestored is weighed first.",
          Severity.CONSIDER,
          Source.read(Literature.CREUGERS + "; " + Literature.BRITISH_NOTES));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    List<Subject> freeEnds = new ArrayList<>();
    for (AreaSupport a : AreaSupport.all(s)) {
      List<Tooth> teeth = SaddleTeeth.of(s, a.saddle());
      if (a.isFreeEnd() && !teeth.isEmpty() && teeth.stream().allMatch(Tooth::isMolar)) {
        freeEnds.add(Subject.of(s.arch(), a.saddle()));
      }
    }
    if (freeEnds.isEmpty() || s.design().stream(Saddle.class).count() > freeEnds.size()) {
      return;
    }
    long pairs =
        s.chart().standing().stream()
            .filter(t -> !t.isAnterior() && s.opposing().stands(opposite(t)))
            .count();
    double enough = s.profile().limit(Quantity.BACK_TEETH_MEETING);
    if (pairs < enough) {
      on.judged();
      return;
    }
    on.finding(s.arch().code() + " denture", Subject.of(s.arch()))
        .fact("replaces molars only, where the back teeth in front of them still meet")
        .measured(
            Amount.of(pairs, "pair") + " of back teeth",
            "fewer than " + Amount.of((long) enough, "pair") + ", or a reason")
        .done();
  }

  private static Tooth opposite(Tooth t) {
    int quadrant = t.fdi() / 10;
    return Tooth.of((5 - quadrant) * 10 + t.position());
  }
}
