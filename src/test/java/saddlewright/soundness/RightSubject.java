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
 * lies there. The arch as a whole is right only for a fault that concerns it: no connector, too few
 * clasps; and any of its saddles only for an indirect retainer, which guards saddles elsewhere.
 *
 * @param sound the design before
 * @param components those that were touched
 * @param teeth the teeth concerned
 * @param scope how far the fault reaches
 */
record RightSubject(Situation sound, Set<ComponentId> components, Set<Tooth> teeth, Scope scope) {

  /** How far a fault reaches. */
  enum Scope {
    TOOTH,
    ARCH,
    ARCH_AND_ITS_SADDLES
  }

  static RightSubject of(Situation sound, Component touched) {
    return new RightSubject(sound, Set.of(touched.id()), Set.copyOf(touched.teeth()), Scope.TOOTH);
  }

  static RightSubject of(Situation sound, Tooth tooth) {
    return new RightSubject(sound, Set.of(), Set.of(tooth), Scope.TOOTH);
  }

  static RightSubject of(Situation sound, Component touched, Scope scope) {
    return new RightSubject(sound, Set.of(touched.id()), Set.copyOf(touched.teeth()), scope);
  }

  /** The touched component alone: its teeth are many and say nothing. */
  static RightSubject alone(Situation sound, Component touched) {
    return new RightSubject(sound, Set.of(touched.id()), Set.of(), Scope.TOOTH);
  }

  /** Whether the chief subject of the finding is a right one. */
  boolean is(Finding finding, ArchDesign faulty) {
    Subject chief = finding.subjects().get(0);
    if (chief instanceof Subject.OfTooth t) {
      return teeth.contains(t.tooth());
    }
    if (chief instanceof Subject.OfArea a) {
      return scope == Scope.ARCH_AND_ITS_SADDLES
          || sound.design().stream(Saddle.class)
              .anyMatch(s -> s.span().overlaps(a.span()) && liesAt(s));
    }
    if (chief instanceof Subject.OfComponent c) {
      return components.contains(c.id()) || find(faulty, c.id()).map(this::isHere).orElse(false);
    }
    return scope != Scope.TOOTH;
  }

  private Optional<Component> find(ArchDesign faulty, ComponentId id) {
    return faulty.find(id).or(() -> sound.design().find(id));
  }

  private boolean isHere(Component c) {
    if (c instanceof Saddle s) {
      return scope == Scope.ARCH_AND_ITS_SADDLES || liesAt(s);
    }
    return c.teeth().size() == 1 && teeth.contains(c.teeth().get(0));
  }

  private boolean liesAt(Saddle s) {
    return s.teeth().stream().anyMatch(teeth::contains)
        || AreaSupport.of(sound, s).ends().stream().anyMatch(e -> teeth.contains(e.abutment()));
  }
}
