package saddlewright.rules.support;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import saddlewright.chart.Tilt;
import saddlewright.dentition.End;
import saddlewright.dentition.Tooth;
import saddlewright.design.Clasp;
import saddlewright.design.DesignEdit;
import saddlewright.design.Rest;
import saddlewright.design.Saddle;
import saddlewright.design.Subject;
import saddlewright.rules.AreaSupport;
import saddlewright.rules.Claim;
import saddlewright.rules.EndSupport;
import saddlewright.rules.Judging;
import saddlewright.rules.Literature;
import saddlewright.rules.Naming;
import saddlewright.rules.NewRest;
import saddlewright.rules.Quantity;
import saddlewright.rules.Rule;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;

/** A rest away from a free-end saddle spares its abutment the distal pull as the base sinks. */
public final class FreeEndRestsLieAwayFromTheSaddle implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "free-end-rests-lie-away-from-the-saddle",
          "The rest on the terminal abutment of a free-end saddle lies on the side away from it.",
          Severity.SHOULD,
          Source.read(Literature.OKLAHOMA + "; " + Literature.BRITISH_NOTES));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    for (AreaSupport a : AreaSupport.all(s)) {
      if (a.isFreeEnd() && a.ends().get(0).isRested()) {
        weigh(s, a.ends().get(0), a.saddle(), on);
      }
    }
  }

  private static void weigh(Situation s, EndSupport end, Saddle saddle, Judging on) {
    for (Rest r : end.otherRests()) {
      on.upheld(
          "lies away from the free-end "
              + Naming.of(saddle)
              + ", so that its abutment is not pulled back",
          Subject.of(s.arch(), r));
    }
    if (!isNearOnly(end)) {
      on.judged();
      return;
    }
    Rest rest = end.facingRests().get(0);
    Optional<String> excuse = excuse(s, end);
    if (excuse.isPresent()) {
      on.upheld("lies beside the saddle because " + excuse.get(), Subject.of(s.arch(), rest));
    } else {
      find(s, end, rest, saddle, on);
    }
  }

  private static void find(Situation s, EndSupport end, Rest rest, Saddle saddle, Judging on) {
    Tooth t = end.abutment();
    List<DesignEdit> edits = new ArrayList<>();
    edits.add(new DesignEdit.Change(rest.withSite(end.farSite()).withForm(Rest.Form.STANDARD)));
    NewRest.strut(s, t, end.farSite()).ifPresent(m -> edits.add(new DesignEdit.Place(m)));
    on.finding(t.toString(), Subject.of(s.arch(), rest))
        .fact("the only rest on this abutment lies next to the free-end " + Naming.of(saddle))
        .measured(side(end.facing()) + " rest", side(end.facing().opposite()) + " rest")
        .remedy(
            "Move it to the " + side(end.facing().opposite()) + " side",
            new DesignEdit.Several(edits))
        .done();
  }

  /** Whether every rest lies on the occlusal surface beside the saddle. */
  private static boolean isNearOnly(EndSupport e) {
    return e.otherRests().isEmpty()
        && e.facingRests().stream()
            .allMatch(r -> r.site().isOcclusal() && r.form() != Rest.Form.DOUBLE);
  }

  /** No room on the far side, a distally tilted tooth, or a wrought arm that yields. */
  private static Optional<String> excuse(Situation s, EndSupport e) {
    Double room = s.chart().tooth(e.abutment()).clearances().get(e.farSite());
    if (room != null && room < s.profile().limit(Quantity.REST_CLEARANCE_LEAST)) {
      return Optional.of("the other side has no room");
    }
    if (s.chart().tooth(e.abutment()).tilt().equals(Optional.of(Tilt.DISTAL))) {
      return Optional.of(e.abutment() + " leans back");
    }
    return s.design().stream(Clasp.class)
            .anyMatch(c -> c.tooth() == e.abutment() && c.material().isWrought())
        ? Optional.of("the wrought arm yields")
        : Optional.empty();
  }

  private static String side(End end) {
    return end == End.MESIAL ? "mesial" : "distal";
  }
}
