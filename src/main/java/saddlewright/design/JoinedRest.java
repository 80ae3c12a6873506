package saddlewright.design;

import java.util.Optional;
import saddlewright.chart.ArchChart;
import saddlewright.dentition.End;
import saddlewright.dentition.Tooth;

/** A rest with the strut that joins it to the framework, where it needs one. */
public final class JoinedRest {
  private JoinedRest() {}

  /**
   * The rest and, unless it stands beside a saddle or metal already runs up its tooth, a minor
   * connector in the embrasure at its end (for a cingulum rest up the lingual face).
   */
  public static Unit of(ArchChart chart, ArchDesign design, Rest rest) {
    Unit unit = Unit.in(design).plus(rest);
    strut(chart, design, rest).ifPresent(unit::plus);
    return unit;
  }

  /** The strut that the rest needs; empty where it is joined without one. */
  public static Optional<MinorConnector> strut(ArchChart chart, ArchDesign design, Rest rest) {
    Tooth tooth = rest.tooth();
    Optional<End> end = rest.site().end();
    boolean besideSaddle =
        end.map(e -> facesGap(chart, design, tooth, e))
            .orElse(
                facesGap(chart, design, tooth, End.MESIAL)
                    || facesGap(chart, design, tooth, End.DISTAL));
    if (besideSaddle || isPlated(design, tooth) || hasStrut(design, tooth, end)) {
      return Optional.empty();
    }
    MinorConnector.Place place =
        end.map(MinorConnector::embrasure).orElse(MinorConnector.Place.LINGUAL_FACE);
    return Optional.of(new MinorConnector(Unit.id("minor"), tooth, place));
  }

  /** Whether the end of a tooth looks at a saddle, placed or still to come. */
  static boolean facesGap(ArchChart chart, ArchDesign design, Tooth tooth, End end) {
    Optional<Tooth> next = tooth.neighbour(end);
    while (next.isPresent() && chart.isClosed(next.get())) {
      next = next.get().neighbour(end);
    }
    return next.isPresent()
        && (design.saddleAt(next.get()).isPresent() || chart.isReplaced(next.get()));
  }

  private static boolean isPlated(ArchDesign design, Tooth tooth) {
    return design.stream(Plating.class).anyMatch(p -> p.span().contains(tooth))
        || design.stream(MajorConnector.class)
            .filter(
                c ->
                    c.form() == ConnectorForm.LINGUAL_PLATE
                        || c.form() == ConnectorForm.DENTAL_BAR
                        || c.form() == ConnectorForm.CONTINUOUS_BAR)
            .anyMatch(c -> c.span().contains(tooth));
  }

  /** A strut of its own or that of the neighbour in the same embrasure. */
  private static boolean hasStrut(ArchDesign design, Tooth tooth, Optional<End> end) {
    MinorConnector.Place own =
        end.map(MinorConnector::embrasure).orElse(MinorConnector.Place.LINGUAL_FACE);
    if (design.stream(MinorConnector.class).anyMatch(m -> m.tooth() == tooth && m.place() == own)) {
      return true;
    }
    Optional<Tooth> beside = end.flatMap(tooth::neighbour);
    return beside.isPresent()
        && design.stream(MinorConnector.class)
            .anyMatch(
                m ->
                    m.tooth() == beside.get()
                        && m.place() == MinorConnector.embrasure(beside.get().endTowards(tooth)));
  }
}
