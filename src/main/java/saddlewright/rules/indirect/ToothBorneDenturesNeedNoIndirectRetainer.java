package saddlewright.rules.indirect;

import java.util.List;
import saddlewright.design.DesignEdit;
import saddlewright.design.Rest;
import saddlewright.design.Subject;
import saddlewright.rules.AreaSupport;
import saddlewright.rules.Claim;
import saddlewright.rules.EndSupport;
import saddlewright.rules.Judging;
import saddlewright.rules.Literature;
import saddlewright.rules.Rule;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;

/** A denture held at both ends of every saddle has nothing that could lift about an axis. */
public final class ToothBorneDenturesNeedNoIndirectRetainer implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "tooth-borne-dentures-need-no-indirect-retainer",
          "A denture with bounded, tooth-borne saddles needs no indirect retainer.",
          Severity.CONSIDER,
          Source.read(Literature.OKLAHOMA + "; " + Literature.BRITISH_NOTES));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    List<AreaSupport> areas = AreaSupport.all(s);
    boolean toothBorne =
        !areas.isEmpty()
            && areas.stream()
                .allMatch(a -> a.isBounded() && a.ends().stream().allMatch(EndSupport::isRested));
    boolean lossForeseen =
        s.chart().standing().stream().anyMatch(t -> s.chart().tooth(t).doubtful());
    if (!toothBorne || lossForeseen || !IndirectNeed.saddles(s).isEmpty()) {
      return;
    }
    on.judged();
    for (Rest r : IndirectNeed.declared(s)) {
      on.finding(r.tooth().toString(), Subject.of(s.arch(), r))
          .fact("marked as indirect retainer, though no saddle can lift")
          .measured("1 indirect retainer", "none")
          .remedy("Keep it as a plain rest", new DesignEdit.Change(r.asPlain()))
          .done();
    }
  }
}
