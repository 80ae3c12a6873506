package saddlewright.rules;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import saddlewright.dentition.End;
import saddlewright.dentition.Tooth;
import saddlewright.design.Component;
import saddlewright.design.GuidePlane;
import saddlewright.design.GuidePlate;
import saddlewright.layout.Measure;

/**
 * A surface of a tooth along which the denture is led on to its seat.
 *
 * @param part the guide plate that slides there, or the plane that was prepared for it
 * @param tooth the tooth
 * @param end the mesial or distal surface; empty for a lingual one
 * @param height along the path of insertion, in mm
 */
public record GuideSurface(Component part, Tooth tooth, Optional<End> end, double height) {

  /** The guided surfaces of standing teeth; a plate on a prepared plane counts once. */
  public static List<GuideSurface> all(Situation s) {
    List<GuideSurface> out = new ArrayList<>();
    for (Component c : s.design().components()) {
      of(s, c)
          .filter(g -> s.chart().stands(g.tooth))
          .filter(g -> out.stream().noneMatch(o -> o.tooth == g.tooth && o.end.equals(g.end)))
          .ifPresent(out::add);
    }
    return out;
  }

  /** The lingual plane prepared on a tooth, if there is one. */
  public static Optional<GuideSurface> lingual(Situation s, Tooth tooth) {
    return all(s).stream().filter(g -> g.tooth == tooth && g.end.isEmpty()).findFirst();
  }

  private static Optional<GuideSurface> of(Situation s, Component c) {
    if (c instanceof GuidePlate p) {
      return Optional.of(new GuideSurface(p, p.tooth(), Optional.of(p.end()), height(s, p)));
    }
    if (c instanceof GuidePlane p) {
      return Optional.of(new GuideSurface(p, p.tooth(), end(p), height(s, p)));
    }
    return Optional.empty();
  }

  private static Optional<End> end(GuidePlane plane) {
    return switch (plane.surface()) {
      case MESIAL -> Optional.of(End.MESIAL);
      case DISTAL -> Optional.of(End.DISTAL);
      case LINGUAL -> Optional.empty();
    };
  }

  private static double height(Situation s, Component c) {
    return s.layout().find(c.id()).map(l -> l.measure(Measure.HEIGHT).orElse(0)).orElse(0.0);
  }
}
