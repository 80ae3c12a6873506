package saddlewright.rules.support;

import java.util.List;
import saddlewright.classification.KennedyClass;
import saddlewright.design.Rest;
import saddlewright.design.Subject;
import saddlewright.rules.Amount;
import saddlewright.rules.AreaSupport;
import saddlewright.rules.Claim;
import saddlewright.rules.Draft;
import saddlewright.rules.Judging;
import saddlewright.rules.Literature;
import saddlewright.rules.Rule;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;

/** Four rests near the corners leave no side on which a denture can tip. */
public final class ToothBorneDenturesStandOnFourRests implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "tooth-borne-dentures-stand-on-four-rests",
          "A tooth-borne denture on both sides of the arch stands on four rests.",
          Severity.CONSIDER,
          Source.read(Literature.WESTERN_AUSTRALIA + "; " + Literature.EXAM_NOTES));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  /** One at each corner. */
  private static final int CORNERS = 4;

  @Override
  public void weigh(Situation s, Judging on) {
    List<AreaSupport> areas = AreaSupport.all(s);
    if (s.classification().kennedy() != KennedyClass.III
        || areas.isEmpty()
        || s.design().majorConnector().isEmpty()
        || s.chart().standing().size() < CORNERS) {
      return;
    }
    long rests = s.design().stream(Rest.class).filter(r -> s.chart().stands(r.tooth())).count();
    if (rests == 0) {
      return;
    }
    if (rests >= CORNERS) {
      on.judged();
      return;
    }
    Draft d =
        on.finding(s.arch().code() + " denture", Subject.of(s.arch()))
            .fact("tooth-borne, and free to tip over the line between two rests")
            .measured(Amount.of(rests, "rest"), Amount.of(CORNERS, "rest"));
    SpareAbutments.offer(s, (int) (CORNERS - rests), d);
    d.done();
  }
}
