package saddlewright.desktop.tools;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import saddlewright.casefile.Assessment;
import saddlewright.classification.EdentulousArea;
import saddlewright.dentition.Arch;
import saddlewright.dentition.Span;
import saddlewright.dentition.Tooth;
import saddlewright.design.ArchDesign;
import saddlewright.design.Backing;
import saddlewright.design.CompleteSaddle;
import saddlewright.design.Component;
import saddlewright.design.ComponentId;
import saddlewright.design.FinishLine;
import saddlewright.design.RetentionMesh;
import saddlewright.design.Saddle;
import saddlewright.design.TissueStop;
import saddlewright.design.Unit;
import saddlewright.desktop.Words;
import saddlewright.rules.Situation;

/** Places a saddle, or a part of one, over the edentulous run pointed at. */
enum SaddleTool implements Tool {
  COMPLETE,
  SADDLE,
  MESH,
  FINISH_LINE,
  TISSUE_STOP,
  BACKING;

  @Override
  public List<Proposal> proposals(Aim aim, Assessment now) {
    Situation arch = now.arch(aim.arch());
    Optional<Tooth> tooth = aim.tooth().filter(t -> arch.chart().isLost(t));
    if (tooth.isEmpty()) {
      return List.of();
    }
    Optional<EdentulousArea> area = arch.classification().areaAt(tooth.get());
    ArchDesign design = arch.design();
    Optional<Span> span =
        design.saddleAt(tooth.get()).map(Saddle::span).or(() -> area.map(EdentulousArea::span));
    if (this == TISSUE_STOP) {
      return propose(aim, now, List.of(new TissueStop(id("stop"), tooth.get())));
    }
    if (this == BACKING) {
      return propose(aim, now, List.of(new Backing(id("backing"), tooth.get())));
    }
    if (span.isEmpty()) {
      return List.of();
    }
    return switch (this) {
      case COMPLETE ->
          propose(
              aim,
              now,
              CompleteSaddle.over(design, span.get(), freeEnds(area, span.get())).parts());
      case SADDLE ->
          design.saddleAt(tooth.get()).isPresent()
              ? List.of()
              : propose(aim, now, List.of(Saddle.of(id("saddle"), span.get())));
      case MESH ->
          propose(
              aim,
              now,
              List.of(new RetentionMesh(id("mesh"), span.get(), RetentionMesh.Form.LATTICE)));
      default ->
          propose(
              aim, now, List.of(new FinishLine(id("finish"), span.get(), FinishLine.Level.BOTH)));
    };
  }

  @Override
  public Optional<Refusal> refusal(Aim aim, Assessment now) {
    Situation arch = now.arch(aim.arch());
    Optional<Tooth> tooth = aim.tooth();
    if (tooth.isEmpty() || !aim.inside()) {
      return Optional.empty();
    }
    if (arch.chart().stands(tooth.get())) {
      return Optional.of(Reasons.stands(tooth.get()));
    }
    Optional<Refusal> there =
        Reasons.there(arch, c -> isLike(c) && c.teeth().contains(tooth.get()));
    return there.or(
        () ->
            Optional.of(
                Refusal.of(
                    arch.chart().isClosed(tooth.get())
                        ? Words.of("refusal.closed", tooth.get())
                        : Words.of("refusal.not-replaced", tooth.get()))));
  }

  private boolean isLike(Component c) {
    return switch (this) {
      case COMPLETE, SADDLE -> c instanceof Saddle;
      case MESH -> c instanceof RetentionMesh;
      case FINISH_LINE -> c instanceof FinishLine;
      case TISSUE_STOP -> c instanceof TissueStop;
      case BACKING -> c instanceof Backing;
    };
  }

  @Override
  public boolean isStretched(Aim from, Assessment now) {
    return this != TISSUE_STOP
        && this != BACKING
        && from.inside()
        && from.tooth().filter(t -> isFree(now.arch(from.arch()), t)).isPresent();
  }

  private boolean isFree(Situation arch, Tooth tooth) {
    return arch.chart().isLost(tooth)
        && arch.design().components().stream()
            .noneMatch(c -> isLike(c) && c.teeth().contains(tooth));
  }

  /** The places from one to the other, as far as they are lost and free. */
  @Override
  public List<Proposal> stretched(Aim from, Aim to, Assessment now) {
    Situation arch = now.arch(from.arch());
    if (!isStretched(from, now) || to.tooth().isEmpty() || to.arch() != from.arch()) {
      return List.of();
    }
    Span span = Run.of(from.tooth().get(), to.tooth().get(), t -> isFree(arch, t));
    return switch (this) {
      case COMPLETE -> {
        Optional<EdentulousArea> area = arch.classification().areaAt(from.tooth().get());
        yield propose(
            from, now, CompleteSaddle.over(arch.design(), span, freeEnds(area, span)).parts());
      }
      case SADDLE -> propose(from, now, List.of(Saddle.of(id("saddle"), span)));
      case MESH ->
          propose(
              from, now, List.of(new RetentionMesh(id("mesh"), span, RetentionMesh.Form.LATTICE)));
      default ->
          propose(from, now, List.of(new FinishLine(id("finish"), span, FinishLine.Level.BOTH)));
    };
  }

  private List<Proposal> propose(Aim aim, Assessment now, List<Component> parts) {
    Arch arch = aim.arch();
    Unit unit = Unit.in(now.subject().design(arch));
    parts.forEach(unit::plus);
    String where = parts.isEmpty() ? "" : where(parts.get(0));
    return unit.edit()
        .map(e -> new Proposal(name(where), arch, now.subject().with(arch, e)))
        .map(List::of)
        .orElse(List.of());
  }

  private String name(String where) {
    return Words.of("edit.place", Words.of(this), where);
  }

  private static String where(Component c) {
    List<Tooth> teeth = c.teeth();
    return Span.of(teeth.get(0), teeth.get(teeth.size() - 1)).toString();
  }

  private static List<Tooth> freeEnds(Optional<EdentulousArea> area, Span span) {
    List<Tooth> out = new ArrayList<>();
    if (area.map(EdentulousArea::freeEnd).orElse(false)) {
      Tooth back = span.first().position() > span.last().position() ? span.first() : span.last();
      out.add(back);
    }
    return out;
  }

  private static ComponentId id(String prefix) {
    return ComponentId.of(prefix + "-1");
  }
}
