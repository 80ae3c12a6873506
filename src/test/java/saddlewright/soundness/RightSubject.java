package saddlewright.soundness;

import java.util.Optional;
import java.util.Set;
import saddlewright.dentition.Tooth;
import saddlewright.design.ArchDesign;
import saddlewright.design.Component;
import saddlewright.design.ComponentId;
import saddlewright.design.Saddle;
import saddlewright.design.Subject;
import saddlewright.rules.AreaSupport;
import saddlewright.rules.Finding;
import saddlewright.rules.Situation;

/**
 * What a finding must be about to count as the answer to one fault: the component that was touched,
 * a tooth of it or another component on that one tooth, or a saddle that this tooth bounds or that
 * lies there. The arch as a whole, and with it any of its saddles, is right only for a fault that
 * concerns the whole arch: no connector, no indirect retainer.
 *
 * @param sound the design before
 * @param components those that were touched
 * @param teeth the teeth concerned
 * @param archWide whether the fault concerns the arch as a whole
 */
record RightSubject(
    Situation sound, Set<ComponentId> components, Set<Tooth> teeth, boolean archWide) {

  static RightSubject of(Situation sound, Component touched) {
    return new RightSubject(sound, Set.of(touched.id()), Set.copyOf(touched.teeth()), false);
  }

  static RightSubject of(Situation sound, Tooth tooth) {
    return new RightSubject(sound, Set.of(), Set.of(tooth), false);
  }

  static RightSubject ofArch(Situation sound, Component touched) {
    return new RightSubject(sound, Set.of(touched.id()), Set.copyOf(touched.teeth()), true);
  }

  /** The touched component alone: its teeth are many and say nothing. */
  static RightSubject alone(Situation sound, Component touched) {
    return new RightSubject(sound, Set.of(touched.id()), Set.of(), false);
  }

  /** Whether the chief subject of the finding is a right one. */
  boolean is(Finding finding, ArchDesign faulty) {
    Subject chief = finding.subjects().get(0);
    if (chief instanceof Subject.OfTooth t) {
      return teeth.contains(t.tooth());
    }
    if (chief instanceof Subject.OfArea a) {
      return archWide
          || sound.design().stream(Saddle.class)
              .anyMatch(s -> s.span().overlaps(a.span()) && liesAt(s));
    }
    if (chief instanceof Subject.OfComponent c) {
      return components.contains(c.id()) || find(faulty, c.id()).map(this::isHere).orElse(false);
    }
    return archWide;
  }

  private Optional<Component> find(ArchDesign faulty, ComponentId id) {
    return faulty.find(id).or(() -> sound.design().find(id));
  }

  private boolean isHere(Component c) {
    if (c instanceof Saddle s) {
      return archWide || liesAt(s);
    }
    return c.teeth().size() == 1 && teeth.contains(c.teeth().get(0));
  }

  private boolean liesAt(Saddle s) {
    return s.teeth().stream().anyMatch(teeth::contains)
        || AreaSupport.of(sound, s).ends().stream().anyMatch(e -> teeth.contains(e.abutment()));
  }
}
