package saddlewright.design.transfer;

import java.util.Optional;
import saddlewright.dentition.Arch;
import saddlewright.dentition.Span;
import saddlewright.dentition.Tooth;
import saddlewright.design.Backing;
import saddlewright.design.Component;
import saddlewright.design.ConnectorForm;
import saddlewright.design.FinishLine;
import saddlewright.design.MajorConnector;
import saddlewright.design.Note;
import saddlewright.design.OtherTooth;
import saddlewright.design.Plating;
import saddlewright.design.Relief;
import saddlewright.design.Rest;
import saddlewright.design.RetentionMesh;
import saddlewright.design.Saddle;
import saddlewright.design.TissueStop;

/** A component as it would be in the other arch: on the tooth of the same place and side. */
final class OtherArch {
  private OtherArch() {}

  /** The tooth that stands in the same place of the other arch, as 35 to 25. */
  static Tooth opposite(Tooth t) {
    return Tooth.at(t.arch() == Arch.UPPER ? Arch.LOWER : Arch.UPPER, t.place());
  }

  private static Span opposite(Span s) {
    return Span.of(opposite(s.first()), opposite(s.last()));
  }

  /** Its like; empty where the other arch has no such thing. */
  static Optional<Component> of(Component c, Arch to) {
    if (c instanceof Saddle s) {
      return Optional.of(s.withSpan(opposite(s.span())));
    }
    if (c instanceof RetentionMesh m) {
      return Optional.of(new RetentionMesh(m.id(), opposite(m.span()), m.form()));
    }
    if (c instanceof FinishLine f) {
      return Optional.of(new FinishLine(f.id(), opposite(f.span()), f.level()));
    }
    if (c instanceof Plating p) {
      return Optional.of(new Plating(p.id(), opposite(p.span())));
    }
    if (c instanceof TissueStop s) {
      return Optional.of(new TissueStop(s.id(), opposite(s.tooth())));
    }
    if (c instanceof Backing b) {
      return Optional.of(new Backing(b.id(), opposite(b.tooth())));
    }
    if (c instanceof Rest r) {
      // A tooth of the same kind: what is wrong about its site stays for the review to say.
      return Optional.of(
          new Rest(
              r.id(), opposite(r.tooth()), r.site(), r.form(), r.seat(), r.indirectRetainer()));
    }
    if (c instanceof MajorConnector m) {
      return form(m.form()).map(f -> MajorConnector.of(m.id(), f, opposite(m.span())));
    }
    if (c instanceof Relief r) {
      return r.area() == Relief.Area.GINGIVAL_MARGINS ? Optional.of(r) : Optional.empty();
    }
    if (c instanceof Note) {
      // Its place is in millimetres of an arch of another shape, and so may its words be.
      return Optional.empty();
    }
    return c.teeth().size() == 1
        ? OtherTooth.of(c, opposite(c.teeth().get(0))).filter(o -> isOf(o, to))
        : Optional.empty();
  }

  private static boolean isOf(Component c, Arch arch) {
    return c.teeth().stream().allMatch(t -> t.arch() == arch);
  }

  /**
   * What does the work of a connector in the other arch: a plate for a plate, a bar for a strap.
   */
  private static Optional<ConnectorForm> form(ConnectorForm f) {
    return switch (f) {
      case PALATAL_PLATE -> Optional.of(ConnectorForm.LINGUAL_PLATE);
      case PALATAL_STRAP, PALATAL_RING, PALATAL_BAR, HORSESHOE ->
          Optional.of(ConnectorForm.LINGUAL_BAR);
      case LINGUAL_BAR, SUBLINGUAL_BAR -> Optional.of(ConnectorForm.PALATAL_STRAP);
      case LINGUAL_PLATE -> Optional.of(ConnectorForm.PALATAL_PLATE);
      case DENTAL_BAR, CONTINUOUS_BAR, LABIAL_BAR -> Optional.empty();
    };
  }
}
