package saddlewright.rules.placing;

import java.util.ArrayList;
import java.util.List;
import saddlewright.design.Clasp;
import saddlewright.design.Component;
import saddlewright.design.MajorConnector;
import saddlewright.design.Rest;
import saddlewright.design.Saddle;
import saddlewright.design.Subject;
import saddlewright.rules.Claim;
import saddlewright.rules.Judging;
import saddlewright.rules.Literature;
import saddlewright.rules.Rule;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;

/** Each step of a design settles what the next one needs. */
public final class WorkFollowsItsOrder implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "work-follows-its-order",
          "Saddles come first, then rests, then clasps, then the connector.",
          Severity.SHOULD,
          Source.read(Literature.BRITISH_NOTES + "; " + Literature.ANKARA));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  private record Step(String words, boolean begun) {}

  @Override
  public void weigh(Situation s, Judging on) {
    List<Step> steps =
        List.of(
            new Step("saddles", has(s, Saddle.class)),
            new Step("rests", has(s, Rest.class)),
            new Step("clasps", has(s, Clasp.class)),
            new Step("connector", has(s, MajorConnector.class)));
    int last = -1;
    for (int i = 0; i < steps.size(); i++) {
      last = steps.get(i).begun() ? i : last;
    }
    if (last < 0 || !s.classification().kennedy().isClass()) {
      return;
    }
    List<String> empty = new ArrayList<>();
    for (Step step : steps.subList(0, last)) {
      if (!step.begun()) {
        empty.add(step.words());
      }
    }
    if (empty.isEmpty()) {
      on.judged();
      return;
    }
    on.finding(s.arch().code() + " denture", Subject.of(s.arch()))
        .fact("the " + steps.get(last).words() + " came before the " + empty.get(0))
        .measured("no " + String.join(", no ", empty), "saddles, rests, clasps, then the connector")
        .done();
  }

  private static boolean has(Situation s, Class<? extends Component> kind) {
    return s.design().components().stream().anyMatch(kind::isInstance);
  }
}
