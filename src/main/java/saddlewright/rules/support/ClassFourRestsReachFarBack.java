package saddlewright.rules.support;

import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;
import saddlewright.classification.KennedyClass;
import saddlewright.dentition.RestSite;
import saddlewright.dentition.Side;
import saddlewright.dentition.Tooth;
import saddlewright.design.Rest;
import saddlewright.design.Saddle;
import saddlewright.design.Subject;
import saddlewright.rules.Claim;
import saddlewright.rules.Judging;
import saddlewright.rules.Literature;
import saddlewright.rules.Naming;
import saddlewright.rules.NewRest;
import saddlewright.rules.Outlook;
import saddlewright.rules.Rule;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;

/** Rests far behind a front saddle keep the back of the denture from lifting and sinking. */
public final class ClassFourRestsReachFarBack implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "class-four-rests-reach-far-back",
          "A Class IV denture has a rest far back on each side.",
          Severity.SHOULD,
          Source.read(Literature.STEWART_NOTES + "; " + Literature.AMERICAN_CARDS));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  /** The first molar: a rest there or behind it is far back. */
  private static final int FAR_BACK = 6;

  @Override
  public void weigh(Situation s, Judging on) {
    if (s.classification().kennedy() != KennedyClass.IV
        || s.design().all(Rest.class).isEmpty()
        || s.design().all(Saddle.class).isEmpty()) {
      return;
    }
    for (Side side : Side.values()) {
      weigh(s, side, on);
    }
  }

  private static void weigh(Situation s, Side side, Judging on) {
    Optional<Tooth> last =
        s.chart().standing().stream()
            .filter(t -> t.side() == side && t.position() < 8 && !Outlook.isPoor(s, t))
            .max(Comparator.comparingInt(Tooth::position));
    Optional<Rest> back =
        s.design().stream(Rest.class)
            .filter(r -> r.tooth().side() == side && s.chart().stands(r.tooth()))
            .max(Comparator.comparingInt(r -> r.tooth().position()));
    if (last.isEmpty()) {
      return;
    }
    int reached = back.map(r -> r.tooth().position()).orElse(0);
    if (reached >= Math.min(FAR_BACK, last.get().position())) {
      on.upheld(
          "steadies the front saddle from far back", Subject.of(s.arch(), back.orElseThrow()));
      return;
    }
    Tooth t = last.get();
    RestSite site = SpareAbutments.site(t);
    on.finding(t.toString(), Subject.of(t))
        .fact("no rest far back on the patient's " + side.name().toLowerCase(Locale.ROOT))
        .measured(
            back.map(r -> "hindmost " + Naming.of(r)).orElse("no rest"),
            "a rest on a molar, or on the last tooth")
        .remedy(NewRest.label(t, site), NewRest.edit(s, t, site))
        .done();
  }
}
