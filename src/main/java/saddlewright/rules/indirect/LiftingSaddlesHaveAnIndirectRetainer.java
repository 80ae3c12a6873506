package saddlewright.rules.indirect;

import java.util.List;
import saddlewright.design.ConnectorForm;
import saddlewright.design.Subject;
import saddlewright.mechanics.IndirectRetention;
import saddlewright.rules.Amount;
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

/** A rest beyond the clasp axis turns the clasps into the brake of a lifting saddle. */
public final class LiftingSaddlesHaveAnIndirectRetainer implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "lifting-saddles-have-an-indirect-retainer",
          "Free-end saddles and long Class IV saddles have an indirect retainer.",
          Severity.MUST,
          Source.read(
              Literature.OKLAHOMA
                  + "; every British expert asked agreed (quoted by Öwall et al., Int J Prosthodont"
                  + " 2002;15:371-378)"));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    boolean declared = !IndirectNeed.declared(s).isEmpty();
    for (LiftingSaddle x : LiftingSaddle.all(s)) {
      if (!declared) {
        unserved(s, x, on);
      } else if (x.serving().isEmpty()) {
        // One on the wrong side is the matter of another rule.
        on.judged();
      } else {
        on.upheld(
            "keeps " + Naming.of(x.saddle()) + " from lifting away from its ridge",
            Subject.of(s.arch(), x.ownSideFirst().get(0)));
      }
    }
  }

  /** Sites that differ by less than this, in mm, serve alike. */
  private static final double SAME_PLACE_MM = 0.5;

  private static void unserved(Situation s, LiftingSaddle x, Judging on) {
    double least = s.profile().limit(Quantity.INDIRECT_DISTANCE);
    double best =
        x.facts().rests().stream()
            .mapToDouble(IndirectRetention.Reach::distance)
            .max()
            .orElse(Double.NEGATIVE_INFINITY);
    List<IndirectSite> sites = IndirectSite.best(s, x.facts());
    boolean bestThereIs =
        best > 0 && sites.stream().allMatch(site -> site.distance() <= best + SAME_PLACE_MM);
    boolean served = best >= least || bestThereIs;
    if (!served && sites.isEmpty() && isPalateAlone(s)) {
      s.design()
          .majorConnector()
          .ifPresent(
              m ->
                  on.upheld(
                      "takes the part of an indirect retainer, since no tooth can serve",
                      Subject.of(s.arch(), m)));
      return;
    }
    Draft d =
        on.finding(Naming.of(x.saddle()), Subject.of(s.arch(), x.saddle()))
            .fact(
                served
                    ? "a rest beyond the "
                        + s.profile().axis().words()
                        + " can serve as indirect retainer but is not marked as one"
                    : "no indirect retainer beyond the "
                        + s.profile().axis().words()
                        + (sites.isEmpty() ? "; no sound tooth lies there to carry one" : ""))
            .measured(
                served
                    ? "0 marked, nearest fit rest " + Amount.mm(best) + " beyond"
                    : "0 rests " + Amount.mm(least) + " or more beyond it",
                "1 indirect retainer")
            .weighing(
                served ? Severity.CONSIDER : sites.isEmpty() ? Severity.SHOULD : Severity.MUST);
    sites.forEach(site -> d.remedy(site.label(), site.edit(s)));
    d.done();
  }

  /** Where no tooth can serve, the covered palate takes the part of an indirect retainer. */
  private static boolean isPalateAlone(Situation s) {
    return s.design()
        .majorConnector()
        .filter(m -> m.form() == ConnectorForm.PALATAL_PLATE)
        .isPresent();
  }
}
