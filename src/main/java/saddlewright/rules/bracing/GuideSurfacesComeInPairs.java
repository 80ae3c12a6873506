package saddlewright.rules.bracing;

import java.util.ArrayList;
import java.util.List;
import saddlewright.design.ArchDesign;
import saddlewright.design.DesignEdit;
import saddlewright.design.GuidePlane;
import saddlewright.design.GuidePlate;
import saddlewright.design.Rest;
import saddlewright.design.Subject;
import saddlewright.rules.Amount;
import saddlewright.rules.AreaSupport;
import saddlewright.rules.Claim;
import saddlewright.rules.Draft;
import saddlewright.rules.EndSupport;
import saddlewright.rules.GuideSurface;
import saddlewright.rules.Judging;
import saddlewright.rules.Literature;
import saddlewright.rules.Rule;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;

/** One guided surface lets a denture turn; two lead it along a single path. */
public final class GuideSurfacesComeInPairs implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "guide-surfaces-come-in-pairs",
          "A denture is led along its path by at least two guide surfaces on different teeth.",
          Severity.SHOULD,
          Source.read("North American teaching cards; " + Literature.DALHOUSIE));

  private static final int PAIR = 2;

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    boolean rested = !s.design().all(Rest.class).isEmpty();
    if (!rested || AreaSupport.all(s).stream().allMatch(a -> a.ends().isEmpty())) {
      return;
    }
    if (s.chart().standing().size() < PAIR) {
      on.judged(); // The lone tooth is a finding of its own.
      return;
    }
    List<GuideSurface> guides = GuideSurface.all(s);
    long teeth = guides.stream().map(GuideSurface::tooth).distinct().count();
    if (teeth >= PAIR) {
      guides.forEach(
          g ->
              on.upheld(
                  "is one of " + teeth + " surfaces that give the denture a single path",
                  Subject.of(s.arch(), g.part())));
      return;
    }
    Draft d =
        on.finding(s.arch().code() + " denture", Subject.of(s.arch()))
            .fact("nothing leads it along a single path of insertion")
            .measured(Amount.teeth(teeth, "guided"), "at least 2 guided teeth");
    DesignEdit plates = plates(s);
    if (guided(s, plates) >= PAIR) {
      d.remedy("Add guide plates beside the saddles", plates);
    }
    d.done();
  }

  /** A guide plate wherever a tooth faces a saddle without one. */
  private static DesignEdit plates(Situation s) {
    List<DesignEdit> out = new ArrayList<>();
    for (AreaSupport a : AreaSupport.all(s)) {
      for (EndSupport e : a.ends()) {
        boolean there =
            s.design().stream(GuidePlate.class)
                .anyMatch(p -> p.tooth() == e.abutment() && p.end() == e.facing());
        if (!there) {
          out.add(
              new DesignEdit.Place(
                  new GuidePlate(s.design().freshId("plate"), e.abutment(), e.facing())));
        }
      }
    }
    return new DesignEdit.Several(out);
  }

  private static long guided(Situation s, DesignEdit edit) {
    ArchDesign after = edit.applyTo(s.design());
    return after.components().stream()
        .filter(c -> c instanceof GuidePlate || c instanceof GuidePlane)
        .flatMap(c -> c.teeth().stream())
        .filter(s.chart()::stands)
        .distinct()
        .count();
  }
}
