package saddlewright.layout;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import saddlewright.archform.ArchForm;
import saddlewright.archform.Once;
import saddlewright.dentition.Arch;
import saddlewright.dentition.Tooth;
import saddlewright.design.ArchDesign;
import saddlewright.design.Component;
import saddlewright.design.ComponentId;
import saddlewright.design.MajorConnector;
import saddlewright.design.Saddle;

/** Every component of a design with its place on the arch form. */
public final class Layout {
  private final ArchForm form;
  private final ArchDesign design;
  private final Map<ComponentId, Laid> laid;
  private final Once<RidgeFrame> ridge;
  private final Once<Framework> framework = new Once<>(() -> Framework.of(all()));
  private final Once<GumCover> gums = new Once<>(() -> GumCover.of(form(), all()));
  private final Once<Optional<PalatalLimbs>> limbs = new Once<>(this::readLimbs);

  private Layout(
      ArchForm form, Once<RidgeFrame> ridge, ArchDesign design, Map<ComponentId, Laid> laid) {
    this.form = form;
    this.ridge = ridge;
    this.design = design;
    this.laid = laid;
  }

  public static Layout of(ArchForm form, ArchDesign design) {
    return of(form, new Once<>(() -> RidgeFrame.of(form)), design, c -> Optional.empty());
  }

  /** The layout of another design on the same arch form; what lies as it did is taken over. */
  public Layout redesigned(ArchDesign other) {
    return of(form, ridge, other, Staying.between(this, other)::find);
  }

  /**
   * The layout with one part more, to see where it would lie; the others lie as they do.
   *
   * <p>A saddle or major connector, by which others lie, has all laid anew.
   */
  public Layout plus(Component part) {
    ArchDesign more = design.plus(part);
    if (part instanceof Saddle || part instanceof MajorConnector) {
      return redesigned(more);
    }
    Ground ground =
        Ground.of(form, ridge, more)
            .withSaddles(all(Saddle.class))
            .withConnector(all(MajorConnector.class).stream().findFirst());
    Map<ComponentId, Laid> grown = new LinkedHashMap<>(laid);
    grown.put(part.id(), part.accept(new Placement(ground)));
    return new Layout(form, ridge, more, grown);
  }

  private static Layout of(
      ArchForm form,
      Once<RidgeFrame> ridge,
      ArchDesign design,
      Function<Component, Optional<Laid>> staying) {
    Map<ComponentId, Laid> found = new LinkedHashMap<>();
    Ground ground = Ground.of(form, ridge, design);
    for (Saddle s : design.all(Saddle.class)) {
      found.put(s.id(), lay(s, ground, staying));
    }
    ground = ground.withSaddles(List.copyOf(found.values()));
    Optional<Laid> connector = Optional.empty();
    for (MajorConnector c : design.all(MajorConnector.class)) {
      Laid l = lay(c, ground, staying);
      found.put(c.id(), l);
      connector = connector.isPresent() ? connector : Optional.of(l);
    }
    ground = ground.withConnector(connector);
    Map<ComponentId, Laid> ordered = new LinkedHashMap<>();
    for (Component c : design.components()) {
      Laid l = found.get(c.id());
      ordered.put(c.id(), l == null ? lay(c, ground, staying) : l);
    }
    return new Layout(form, ridge, design, ordered);
  }

  private static Laid lay(Component c, Ground ground, Function<Component, Optional<Laid>> staying) {
    return staying.apply(c).orElseGet(() -> c.accept(new Placement(ground)));
  }

  /** The layout with one component lying otherwise, to see what that would change. */
  public Layout with(Laid other) {
    Map<ComponentId, Laid> changed = new LinkedHashMap<>(laid);
    changed.replace(other.component().id(), other);
    return new Layout(form, ridge, design, changed);
  }

  public ArchForm form() {
    return form;
  }

  public ArchDesign design() {
    return design;
  }

  /** All components in the order of the design. */
  public List<Laid> all() {
    return List.copyOf(laid.values());
  }

  public Optional<Laid> find(ComponentId id) {
    return Optional.ofNullable(laid.get(id));
  }

  /** The laid-out components of one kind. */
  public List<Laid> all(Class<? extends Component> kind) {
    List<Laid> out = new ArrayList<>();
    for (Laid l : laid.values()) {
      if (kind.isInstance(l.component())) {
        out.add(l);
      }
    }
    return out;
  }

  /** The joined metalwork, worked out when it is first asked for. */
  public Framework framework() {
    return framework.get();
  }

  /** How far the gingival margins are covered, worked out when it is first asked for. */
  public GumCover gums() {
    return gums.get();
  }

  /**
   * Widths and borders of the first major connector of an upper arch, worked out when they are
   * first asked for; empty without one that crosses the midline.
   */
  public Optional<PalatalLimbs> palatalLimbs() {
    return limbs.get();
  }

  private Optional<PalatalLimbs> readLimbs() {
    return form.arch() == Arch.LOWER
        ? Optional.empty()
        : all(MajorConnector.class).stream()
            .findFirst()
            .flatMap(l -> PalatalLimbs.of(form, l.body()));
  }

  /**
   * How far the lower border of a lower bar lies from the lingual margin of each standing tooth
   * that it passes, in mm.
   */
  public Map<Tooth, Double> barDepths(Laid bar) {
    return BarDepths.of(form, bar);
  }
}
