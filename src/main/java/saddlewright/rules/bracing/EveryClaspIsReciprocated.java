package saddlewright.rules.bracing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import saddlewright.dentition.Arch;
import saddlewright.dentition.End;
import saddlewright.dentition.Face;
import saddlewright.dentition.Span;
import saddlewright.design.Clasp;
import saddlewright.design.DesignEdit;
import saddlewright.design.GuidePlate;
import saddlewright.design.MinorConnector;
import saddlewright.design.Plating;
import saddlewright.design.ReciprocalArm;
import saddlewright.design.Subject;
import saddlewright.rules.Claim;
import saddlewright.rules.Draft;
import saddlewright.rules.Judging;
import saddlewright.rules.Literature;
import saddlewright.rules.Naming;
import saddlewright.rules.Reciprocation;
import saddlewright.rules.Rule;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;
import saddlewright.rules.StandingClasps;

/** A tooth that is pushed by a clasp is held from the other side. */
public final class EveryClaspIsReciprocated implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "every-clasp-is-reciprocated",
          "Every retentive arm is opposed on the other face of its tooth by an arm, a plate, or a"
              + " guide plate with a minor connector.",
          Severity.MUST,
          Source.read(Literature.NEURONS + "; " + Literature.KROL));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    for (Clasp c : s.design().all(Clasp.class)) {
      if (!s.chart().stands(c.tooth())) {
        continue;
      }
      Reciprocation r = Reciprocation.of(s, c);
      if (r.isGiven()) {
        on.upheld("is reciprocated by " + r.means().get(0), Subject.of(s.arch(), c));
        r.parts().forEach(p -> on.upheld("opposes the " + Naming.of(c), Subject.of(s.arch(), p)));
      } else if (StandingClasps.on(s, c.tooth()).size() > 1) {
        on.judged(); // Two retentive arms on one tooth are a finding of their own.
      } else {
        unopposed(s, c, on);
      }
    }
  }

  private static void unopposed(Situation s, Clasp c, Judging on) {
    Face face = c.tip().face().opposite();
    String side = face == Face.LINGUAL ? inner(c) : "buccal";
    ReciprocalArm arm = new ReciprocalArm(s.design().freshId("recip"), c.tooth(), face, c.origin());
    Draft d =
        on.finding(c.tooth().toString(), Subject.of(s.arch(), c))
            .fact("nothing opposes the " + Naming.of(c) + " on the " + side + " face")
            .measured("0 reciprocal parts", "1 reciprocal part");
    Optional<DesignEdit> released = released(s, c);
    released.ifPresent(e -> d.remedy("Add what is wanting of guide plate and strut", e));
    d.remedy("Add a " + side + " reciprocal arm", new DesignEdit.Place(arm));
    if (face == Face.LINGUAL) {
      d.remedy(
          "Plate the " + side + " face",
          new DesignEdit.Place(new Plating(s.design().freshId("plating"), Span.of(c.tooth()))));
    }
    d.done();
  }

  /** For a bar: guide plate at its origin and strut at the other end, as far as they want. */
  private static Optional<DesignEdit> released(Situation s, Clasp c) {
    if (c.form().isOcclusallyApproaching() || c.tooth().isAnterior()) {
      return Optional.empty();
    }
    List<DesignEdit> out = new ArrayList<>();
    End far = c.origin().opposite();
    boolean plated =
        s.design().stream(GuidePlate.class)
            .anyMatch(p -> p.tooth() == c.tooth() && p.end() == c.origin());
    if (!plated) {
      out.add(
          new DesignEdit.Place(new GuidePlate(s.design().freshId("plate"), c.tooth(), c.origin())));
    }
    boolean strutted =
        s.design().stream(MinorConnector.class)
            .anyMatch(m -> m.tooth() == c.tooth() && m.place() == MinorConnector.embrasure(far));
    if (!strutted) {
      out.add(
          new DesignEdit.Place(
              new MinorConnector(
                  s.design().freshId("minor"), c.tooth(), MinorConnector.embrasure(far))));
    }
    boolean room = c.tooth().neighbour(far).filter(s.chart()::stands).isPresent();
    return out.isEmpty() || !room ? Optional.empty() : Optional.of(new DesignEdit.Several(out));
  }

  private static String inner(Clasp c) {
    return c.tooth().arch() == Arch.UPPER ? "palatal" : "lingual";
  }
}
