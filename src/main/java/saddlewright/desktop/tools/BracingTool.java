package saddlewright.desktop.tools;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import saddlewright.casefile.Assessment;
import saddlewright.dentition.End;
import saddlewright.dentition.Face;
import saddlewright.dentition.Span;
import saddlewright.dentition.Tooth;
import saddlewright.dentition.ToothNames;
import saddlewright.design.ArchDesign;
import saddlewright.design.Clasp;
import saddlewright.design.Component;
import saddlewright.design.ComponentId;
import saddlewright.design.DesignEdit;
import saddlewright.design.GuidePlane;
import saddlewright.design.GuidePlate;
import saddlewright.design.Plating;
import saddlewright.design.ReciprocalArm;
import saddlewright.design.Unit;
import saddlewright.desktop.Words;
import saddlewright.rules.Situation;

/** Places what holds a tooth against sideways push: an arm, a plate, a plane, plating. */
enum BracingTool implements Tool {
  RECIPROCAL_ARM,
  GUIDE_PLATE,
  GUIDE_PLANE,
  PLATING;

  @Override
  public List<Proposal> proposals(Aim aim, Assessment now) {
    Situation arch = now.arch(aim.arch());
    if (aim.tooth().isEmpty() || !arch.chart().stands(aim.tooth().get())) {
      return List.of();
    }
    Tooth tooth = aim.tooth().get();
    List<Proposal> out = new ArrayList<>();
    for (Component part : parts(aim, tooth, arch.design())) {
      Unit.in(arch.design())
          .plus(part)
          .edit()
          .ifPresent(
              e ->
                  out.add(
                      new Proposal(
                          Words.of("edit.place-on", Words.of(this), tooth, side(part, tooth)),
                          aim.arch(),
                          now.subject().with(aim.arch(), e))));
      if (out.isEmpty()) {
        return List.of();
      }
    }
    return out;
  }

  @Override
  public Sites sites() {
    return switch (this) {
      case RECIPROCAL_ARM -> Sites.FACES;
      case GUIDE_PLATE -> Sites.ENDS;
      case GUIDE_PLANE -> Sites.ENDS_AND_LINGUAL;
      case PLATING -> Sites.TOOTH;
    };
  }

  @Override
  public Optional<Refusal> refusal(Aim aim, Assessment now) {
    Situation arch = now.arch(aim.arch());
    return Reasons.lost(aim, arch.chart())
        .or(
            () ->
                aim.tooth()
                    .flatMap(
                        t ->
                            this == PLATING
                                ? Reasons.there(
                                    arch, c -> c instanceof Plating p && p.span().contains(t))
                                : parts(aim, t, arch.design()).stream()
                                    .findFirst()
                                    .flatMap(
                                        part ->
                                            Reasons.there(
                                                arch, c -> c.withId(part.id()).equals(part)))));
  }

  @Override
  public boolean isStretched(Aim from, Assessment now) {
    Situation arch = now.arch(from.arch());
    return this == PLATING
        && from.inside()
        && from.tooth().filter(t -> isBare(arch, t)).isPresent();
  }

  /** Plating over the standing teeth from one to the other, as far as they stand in a row. */
  @Override
  public List<Proposal> stretched(Aim from, Aim to, Assessment now) {
    Situation arch = now.arch(from.arch());
    if (!isStretched(from, now) || to.tooth().isEmpty() || to.arch() != from.arch()) {
      return List.of();
    }
    Span span = Run.of(from.tooth().get(), to.tooth().get(), t -> isBare(arch, t));
    return List.of(
        new Proposal(
            Words.of("edit.place", Words.of(this), span),
            from.arch(),
            now.subject()
                .with(
                    from.arch(),
                    new DesignEdit.Place(new Plating(ComponentId.of("plating-1"), span)))));
  }

  private static boolean isBare(Situation arch, Tooth tooth) {
    return arch.chart().stands(tooth)
        && arch.design().stream(Plating.class).noneMatch(p -> p.span().contains(tooth));
  }

  private List<Component> parts(Aim aim, Tooth tooth, ArchDesign design) {
    ComponentId id = ComponentId.of(prefix() + "-1");
    return switch (this) {
      case RECIPROCAL_ARM -> {
        End origin = origin(design, tooth, aim.end());
        yield List.of(
            new ReciprocalArm(id, tooth, aim.face(), origin),
            new ReciprocalArm(id, tooth, aim.face(), origin.opposite()));
      }
      case GUIDE_PLATE -> List.of(new GuidePlate(id, tooth, aim.end()));
      case GUIDE_PLANE ->
          List.of(
              new GuidePlane(
                  id,
                  tooth,
                  !aim.isProximal() && aim.face() == Face.LINGUAL
                      ? GuidePlane.Surface.LINGUAL
                      : aim.end() == End.MESIAL
                          ? GuidePlane.Surface.MESIAL
                          : GuidePlane.Surface.DISTAL));
      case PLATING -> {
        boolean plated = design.stream(Plating.class).anyMatch(p -> p.span().contains(tooth));
        yield plated ? List.of() : List.of(new Plating(id, Span.of(tooth)));
      }
    };
  }

  private String prefix() {
    return switch (this) {
      case RECIPROCAL_ARM -> "recip";
      case GUIDE_PLATE -> "plate";
      case GUIDE_PLANE -> "plane";
      case PLATING -> "plating";
    };
  }

  /** The arm comes from where the clasp that it answers comes; otherwise from the nearer end. */
  private static End origin(ArchDesign design, Tooth tooth, End near) {
    return design.stream(Clasp.class)
        .filter(c -> c.tooth() == tooth)
        .map(Clasp::origin)
        .findFirst()
        .orElse(near);
  }

  private static String side(Component part, Tooth tooth) {
    if (part instanceof ReciprocalArm a) {
      return ToothNames.face(tooth, a.face());
    }
    if (part instanceof GuidePlate p) {
      return ToothNames.end(p.end());
    }
    if (part instanceof GuidePlane p) {
      return Words.of(p.surface()).toLowerCase(java.util.Locale.ROOT);
    }
    return ToothNames.face(tooth, Face.LINGUAL);
  }
}
