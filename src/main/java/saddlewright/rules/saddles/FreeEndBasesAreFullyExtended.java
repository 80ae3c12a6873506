package saddlewright.rules.saddles;

import saddlewright.dentition.Arch;
import saddlewright.dentition.Tooth;
import saddlewright.design.DesignEdit;
import saddlewright.design.Saddle;
import saddlewright.design.Subject;
import saddlewright.layout.Measure;
import saddlewright.rules.Amount;
import saddlewright.rules.AreaSupport;
import saddlewright.rules.Claim;
import saddlewright.rules.FlangeUndercut;
import saddlewright.rules.Judging;
import saddlewright.rules.Literature;
import saddlewright.rules.Naming;
import saddlewright.rules.Rule;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;

/** The mucosa under a free-end base carries least where the base covers most of it. */
public final class FreeEndBasesAreFullyExtended implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "free-end-bases-are-fully-extended",
          "A free-end base covers the ridge to its end and reaches the depth of the sulcus.",
          Severity.MUST,
          Source.read(Literature.DALHOUSIE + "; " + Literature.MCCRACKEN_NOTES));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    for (AreaSupport a : AreaSupport.all(s)) {
      Saddle saddle = a.saddle();
      if (!a.isFreeEnd()) {
        continue;
      }
      if (saddle.flange() == Saddle.Flange.FULL) {
        on.upheld(covered(s, saddle), Subject.of(s.arch(), saddle));
      } else if (FlangeUndercut.bars(s, saddle)) {
        on.judged();
      } else {
        boolean none = saddle.flange() == Saddle.Flange.GUM_FITTED;
        on.finding(Naming.of(saddle), Subject.of(s.arch(), saddle))
            .fact("a free-end base that stops short of the sulcus")
            .measured(none ? "no flange" : "a part flange", "a full flange")
            .weighing(none ? Severity.MUST : Severity.SHOULD)
            .remedy(
                "Give it a full flange",
                new DesignEdit.Change(saddle.withFlange(Saddle.Flange.FULL)))
            .done();
      }
    }
  }

  private static String covered(Situation s, Saddle saddle) {
    double length =
        s.layout().find(saddle.id()).map(l -> l.measure(Measure.LENGTH).orElse(0)).orElse(0.0);
    return "covers "
        + Amount.mm(length)
        + " of ridge"
        + (isOpenBehind(s, saddle) ? " back to the " + end(s.arch()) : "")
        + " and reaches the depth of the sulcus";
  }

  private static String end(Arch arch) {
    return arch == Arch.LOWER ? "retromolar pad" : "hamular notch";
  }

  /** Whether nothing stands behind it, so that it is laid out over the end of the ridge. */
  private static boolean isOpenBehind(Situation s, Saddle saddle) {
    boolean right = saddle.span().before().stream().noneMatch(t -> stands(s, t, -1));
    return right || saddle.span().after().stream().noneMatch(t -> stands(s, t, 1));
  }

  private static boolean stands(Situation s, Tooth from, int step) {
    for (int p = from.place(); p >= 0 && p <= 15; p += step) {
      if (s.chart().stands(Tooth.at(s.arch(), p))) {
        return true;
      }
    }
    return false;
  }
}
