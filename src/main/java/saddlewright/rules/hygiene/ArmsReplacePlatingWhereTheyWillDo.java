package saddlewright.rules.hygiene;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import saddlewright.dentition.Tooth;
import saddlewright.design.Clasp;
import saddlewright.design.DesignEdit;
import saddlewright.design.MinorConnector;
import saddlewright.design.Plating;
import saddlewright.design.ReciprocalArm;
import saddlewright.design.Rest;
import saddlewright.design.Subject;
import saddlewright.rules.Claim;
import saddlewright.rules.Draft;
import saddlewright.rules.Judging;
import saddlewright.rules.Literature;
import saddlewright.rules.Naming;
import saddlewright.rules.Rule;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;

/** An arm braces a back tooth as well as a plate does, and leaves the gum alone. */
public final class ArmsReplacePlatingWhereTheyWillDo implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "arms-replace-plating-where-they-will-do",
          "On a premolar or molar a reciprocal arm is used rather than plating, which"
              + " covers the gum.",
          Severity.SHOULD,
          Source.commonPractice(
              "gum margins are left free where arms will do; " + Literature.OWALL));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    for (Plating p : s.design().all(Plating.class)) {
      for (Tooth t : p.span().teeth()) {
        Optional<Clasp> clasp =
            s.design().stream(Clasp.class).filter(c -> c.tooth() == t).findFirst();
        if (t.isAnterior() || !s.chart().stands(t) || clasp.isEmpty()) {
          continue;
        }
        if (!s.layout().gums().isCovered(t, p.id())) {
          on.judged();
          continue;
        }
        Draft d =
            on.finding(Naming.of(p), Subject.of(s.arch(), p), Subject.of(t))
                .fact("covers the gum of " + t + " where an arm would do")
                .measured(
                    Math.round(100 * s.layout().gums().share(t, p.id())) + " % of its margin",
                    "a reciprocal arm");
        if (p.span().size() == 1) {
          d.remedy("Put a reciprocal arm in its place", arm(s, p, clasp.get()));
        }
        d.done();
      }
    }
    for (ReciprocalArm a : s.design().all(ReciprocalArm.class)) {
      if (!a.tooth().isAnterior() && !s.layout().gums().isCovered(a.tooth())) {
        on.upheld("braces the tooth and leaves its gum free", Subject.of(s.arch(), a));
      }
    }
  }

  private static DesignEdit arm(Situation s, Plating p, Clasp clasp) {
    List<DesignEdit> edits = new ArrayList<>();
    edits.add(new DesignEdit.Remove(p.id()));
    Tooth t = clasp.tooth();
    boolean braced = s.design().stream(ReciprocalArm.class).anyMatch(a -> a.tooth() == t);
    if (!braced) {
      edits.add(
          new DesignEdit.Place(
              new ReciprocalArm(
                  s.design().freshId("recip"), t, clasp.tip().face().opposite(), clasp.origin())));
    }
    // The rest hung on the plating; it needs a strut of its own unless a saddle lies beside it.
    s.design().stream(Rest.class)
        .filter(r -> r.tooth() == t)
        .flatMap(r -> r.site().end().stream())
        .filter(e -> t.neighbour(e).filter(n -> s.design().saddleAt(n).isPresent()).isEmpty())
        .map(MinorConnector::embrasure)
        .filter(
            place ->
                s.design().stream(MinorConnector.class)
                    .noneMatch(m -> m.tooth() == t && m.place() == place))
        .forEach(
            place ->
                edits.add(
                    new DesignEdit.Place(
                        new MinorConnector(s.design().freshId("minor"), t, place))));
    return new DesignEdit.Several(edits);
  }
}
