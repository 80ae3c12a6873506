package saddlewright.rules.bracing;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import saddlewright.chart.ChartField;
import saddlewright.chart.Undercut;
import saddlewright.dentition.Face;
import saddlewright.design.Clasp;
import saddlewright.design.Component;
import saddlewright.design.ConnectorForm;
import saddlewright.design.DesignEdit;
import saddlewright.design.GuidePlane;
import saddlewright.design.MajorConnector;
import saddlewright.design.Plating;
import saddlewright.design.ReciprocalArm;
import saddlewright.design.Subject;
import saddlewright.layout.Measure;
import saddlewright.rules.Amount;
import saddlewright.rules.Claim;
import saddlewright.rules.Draft;
import saddlewright.rules.GuideSurface;
import saddlewright.rules.Judging;
import saddlewright.rules.Literature;
import saddlewright.rules.Naming;
import saddlewright.rules.Reciprocation;
import saddlewright.rules.Rule;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;

/** A tip pushes while it passes the bulge, so that is when its opponent must touch the tooth. */
public final class ReciprocationLastsAsLongAsTheFlexing implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "reciprocation-lasts-as-long-as-the-flexing",
          "The part that opposes a clasp touches the tooth for as long as the tip springs: by a"
              + " plate, or by a guide plane as high as the way of the tip.",
          Severity.SHOULD,
          Source.read(Literature.MCCRACKEN_NOTES + "; " + Literature.OKLAHOMA));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    for (Clasp c : s.design().all(Clasp.class)) {
      boolean applies = s.chart().stands(c.tooth()) && Reciprocation.of(s, c).isGiven();
      if (applies && !c.form().isSelfReciprocating()) {
        weigh(s, c, on);
      }
    }
  }

  private static void weigh(Situation s, Clasp c, Judging on) {
    Subject clasp = Subject.of(s.arch(), c);
    Optional<Component> plate = plate(s, c);
    if (plate.isPresent()) {
      on.upheld(
          "steadies " + c.tooth() + " all the way while the tip of its clasp passes the bulge",
          Subject.of(s.arch(), plate.get()));
      return;
    }
    Optional<Undercut> undercut =
        Optional.ofNullable(s.chart().tooth(c.tooth()).undercuts().get(c.tip()));
    if (undercut.filter(u -> u.depth() <= 0).isPresent()) {
      on.judged(); // Where nothing holds the tip, nothing flexes; that is a finding of its own.
      return;
    }
    if (undercut.flatMap(Undercut::height).isEmpty()) {
      on.unanswered(ChartField.undercutHeight(c.tooth(), c.tip()), clasp);
      return;
    }
    double way = s.layout().find(c.id()).map(l -> l.measure(Measure.TRAVEL).orElse(0)).orElse(0.0);
    Optional<ReciprocalArm> arm = arm(s, c);
    if (arm.isPresent()) {
      weigh(s, c, arm.get(), way, on);
    } else {
      plates(s, c, way, on);
    }
  }

  /** An arm meets the tooth early only where a plane was cut under it. */
  private static void weigh(Situation s, Clasp c, ReciprocalArm arm, double way, Judging on) {
    if (arm.face() == Face.BUCCAL) {
      on.judged();
      return;
    }
    Optional<GuideSurface> plane = GuideSurface.lingual(s, c.tooth());
    double height = plane.map(GuideSurface::height).orElse(0.0);
    Subject subject = Subject.of(s.arch(), arm);
    if (plane.isPresent() && height >= way) {
      on.upheld(
          "stays on its guide plane for "
              + Amount.mm(height)
              + " while the tip travels "
              + Amount.mm(way),
          subject);
      return;
    }
    Draft d =
        on.finding(c.tooth().toString(), subject)
            .fact(
                plane.isPresent()
                    ? "the guide plane under the reciprocal arm is lower than the way of the tip"
                    : "the reciprocal arm meets the tooth only when the denture is home; no guide"
                        + " plane is prepared under it")
            .measured(Amount.mm(height) + " of guide plane", Amount.atLeastMm(way))
            .weighing(plane.isPresent() ? Severity.SHOULD : Severity.CONSIDER);
    GuidePlane prepared =
        new GuidePlane(s.design().freshId("plane"), c.tooth(), GuidePlane.Surface.LINGUAL);
    if (plane.isEmpty() && usualHeight(s, prepared) >= way) {
      d.remedy("Prepare a lingual guide plane under the arm", new DesignEdit.Place(prepared));
    }
    PlateInstead.of(s, arm).ifPresent(e -> d.remedy(PlateInstead.LABEL, e));
    d.done();
  }

  private static double usualHeight(Situation s, GuidePlane plane) {
    return s.layout()
        .plus(plane)
        .find(plane.id())
        .map(l -> l.measure(Measure.HEIGHT).orElse(0))
        .orElse(0.0);
  }

  private static void plates(Situation s, Clasp c, double way, Judging on) {
    List<GuideSurface> guides =
        GuideSurface.all(s).stream()
            .filter(g -> g.tooth() == c.tooth() && g.end().isPresent())
            .toList();
    Optional<GuideSurface> tallest =
        guides.stream().max(Comparator.comparingDouble(GuideSurface::height));
    if (tallest.isEmpty()) {
      on.judged();
      return;
    }
    Subject part = Subject.of(s.arch(), tallest.get().part());
    double height = tallest.get().height();
    if (height >= way) {
      on.upheld(
          "keeps "
              + c.tooth()
              + " from turning for "
              + Amount.mm(height)
              + " while the tip travels "
              + Amount.mm(way),
          part);
    } else {
      on.finding(c.tooth().toString(), part)
          .fact(Naming.of(tallest.get().part()) + " lets go before the tip has passed the bulge")
          .measured(Amount.mm(height) + " of guide plane", Amount.atLeastMm(way))
          .done();
    }
  }

  private static Optional<ReciprocalArm> arm(Situation s, Clasp c) {
    return s.design().stream(ReciprocalArm.class)
        .filter(a -> a.tooth() == c.tooth() && a.face() == c.tip().face().opposite())
        .findFirst();
  }

  private static Optional<Component> plate(Situation s, Clasp c) {
    if (c.tip().face() != Face.BUCCAL) {
      return Optional.empty();
    }
    return s.design().components().stream()
        .filter(x -> x.teeth().contains(c.tooth()))
        .filter(
            x ->
                x instanceof Plating
                    || x instanceof MajorConnector m && m.form() == ConnectorForm.LINGUAL_PLATE)
        .findFirst();
  }
}
