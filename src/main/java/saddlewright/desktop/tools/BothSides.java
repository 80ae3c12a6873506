package saddlewright.desktop.tools;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import saddlewright.archform.ArchForm;
import saddlewright.archform.PlacedTooth;
import saddlewright.casefile.Case;
import saddlewright.chart.ArchChart;
import saddlewright.dentition.Arch;
import saddlewright.dentition.Tooth;
import saddlewright.design.ArchDesign;
import saddlewright.design.Component;
import saddlewright.design.ComponentId;
import saddlewright.design.DesignEdit;
import saddlewright.desktop.Words;
import saddlewright.geometry.Point;

/**
 * A proposal made on both sides of the arch at once.
 *
 * @param proposal what is done on this side and, where it can be, on the other
 * @param but why it is done on this side only; empty when it is done on both
 */
public record BothSides(Proposal proposal, Optional<String> but) {
  private static final ComponentId ANY = ComponentId.of("any");

  /** The place on the other side that corresponds to what is aimed at. */
  public static Aim mirrored(Aim aim, ArchForm form) {
    Optional<PlacedTooth> near = aim.near();
    Point there =
        near.map(
                t -> {
                  PlacedTooth other = form.tooth(t.tooth().mirrored());
                  double m = t.centre().to(aim.point()).dot(t.mesial()) / t.halfWidth();
                  double b = t.centre().to(aim.point()).dot(t.buccal()) / t.halfDepth();
                  return other.at(m, b);
                })
            .orElseGet(() -> new Point(-aim.point().x(), aim.point().y()));
    return Aim.at(form, there);
  }

  /**
   * The proposal with its like on the other side.
   *
   * @param there what could be done on the other side
   * @param why why nothing could
   */
  public static BothSides of(
      Proposal here, List<Proposal> there, Supplier<Optional<Refusal>> why, Case now) {
    Arch arch = here.arch();
    if (there.isEmpty()) {
      String reason =
          why.get()
              .map(r -> Words.of("ghost.one-side-because", r.words()))
              .orElse(Words.of("ghost.one-side"));
      return new BothSides(here, Optional.of(reason));
    }
    List<Component> wanted = fresh(here.next().design(arch), now.design(arch));
    Proposal like =
        there.stream()
            .max(
                Comparator.comparingInt(
                    p -> likeness(wanted, fresh(p.next().design(arch), now.design(arch)))))
            .orElseThrow();
    Case both = merged(here.next(), like.next(), now, arch);
    return both.equals(here.next())
        ? new BothSides(here, Optional.empty())
        : new BothSides(
            new Proposal(Words.of("edit.both-sides", here.name()), arch, both), Optional.empty());
  }

  /** How many of the parts are mirrored by one of the others; the earlier of equals is taken. */
  private static int likeness(List<Component> parts, List<Component> others) {
    return (int)
        parts.stream()
            .map(c -> c.mirrored(ANY))
            .filter(m -> others.stream().anyMatch(o -> o.withId(ANY).equals(m)))
            .count();
  }

  private static List<Component> fresh(ArchDesign next, ArchDesign now) {
    return next.components().stream().filter(c -> now.find(c.id()).isEmpty()).toList();
  }

  /** The first state with what leads from the present one to the other. */
  private static Case merged(Case one, Case other, Case now, Arch arch) {
    ArchDesign design = one.design(arch);
    for (Component c : other.design(arch).components()) {
      Optional<Component> was = now.design(arch).find(c.id());
      if (was.isEmpty()) {
        boolean there =
            design.components().stream().anyMatch(d -> d.withId(ANY).equals(c.withId(ANY)));
        design = there ? design : new DesignEdit.Place(c).applyTo(design);
      } else if (!was.get().equals(c)) {
        design = new DesignEdit.Change(c).applyTo(design);
      }
    }
    ArchChart chart = one.chart(arch);
    for (Tooth t : Tooth.in(arch)) {
      if (!other.chart(arch).tooth(t).equals(now.chart(arch).tooth(t))) {
        chart = chart.with(t, other.chart(arch).tooth(t));
      }
    }
    return one.with(chart).with(design);
  }
}
