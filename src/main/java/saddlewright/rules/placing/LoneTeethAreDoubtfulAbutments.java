package saddlewright.rules.placing;

import java.util.List;
import saddlewright.dentition.Tooth;
import saddlewright.design.Saddle;
import saddlewright.design.Subject;
import saddlewright.rules.Claim;
import saddlewright.rules.Judging;
import saddlewright.rules.Literature;
import saddlewright.rules.Rule;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;

/** One tooth cannot hold a denture against turning about it, and goes under the load. */
public final class LoneTeethAreDoubtfulAbutments implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "lone-teeth-are-doubtful-abutments",
          "A partial denture holds on to more than one tooth.",
          Severity.SHOULD,
          Source.read(Literature.ANKARA));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    if (s.design().all(Saddle.class).isEmpty() || !s.classification().kennedy().isClass()) {
      return;
    }
    List<Tooth> counted =
        s.chart().standing().stream()
            .filter(
                t ->
                    t.position() < 8
                        || s.chart().tooth(t).abutment()
                        || s.design().usesAsAbutment(t))
            .toList();
    if (counted.size() == 1) {
      Tooth t = counted.get(0);
      on.finding(t.toString(), Subject.of(t))
          .fact("the only tooth left to hold the denture")
          .measured("1 abutment", "2 or more, or an overdenture or complete denture")
          .done();
    } else {
      on.judged();
    }
  }
}
