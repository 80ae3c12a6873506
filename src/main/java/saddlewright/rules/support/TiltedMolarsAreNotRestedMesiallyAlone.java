package saddlewright.rules.support;

import java.util.List;
import java.util.Optional;
import saddlewright.chart.Tilt;
import saddlewright.dentition.RestSite;
import saddlewright.dentition.Tooth;
import saddlewright.design.DesignEdit;
import saddlewright.design.Rest;
import saddlewright.design.Subject;
import saddlewright.rules.Claim;
import saddlewright.rules.Draft;
import saddlewright.rules.Judging;
import saddlewright.rules.Literature;
import saddlewright.rules.NewRest;
import saddlewright.rules.Quantity;
import saddlewright.rules.Rule;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;

/** Load on the mesial end of a mesially tilted molar tips it further. */
public final class TiltedMolarsAreNotRestedMesiallyAlone implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "tilted-molars-are-not-rested-mesially-alone",
          "A mesially tilted molar is rested distally, at both ends, or through its whole fissure.",
          Severity.SHOULD,
          Source.read(
              Literature.BRITISH_NOTES + "; a photoelastic study of rest seats on tilted molars"));

  /** The share of the crown at which an extended rest has passed its centre. */
  private static final double PAST_CENTRE = 0.5;

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    for (Tooth t : s.chart().standing()) {
      if (!t.isMolar() || !s.chart().tooth(t).tilt().equals(Optional.of(Tilt.MESIAL))) {
        continue;
      }
      List<Rest> rests = s.design().stream(Rest.class).filter(r -> r.tooth() == t).toList();
      List<Rest> good = rests.stream().filter(r -> loadsAxis(s, r)).toList();
      for (Rest r : good) {
        on.upheld("loads the mesially tilted " + t + " along its axis", Subject.of(s.arch(), r));
      }
      if (good.isEmpty() && !rests.isEmpty()) {
        find(s, t, rests.get(0), on);
      }
    }
  }

  private static void find(Situation s, Tooth t, Rest mesial, Judging on) {
    Draft d =
        on.finding(t.toString(), Subject.of(t))
            .fact("tilted mesially and rested on its mesial end alone")
            .measured("mesial rest", "distal rest or rests at both ends")
            .remedy(
                NewRest.label(t, RestSite.DISTAL_OCCLUSAL),
                NewRest.edit(s, t, RestSite.DISTAL_OCCLUSAL))
            .remedy(
                "Run it through the whole fissure",
                new DesignEdit.Change(mesial.withForm(Rest.Form.DOUBLE)));
    if (s.profile().limit(Quantity.TILTED_MOLAR_REACH) <= PAST_CENTRE) {
      d.remedy(
          "Extend it past the centre of " + t,
          new DesignEdit.Change(mesial.withForm(Rest.Form.EXTENDED)));
    }
    d.done();
  }

  /** Whether a rest loads the molar at its distal end, or far enough through its fissure. */
  private static boolean loadsAxis(Situation s, Rest r) {
    if (r.site() != RestSite.MESIAL_OCCLUSAL || r.form() == Rest.Form.DOUBLE) {
      return true;
    }
    return r.form() == Rest.Form.EXTENDED
        && s.profile().limit(Quantity.TILTED_MOLAR_REACH) <= PAST_CENTRE;
  }
}
