package saddlewright.rules;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import saddlewright.classification.EdentulousArea;
import saddlewright.dentition.Tooth;

/** The edentulous areas of an arch as the choice of a connector sees them. */
public final class AreaPattern {
  private final Situation s;
  private final List<EdentulousArea> areas;

  private AreaPattern(Situation s) {
    this.s = s;
    this.areas = s.classification().areas();
  }

  public static AreaPattern of(Situation s) {
    return new AreaPattern(s);
  }

  public List<EdentulousArea> all() {
    return areas;
  }

  public List<EdentulousArea> freeEnds() {
    return areas.stream().filter(EdentulousArea::freeEnd).toList();
  }

  public boolean hasFreeEnd() {
    return areas.stream().anyMatch(EdentulousArea::freeEnd);
  }

  /** Whether a front tooth is replaced. */
  public boolean hasFront() {
    return areas.stream().anyMatch(AreaPattern::isFront);
  }

  /** Whether every area is bounded, there is one at least, and none takes in a front tooth. */
  public boolean isBoundedBehind() {
    return !areas.isEmpty() && !hasFreeEnd() && !hasFront();
  }

  /** Number of teeth replaced in the longest area; 0 without any. */
  public int longest() {
    return areas.stream().mapToInt(a -> a.replaced().size()).max().orElse(0);
  }

  /** Number of teeth replaced in all. */
  public int replaced() {
    return areas.stream().mapToInt(a -> a.replaced().size()).sum();
  }

  public static boolean isFront(EdentulousArea area) {
    return area.replaced().stream().anyMatch(Tooth::isAnterior);
  }

  /** The last standing tooth in front of a free-end area. */
  public Optional<Tooth> abutment(EdentulousArea freeEnd) {
    return Stream.concat(
            walk(freeEnd.span().before(), -1).stream(), walk(freeEnd.span().after(), 1).stream())
        .filter(t -> t.position() < 8)
        .min((a, b) -> Integer.compare(a.position(), b.position()));
  }

  private Optional<Tooth> walk(Optional<Tooth> start, int step) {
    if (start.isEmpty()) {
      return Optional.empty();
    }
    for (int p = start.get().place(); p >= 0 && p <= 15; p += step) {
      Tooth t = Tooth.at(s.arch(), p);
      if (s.chart().stands(t)) {
        return Optional.of(t);
      }
    }
    return Optional.empty();
  }
}
