package saddlewright.design.transfer;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import saddlewright.chart.ArchChart;
import saddlewright.dentition.Arch;
import saddlewright.dentition.Side;
import saddlewright.dentition.Tooth;
import saddlewright.design.ArchDesign;
import saddlewright.design.Component;
import saddlewright.design.DesignEdit;
import saddlewright.design.MajorConnector;
import saddlewright.design.OtherTooth;
import saddlewright.design.Unit;

/**
 * Components carried onto an arch.
 *
 * @param all those that come there, in the order in which they were placed
 * @param misfits those among them that the mouth does not bear, with what is in their way
 * @param changed those that became another form on the way, as they were and as they are
 * @param left those of which this arch has no like
 */
public record Transfer(
    Arch arch,
    List<Component> all,
    List<Misfit> misfits,
    List<Changed> changed,
    List<Component> left) {

  /** A component that the mouth does not bear: teeth are lost under it, or stand in its way. */
  public record Misfit(Component component, List<Tooth> places, boolean toothStands) {}

  /** A connector that has another form in the other arch. */
  public record Changed(MajorConnector from, MajorConnector to) {}

  public Transfer {
    all = List.copyOf(all);
    misfits = List.copyOf(misfits);
    changed = List.copyOf(changed);
    left = List.copyOf(left);
  }

  /** Components of an arch, onto a mouth's arch of either kind, each on the tooth of its place. */
  public static Transfer of(List<Component> parts, Arch from, ArchChart onto) {
    List<Component> there = new ArrayList<>();
    List<Changed> changed = new ArrayList<>();
    List<Component> left = new ArrayList<>();
    for (Component c : parts) {
      Optional<Component> like =
          from == onto.arch() ? Optional.of(c) : OtherArch.of(c, onto.arch());
      like.ifPresentOrElse(there::add, () -> left.add(c));
      if (like.isPresent()
          && c instanceof MajorConnector was
          && like.get() instanceof MajorConnector is
          && was.form() != is.form()) {
        changed.add(new Changed(was, is));
      }
    }
    return sorted(there, onto, changed, left);
  }

  /**
   * Components to a place: those of one tooth onto that tooth, others onto its side; with no place
   * onto the other side of the arch.
   */
  public static Transfer to(
      List<Component> parts, Arch from, ArchChart onto, Optional<Tooth> place) {
    Transfer across = of(parts, from, onto);
    List<Component> there = new ArrayList<>();
    List<Component> moved = across.all();
    Optional<Tooth> own = onlyTooth(moved);
    Optional<Side> side = onlySide(moved);
    for (Component c : moved) {
      boolean otherSide =
          place.isPresent()
              ? side.filter(s -> s != place.get().side()).isPresent()
              : from == onto.arch();
      Component turned = otherSide ? c.mirrored(c.id()) : c;
      there.add(
          own.isPresent() && place.isPresent()
              ? OtherTooth.of(turned, place.get()).orElse(turned)
              : turned);
    }
    return sorted(there, onto, across.changed(), across.left());
  }

  private static Optional<Tooth> onlyTooth(List<Component> parts) {
    List<Tooth> all = parts.stream().flatMap(c -> c.teeth().stream()).distinct().toList();
    return all.size() == 1 ? Optional.of(all.get(0)) : Optional.empty();
  }

  private static Optional<Side> onlySide(List<Component> parts) {
    List<Side> all =
        parts.stream().flatMap(c -> c.teeth().stream()).map(Tooth::side).distinct().toList();
    return all.size() == 1 ? Optional.of(all.get(0)) : Optional.empty();
  }

  private static Transfer sorted(
      List<Component> there, ArchChart onto, List<Changed> changed, List<Component> left) {
    List<Misfit> misfits = new ArrayList<>();
    for (Component c : there) {
      List<Tooth> faults = Bearing.faults(onto, c);
      if (!faults.isEmpty()) {
        misfits.add(new Misfit(c, faults, Bearing.isOverRidge(c)));
      }
    }
    return new Transfer(onto.arch(), there, misfits, changed, left);
  }

  /** Those that the mouth bears. */
  public List<Component> fitting() {
    return all.stream().filter(c -> misfits.stream().noneMatch(m -> m.component() == c)).toList();
  }

  /** What would be placed: all, or only what the mouth bears. */
  public List<Component> parts(boolean every) {
    return every ? all : fitting();
  }

  /** The edit that puts these in the place of the whole design. */
  public DesignEdit replacing(ArchDesign design, boolean every) {
    List<DesignEdit> edits = new ArrayList<>();
    design.components().forEach(c -> edits.add(new DesignEdit.Remove(c.id())));
    parts(every).forEach(c -> edits.add(new DesignEdit.Place(c)));
    return new DesignEdit.Several(edits);
  }

  /** The edit that adds these to the design, but for what it has already; empty for nothing new. */
  public Optional<DesignEdit> adding(ArchDesign design, boolean every) {
    Unit unit = Unit.in(design);
    parts(every).forEach(unit::plus);
    return unit.edit();
  }
}
