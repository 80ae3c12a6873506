package saddlewright.design;

import java.util.Optional;
import saddlewright.dentition.Arch;
import saddlewright.dentition.Span;
import saddlewright.dentition.Tooth;

/** What a mark, a finding or a selection is about, named by id so that it outlives any edit. */
public sealed interface Subject extends Comparable<Subject> {
  /** Text form, used as a key: stable over versions. */
  String key();

  Arch arch();

  record OfComponent(Arch arch, ComponentId id) implements Subject {
    @Override
    public String key() {
      return arch.code() + "/component/" + id;
    }
  }

  record OfTooth(Tooth tooth) implements Subject {
    @Override
    public String key() {
      return arch().code() + "/tooth/" + tooth;
    }

    @Override
    public Arch arch() {
      return tooth.arch();
    }
  }

  /** An edentulous area. */
  record OfArea(Span span) implements Subject {
    @Override
    public String key() {
      return arch().code() + "/area/" + span.first() + "-" + span.last();
    }

    @Override
    public Arch arch() {
      return span.arch();
    }
  }

  record OfArch(Arch arch) implements Subject {
    @Override
    public String key() {
      return arch.code() + "/arch";
    }
  }

  static Subject of(Arch arch, Component component) {
    return new OfComponent(arch, component.id());
  }

  static Subject of(Tooth tooth) {
    return new OfTooth(tooth);
  }

  static Subject of(Span area) {
    return new OfArea(area);
  }

  static Subject of(Arch arch) {
    return new OfArch(arch);
  }

  default Optional<ComponentId> component() {
    return this instanceof OfComponent c ? Optional.of(c.id()) : Optional.empty();
  }

  @Override
  default int compareTo(Subject o) {
    return key().compareTo(o.key());
  }
}
