package saddlewright.rules.clasping;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import saddlewright.dentition.End;
import saddlewright.dentition.Face;
import saddlewright.dentition.RestSite;
import saddlewright.dentition.Tooth;
import saddlewright.dentition.Zone;
import saddlewright.design.Clasp;
import saddlewright.design.ClaspForm;
import saddlewright.design.DesignEdit;
import saddlewright.design.ReciprocalArm;
import saddlewright.design.Rest;
import saddlewright.design.Subject;
import saddlewright.rules.Claim;
import saddlewright.rules.Draft;
import saddlewright.rules.Judging;
import saddlewright.rules.Literature;
import saddlewright.rules.Naming;
import saddlewright.rules.ReshapedClasp;
import saddlewright.rules.Rule;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;
import saddlewright.rules.StandingClasps;

/** One half of an embrasure clasp wedges its two teeth apart. */
public final class EmbrasureClaspsComeInPairs implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "embrasure-clasps-come-in-pairs",
          "An embrasure clasp grips both teeth beside its embrasure, back to back.",
          Severity.MUST,
          Source.read("teaching notes on rests and embrasure clasps; " + Literature.STEWART_NOTES));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    for (Clasp c : StandingClasps.of(s)) {
      if (c.form() != ClaspForm.EMBRASURE) {
        continue;
      }
      Optional<Clasp> partner = Embrasure.partner(s, c);
      if (partner.isPresent()) {
        on.upheld(
            "is balanced by the " + Naming.of(partner.get()) + " over the same embrasure",
            Subject.of(s.arch(), c));
        continue;
      }
      Optional<Tooth> beside = c.tooth().neighbour(c.origin()).filter(s.chart()::stands);
      Draft d =
          on.finding(c.tooth().toString(), Subject.of(s.arch(), c))
              .fact(
                  beside.isPresent()
                      ? "half an embrasure clasp: nothing grips " + beside.get()
                      : "an embrasure clasp where no tooth stands beside it")
              .measured("1 arm", "2 arms back to back");
      beside
          .filter(t -> !t.isAnterior() && StandingClasps.on(s, t).isEmpty())
          .ifPresent(t -> d.remedy("Clasp " + t + " back to back with it", partnering(s, c, t)));
      d.remedy(
          "Make it a plain three-arm clasp", new DesignEdit.Change(ReshapedClasp.castFromAbove(c)));
      d.done();
    }
  }

  /** The arm, the rest and the reciprocal arm of the other half. */
  private static DesignEdit partnering(Situation s, Clasp c, Tooth t) {
    End back = t.endTowards(c.tooth());
    Face face = c.tip().face();
    RestSite site = RestSite.occlusal(back);
    List<DesignEdit> edits = new ArrayList<>();
    edits.add(
        new DesignEdit.Place(
            Clasp.of(
                s.design().freshId("clasp"),
                t,
                ClaspForm.EMBRASURE,
                Zone.of(face, Optional.of(back.opposite())),
                back)));
    boolean rested =
        s.design().stream(Rest.class).anyMatch(r -> r.tooth() == t && r.site() == site);
    if (!rested) {
      edits.add(
          new DesignEdit.Place(
              new Rest(
                  s.design().freshId("rest"),
                  t,
                  site,
                  Rest.Form.EMBRASURE,
                  Rest.Seat.PREPARED_ENAMEL,
                  false)));
    }
    edits.add(
        new DesignEdit.Place(
            new ReciprocalArm(s.design().freshId("recip"), t, face.opposite(), back)));
    return new DesignEdit.Several(edits);
  }
}
