package saddlewright.rules.framework;

import java.util.Optional;
import java.util.OptionalDouble;
import saddlewright.dentition.End;
import saddlewright.dentition.RestSite;
import saddlewright.dentition.Span;
import saddlewright.dentition.Tooth;
import saddlewright.design.Clasp;
import saddlewright.design.Component;
import saddlewright.design.DesignEdit;
import saddlewright.design.FinishLine;
import saddlewright.design.GuidePlane;
import saddlewright.design.GuidePlate;
import saddlewright.design.MajorConnector;
import saddlewright.design.MinorConnector;
import saddlewright.design.Note;
import saddlewright.design.PostDam;
import saddlewright.design.ReciprocalArm;
import saddlewright.design.Relief;
import saddlewright.design.Rest;
import saddlewright.design.RetentionMesh;
import saddlewright.design.Saddle;
import saddlewright.design.Subject;
import saddlewright.design.UnknownComponent;
import saddlewright.layout.Framework;
import saddlewright.rules.Amount;
import saddlewright.rules.Claim;
import saddlewright.rules.Draft;
import saddlewright.rules.Judging;
import saddlewright.rules.Naming;
import saddlewright.rules.NewRest;
import saddlewright.rules.Rule;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;

/** A part that hangs together with nothing cannot be cast, and would be lost in the mouth. */
public final class EveryComponentIsJoined implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "every-component-is-joined",
          "Every component that has a body is joined to the framework or to a saddle on it.",
          Severity.MUST,
          Source.commonPractice("a denture is one casting with its saddles"));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  /** Silent until there is a connector to be joined to: its absence is a finding of its own. */
  @Override
  public void weigh(Situation s, Judging on) {
    if (s.design().majorConnector().isEmpty()) {
      return;
    }
    Framework framework = s.layout().framework();
    for (Component c : s.design().components()) {
      if (c instanceof MajorConnector || !hasBody(c) || !hasPlace(s, c)) {
        continue;
      }
      if (framework.isJoined(c.id())) {
        on.judged();
        continue;
      }
      OptionalDouble gap = framework.gap(c.id());
      if (gap.isPresent()) {
        Draft d =
            on.finding(Naming.of(c), Subject.of(s.arch(), c))
                .fact("not joined to the framework")
                .measured(Amount.mm(gap.getAsDouble()) + " away", "0 mm");
        join(s, c).ifPresent(e -> d.remedy(label(e), e));
        d.done();
      }
    }
  }

  private static boolean hasBody(Component c) {
    return !(c instanceof Note
        || c instanceof GuidePlane
        || c instanceof PostDam
        || c instanceof Relief
        || c instanceof FinishLine
        || c instanceof UnknownComponent);
  }

  /** A part on a lost tooth or on a site that is none is found by other rules. */
  private static boolean hasPlace(Situation s, Component c) {
    boolean onTooth =
        c instanceof Rest
            || c instanceof Clasp
            || c instanceof ReciprocalArm
            || c instanceof GuidePlate
            || c instanceof MinorConnector;
    boolean lost = onTooth && s.chart().isLost(c.teeth().get(0));
    return !lost && !(c instanceof Rest r && !r.site().existsOn(r.tooth()));
  }

  /** A strut for a rest; a rest with its strut for an arm; a wider connector for a strut. */
  private static Optional<DesignEdit> join(Situation s, Component c) {
    if (c instanceof Rest r) {
      return NewRest.strut(s, r.tooth(), r.site())
          .<DesignEdit>map(DesignEdit.Place::new)
          .or(() -> reach(s, r.tooth()));
    }
    if (c instanceof ReciprocalArm a) {
      return rooted(s, a.tooth(), a.origin());
    }
    if (c instanceof Clasp k && k.form().isOcclusallyApproaching()) {
      return rooted(s, k.tooth(), k.origin());
    }
    if (c instanceof MinorConnector m) {
      return reach(s, m.tooth());
    }
    if (c instanceof Saddle x) {
      return reach(s, nearEnd(s, x.span()));
    }
    if (c instanceof RetentionMesh x) {
      return reach(s, nearEnd(s, x.span()));
    }
    return Optional.empty();
  }

  private static Optional<DesignEdit> rooted(Situation s, Tooth tooth, End origin) {
    RestSite site = tooth.isAnterior() ? RestSite.CINGULUM : RestSite.occlusal(origin);
    Optional<Rest> rest =
        s.design().stream(Rest.class)
            .filter(r -> r.tooth() == tooth && r.site() == site)
            .findFirst();
    return rest.isEmpty() ? Optional.of(NewRest.edit(s, tooth, site)) : join(s, rest.get());
  }

  /** Carries the connector along to a tooth beyond its ends. */
  private static Optional<DesignEdit> reach(Situation s, Tooth tooth) {
    MajorConnector m = s.design().majorConnector().orElseThrow();
    if (m.span().contains(tooth)) {
      return Optional.empty();
    }
    boolean before = tooth.place() < m.span().first().place();
    Span wide = before ? Span.of(tooth, m.span().last()) : Span.of(m.span().first(), tooth);
    return Optional.of(
        new DesignEdit.Change(new MajorConnector(m.id(), m.form(), wide, m.shape())));
  }

  /** The end of a saddle at which the connector arrives. */
  private static Tooth nearEnd(Situation s, Span saddle) {
    int middle = s.design().majorConnector().orElseThrow().span().first().place();
    return saddle.last().place() <= middle ? saddle.last() : saddle.first();
  }

  private static String label(DesignEdit edit) {
    if (edit instanceof DesignEdit.Place p) {
      return "Add a " + Naming.of(p.component());
    }
    if (edit instanceof DesignEdit.Change c) {
      return "Carry the "
          + Naming.of(c.component())
          + " to "
          + c.component().teeth().get(0)
          + " and "
          + c.component().teeth().get(c.component().teeth().size() - 1);
    }
    return "Join it by a rest and a minor connector";
  }
}
