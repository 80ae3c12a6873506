package saddlewright.rules.bracing;

import java.util.Optional;
import saddlewright.chart.ChartField;
import saddlewright.chart.Tilt;
import saddlewright.chart.ToothFindings;
import saddlewright.dentition.End;
import saddlewright.design.DesignEdit;
import saddlewright.design.GuidePlane;
import saddlewright.design.GuidePlate;
import saddlewright.design.Subject;
import saddlewright.rules.Amount;
import saddlewright.rules.Claim;
import saddlewright.rules.Judging;
import saddlewright.rules.Quantity;
import saddlewright.rules.Rule;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;

/** The surface towards which a tooth leans is an undercut: a plate cannot slide along it. */
public final class GuidePlatesStandOnUprightSurfaces implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "guide-plates-stand-on-upright-surfaces",
          "A tooth leans no more than 10 degrees towards its own guide plate, unless a guide plane is"
              + " cut there.",
          Severity.CONSIDER,
          Source.fromMemory(
              "common teaching on surveying: a tilt of the cast up to 10 degrees makes up for"
                  + " leaning guide surfaces"));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    double most = s.profile().limit(Quantity.GUIDED_LEAN);
    for (GuidePlate p : s.design().all(GuidePlate.class)) {
      ToothFindings found = s.chart().tooth(p.tooth());
      boolean leansThere = found.tilt().equals(Optional.of(towards(p.end())));
      if (!s.chart().stands(p.tooth()) || !leansThere) {
        continue;
      }
      Subject plate = Subject.of(s.arch(), p);
      Optional<Double> degrees = found.tiltDegrees();
      if (degrees.isEmpty()) {
        on.unanswered(ChartField.tiltDegrees(p.tooth()), plate);
      } else if (isPrepared(s, p)) {
        on.upheld("slides on a plane cut upright into a leaning tooth", plate);
      } else if (degrees.get() <= most) {
        on.upheld("slides on a surface that leans no more than the cast can be tilted", plate);
      } else {
        on.finding(p.tooth().toString(), plate)
            .fact(
                "the tooth leans towards its guide plate, which must be blocked out there; grind"
                    + " or build up the surface first")
            .measured(Amount.degrees(degrees.get()), "at most " + Amount.degrees(most))
            .remedy(
                "Prepare a guide plane there",
                new DesignEdit.Place(
                    new GuidePlane(s.design().freshId("plane"), p.tooth(), surface(p))))
            .remedy("Take the guide plate away", new DesignEdit.Remove(p.id()))
            .done();
      }
    }
  }

  private static boolean isPrepared(Situation s, GuidePlate p) {
    return s.design().stream(GuidePlane.class)
        .anyMatch(x -> x.tooth() == p.tooth() && x.surface() == surface(p));
  }

  private static GuidePlane.Surface surface(GuidePlate p) {
    return p.end() == End.MESIAL ? GuidePlane.Surface.MESIAL : GuidePlane.Surface.DISTAL;
  }

  private static Tilt towards(End end) {
    return end == End.MESIAL ? Tilt.MESIAL : Tilt.DISTAL;
  }
}
