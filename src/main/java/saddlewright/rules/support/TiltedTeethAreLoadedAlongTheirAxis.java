package saddlewright.rules.support;

import java.util.List;
import java.util.Optional;
import saddlewright.chart.Tilt;
import saddlewright.dentition.End;
import saddlewright.dentition.RestSite;
import saddlewright.dentition.Tooth;
import saddlewright.design.Rest;
import saddlewright.design.Subject;
import saddlewright.rules.AreaSupport;
import saddlewright.rules.Claim;
import saddlewright.rules.Judging;
import saddlewright.rules.NewRest;
import saddlewright.rules.Rule;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;

/** Load on the end towards which a tooth leans tips it further. */
public final class TiltedTeethAreLoadedAlongTheirAxis implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "tilted-teeth-are-loaded-along-their-axis",
          "A leaning premolar, or a molar that leans back, is not rested on its lower end alone.",
          Severity.CONSIDER,
          Source.derived(
              "what is taught of mesially tilted molars holds for other leaning teeth: a load on the end towards which a tooth leans tips it further"));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    for (Tooth t : s.chart().standing()) {
      Optional<End> low = low(s, t);
      if (low.isEmpty()) {
        continue;
      }
      List<Rest> rests = s.design().stream(Rest.class).filter(r -> r.tooth() == t).toList();
      if (rests.isEmpty()) {
        continue;
      }
      List<Rest> good = rests.stream().filter(r -> loadsAxis(r, low.get())).toList();
      if (!good.isEmpty()) {
        String way = adjective(low.get()) + "ly";
        for (Rest r : good) {
          on.upheld(
              "loads the " + way + " tilted " + t + " along its axis", Subject.of(s.arch(), r));
        }
      } else if (isFreeEnd(s, t)) {
        // Beside a free end the lever of the base outweighs the lean; another rule places that
        // rest.
        on.judged();
      } else {
        RestSite site = RestSite.occlusal(low.get().opposite());
        on.finding(t.toString(), Subject.of(s.arch(), rests.get(0)))
            .fact("leans " + adjective(low.get()) + "ly" + " and is rested on that end alone")
            .measured(
                adjective(low.get()) + " rest", adjective(low.get().opposite()) + " rest or both")
            .remedy(NewRest.label(t, site), NewRest.edit(s, t, site))
            .done();
      }
    }
  }

  private static String adjective(End end) {
    return end == End.MESIAL ? "mesial" : "distal";
  }

  /** The end towards which it leans; a mesially tilted molar has a rule of its own. */
  private static Optional<End> low(Situation s, Tooth t) {
    Optional<Tilt> tilt = s.chart().tooth(t).tilt();
    if (t.isAnterior() || tilt.isEmpty()) {
      return Optional.empty();
    }
    if (tilt.get() == Tilt.DISTAL) {
      return Optional.of(End.DISTAL);
    }
    return tilt.get() == Tilt.MESIAL && t.isPremolar() ? Optional.of(End.MESIAL) : Optional.empty();
  }

  private static boolean loadsAxis(Rest r, End low) {
    return r.form() == Rest.Form.DOUBLE || !r.site().end().equals(Optional.of(low));
  }

  private static boolean isFreeEnd(Situation s, Tooth t) {
    for (AreaSupport a : AreaSupport.all(s)) {
      if (a.isFreeEnd() && a.ends().get(0).abutment() == t) {
        return true;
      }
    }
    return false;
  }
}
