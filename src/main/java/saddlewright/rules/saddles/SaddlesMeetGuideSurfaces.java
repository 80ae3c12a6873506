package saddlewright.rules.saddles;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import saddlewright.dentition.End;
import saddlewright.design.Clasp;
import saddlewright.design.Component;
import saddlewright.design.ComponentId;
import saddlewright.design.DesignEdit;
import saddlewright.design.GuidePlane;
import saddlewright.design.GuidePlate;
import saddlewright.design.Subject;
import saddlewright.rules.Amount;
import saddlewright.rules.AreaSupport;
import saddlewright.rules.Claim;
import saddlewright.rules.EndSupport;
import saddlewright.rules.Judging;
import saddlewright.rules.Literature;
import saddlewright.rules.Naming;
import saddlewright.rules.Rule;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;
import saddlewright.rules.ToothList;

/**
 * Parallel surfaces beside the saddle give the denture one way in and leave no gap for food at the
 * gum.
 */
public final class SaddlesMeetGuideSurfaces implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "saddles-meet-guide-surfaces",
          "A saddle meets each abutment on a guide surface.",
          Severity.SHOULD,
          Source.read(Literature.AMERICAN_CARDS + "; " + Literature.STEWART_NOTES));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    boolean begun =
        s.design().majorConnector().isPresent() || s.design().stream(Clasp.class).count() > 0;
    if (!begun) {
      return;
    }
    for (AreaSupport a : AreaSupport.all(s)) {
      List<EndSupport> bare = new ArrayList<>();
      for (EndSupport e : a.ends()) {
        Optional<Component> guide = guide(s, e);
        if (guide.isEmpty()) {
          bare.add(e);
        } else {
          on.upheld(
              "meets " + Naming.of(a.saddle()) + " on a guide surface",
              Subject.of(s.arch(), guide.get()));
        }
      }
      if (!bare.isEmpty()) {
        find(s, a, bare, on);
      }
    }
  }

  private static void find(Situation s, AreaSupport a, List<EndSupport> bare, Judging on) {
    List<DesignEdit> plates = new ArrayList<>();
    List<DesignEdit> planes = new ArrayList<>();
    for (EndSupport e : bare) {
      plates.add(
          new DesignEdit.Place(
              new GuidePlate(ComponentId.of("plate-1"), e.abutment(), e.facing())));
      planes.add(
          new DesignEdit.Place(
              new GuidePlane(ComponentId.of("plane-1"), e.abutment(), surface(e.facing()))));
    }
    String teeth = ToothList.of(bare.stream().map(EndSupport::abutment).toList());
    on.finding(Naming.of(a.saddle()), Subject.of(s.arch(), a.saddle()))
        .fact("no guide surface on " + teeth + " beside it")
        .measured(
            (a.ends().size() - bare.size()) + " of " + Amount.of(a.ends().size(), "end"),
            "a guide plate or guide plane at each")
        .remedy("Add a guide plate on " + teeth, new DesignEdit.Several(plates))
        .remedy("Prepare a guide plane on " + teeth, new DesignEdit.Several(planes))
        .done();
  }

  private static Optional<Component> guide(Situation s, EndSupport e) {
    for (Component c : s.design().components()) {
      if (c instanceof GuidePlate p && p.tooth() == e.abutment() && p.end() == e.facing()
          || c instanceof GuidePlane q
              && q.tooth() == e.abutment()
              && q.surface() == surface(e.facing())) {
        return Optional.of(c);
      }
    }
    return Optional.empty();
  }

  private static GuidePlane.Surface surface(End end) {
    return end == End.MESIAL ? GuidePlane.Surface.MESIAL : GuidePlane.Surface.DISTAL;
  }
}
