package saddlewright.rules.support;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import saddlewright.chart.Tilt;
import saddlewright.dentition.RestSite;
import saddlewright.dentition.Tooth;
import saddlewright.design.Rest;
import saddlewright.design.Subject;
import saddlewright.rules.Claim;
import saddlewright.rules.Finding;
import saddlewright.rules.Judging;
import saddlewright.rules.Literature;
import saddlewright.rules.NewRest;
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

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    found(s).forEach(on::add);
  }

  private List<Finding> found(Situation s) {
    List<Finding> out = new ArrayList<>();
    for (Tooth t : s.chart().standing()) {
      List<Rest> rests = s.design().stream(Rest.class).filter(r -> r.tooth() == t).toList();
      boolean leans = s.chart().tooth(t).tilt().equals(Optional.of(Tilt.MESIAL));
      boolean mesialAlone =
          !rests.isEmpty()
              && rests.stream()
                  .allMatch(
                      r ->
                          r.site() == RestSite.MESIAL_OCCLUSAL
                              && r.form() != Rest.Form.DOUBLE
                              && r.form() != Rest.Form.EXTENDED);
      if (t.isMolar() && leans && mesialAlone) {
        out.add(
            finding(t.toString(), Subject.of(t))
                .fact("tilted mesially and rested on its mesial end alone")
                .measured("mesial rest", "distal rest or rests at both ends")
                .remedy(
                    NewRest.label(t, RestSite.DISTAL_OCCLUSAL),
                    NewRest.edit(s, t, RestSite.DISTAL_OCCLUSAL))
                .done());
      }
    }
    return out;
  }
}
