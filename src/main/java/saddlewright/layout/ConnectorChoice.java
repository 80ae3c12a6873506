package saddlewright.layout;

import java.util.List;
import java.util.stream.Stream;
import saddlewright.chart.ArchChart;
import saddlewright.dentition.Arch;
import saddlewright.dentition.End;
import saddlewright.dentition.Side;
import saddlewright.dentition.Span;
import saddlewright.dentition.Tooth;
import saddlewright.design.ArchDesign;
import saddlewright.design.ComponentId;
import saddlewright.design.ConnectorForm;
import saddlewright.design.FinishLine;
import saddlewright.design.GuidePlate;
import saddlewright.design.MajorConnector;
import saddlewright.design.MinorConnector;
import saddlewright.design.Note;
import saddlewright.design.RetentionMesh;
import saddlewright.design.Saddle;
import saddlewright.design.TissueStop;

/** The usual extent of a major connector for what has been designed so far. */
public final class ConnectorChoice {
  private ConnectorChoice() {}

  /** A major connector of the form, with its usual span, under the id. */
  public static MajorConnector of(
      ComponentId id, ConnectorForm form, ArchChart chart, ArchDesign design) {
    return MajorConnector.of(id, form, span(form, chart, design));
  }

  /**
   * The span from the farthest thing to be joined on the patient's right to the farthest on the
   * left.
   *
   * <p>An upper connector takes in saddles as a whole. A lower bar runs into a saddle at its front
   * end, so that it goes no farther back than the first artificial tooth, unless a part on a
   * standing tooth farther back is to be reached. Where a side has nothing, the span ends at its
   * last standing tooth in front of the second molar, or at the first molar's place.
   */
  public static Span span(ConnectorForm form, ArchChart chart, ArchDesign design) {
    return Span.of(end(form, chart, design, Side.RIGHT), end(form, chart, design, Side.LEFT));
  }

  private static Tooth end(ConnectorForm form, ArchChart chart, ArchDesign design, Side side) {
    Stream<Tooth> saddles =
        design.stream(Saddle.class)
            .map(Saddle::span)
            .filter(s -> s.first().side() == side || s.last().side() == side)
            .map(s -> saddleEnd(form, s, side));
    Stream<Tooth> parts =
        design.components().stream()
            .filter(c -> !(c instanceof Saddle || isPartOfSaddle(c) || c instanceof Note))
            .filter(c -> !(c instanceof MajorConnector || c instanceof GuidePlate))
            .flatMap(c -> c.teeth().stream())
            .filter(t -> t.side() == side)
            .filter(t -> chart.stands(t) && (isStrutted(design, t) || !besideSaddle(design, t)));
    return Stream.concat(saddles, parts)
        .filter(t -> t.side() == side)
        .max((a, b) -> Integer.compare(a.position(), b.position()))
        .orElseGet(() -> fallback(chart, side));
  }

  private static Tooth saddleEnd(ConnectorForm form, Span saddle, Side side) {
    Tooth far = side == Side.RIGHT ? saddle.first() : saddle.last();
    Tooth near = side == Side.RIGHT ? saddle.last() : saddle.first();
    boolean whole = form.arch() == Arch.UPPER || saddle.crossesMidline();
    return whole ? far : near;
  }

  private static boolean isPartOfSaddle(Object c) {
    return c instanceof RetentionMesh || c instanceof FinishLine || c instanceof TissueStop;
  }

  private static boolean isStrutted(ArchDesign design, Tooth tooth) {
    return design.stream(MinorConnector.class).anyMatch(m -> m.tooth() == tooth);
  }

  private static boolean besideSaddle(ArchDesign design, Tooth tooth) {
    return Stream.of(End.values())
        .flatMap(e -> tooth.neighbour(e).stream())
        .anyMatch(n -> design.saddleAt(n).isPresent());
  }

  private static Tooth fallback(ArchChart chart, Side side) {
    List<Tooth> standing =
        chart.standing().stream()
            .filter(t -> t.side() == side && t.position() <= 6)
            .sorted((a, b) -> Integer.compare(b.position(), a.position()))
            .toList();
    return standing.isEmpty()
        ? Tooth.in(chart.arch()).stream()
            .filter(t -> t.side() == side && t.position() == 6)
            .findFirst()
            .orElseThrow()
        : standing.get(0);
  }
}
