package saddlewright.rules.undercut;

import java.util.ArrayList;
import java.util.List;
import saddlewright.dentition.Arch;
import saddlewright.dentition.End;
import saddlewright.dentition.Face;
import saddlewright.dentition.RestSite;
import saddlewright.dentition.Tooth;
import saddlewright.dentition.Zone;
import saddlewright.design.Clasp;
import saddlewright.design.DesignEdit;
import saddlewright.design.Rest;
import saddlewright.design.Subject;
import saddlewright.rules.Claim;
import saddlewright.rules.Draft;
import saddlewright.rules.Judging;
import saddlewright.rules.Literature;
import saddlewright.rules.NewRest;
import saddlewright.rules.ReshapedClasp;
import saddlewright.rules.Rule;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;
import saddlewright.rules.StandingClasps;
import saddlewright.rules.SurveyedTooth;

/** A lower molar that has leaned inwards is undercut on its lingual face alone. */
public final class LinguallyUndercutMolarsTakeRingClasps implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "lingually-undercut-molars-take-ring-clasps",
          "A tilted lower molar whose only undercut is lingual is held there, by a ring or a lingual"
              + " arm.",
          Severity.SHOULD,
          Source.read(Literature.OKLAHOMA + "; " + Literature.STRATTON));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    for (Clasp c : StandingClasps.of(s)) {
      Tooth t = c.tooth();
      SurveyedTooth survey = SurveyedTooth.of(s, t);
      List<Zone> lingual = survey.undercut(Face.LINGUAL);
      if (t.arch() != Arch.LOWER
          || !t.isMolar()
          || s.chart().tooth(t).tilt().isEmpty()
          || lingual.isEmpty()
          || !survey.undercut(Face.BUCCAL).isEmpty()) {
        continue;
      }
      if (c.tip().face() == Face.LINGUAL) {
        on.upheld(
            "holds a leaning molar by the only undercut that it has", Subject.of(s.arch(), c));
        continue;
      }
      Draft d =
          on.finding(t.toString(), Subject.of(s.arch(), c))
              .fact("the leaning molar is undercut on its lingual face alone")
              .measured("buccal tip", "a ring or a lingual arm");
      lingual.stream()
          .filter(z -> z.end().isPresent())
          .findFirst()
          .ifPresent(z -> d.remedy("Make it a ring", ring(s, c, z)));
      d.done();
    }
  }

  /** A ring takes a rest at each end. */
  private static DesignEdit ring(Situation s, Clasp c, Zone tip) {
    List<DesignEdit> edits = new ArrayList<>();
    edits.add(new DesignEdit.Change(ReshapedClasp.ring(c, tip)));
    for (End end : End.values()) {
      RestSite site = RestSite.occlusal(end);
      boolean rested =
          s.design().stream(Rest.class).anyMatch(r -> r.tooth() == c.tooth() && r.site() == site);
      if (!rested) {
        edits.add(NewRest.edit(s, c.tooth(), site));
      }
    }
    return new DesignEdit.Several(edits);
  }
}
