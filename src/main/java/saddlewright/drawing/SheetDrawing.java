package saddlewright.drawing;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import saddlewright.dentition.Arch;
import saddlewright.geometry.Box;
import saddlewright.geometry.Point;
import saddlewright.geometry.Transform;
import saddlewright.layout.Layout;

/**
 * The design sheet: the upper arch opening downwards above the lower one opening upwards, y down
 * the page, millimetres at true scale, with the sides named, a scale bar and a key of the roles
 * used.
 *
 * @param drawing all marks, in the frame of the sheet
 * @param upperPlace from the frame of the upper arch to that of the sheet, when it is shown
 * @param lowerPlace the same for the lower arch
 */
public record SheetDrawing(
    Drawing drawing, Optional<Transform> upperPlace, Optional<Transform> lowerPlace) {

  /** What gives the drawings of arches. */
  public interface Arches {
    /** The drawing of an arch in its own frame. */
    Drawing draw(Layout layout);

    /** The drawing in the frame of the sheet. */
    default Drawing place(Drawing drawing, Transform place) {
      return drawing.transformed(place);
    }
  }

  private static final double MARGIN = 6;
  private static final double GAP_BETWEEN_ARCHES = 4;
  private static final double HEADING = 5;

  public static SheetDrawing of(
      Optional<Layout> upper, Optional<Layout> lower, DrawingOptions options) {
    return of(upper, lower, options, List.of());
  }

  /** The same with signs beside what they refer to, and numbers of components around it. */
  public static SheetDrawing of(
      Optional<Layout> upper,
      Optional<Layout> lower,
      DrawingOptions options,
      List<Callout> callouts) {
    List<Callout> numbers = callouts.stream().filter(Callout::isNumber).toList();
    List<Callout> signs = callouts.stream().filter(c -> !c.isNumber()).toList();
    return of(
        upper,
        lower,
        layout -> ArchDrawing.numbered(layout, ArchDrawing.of(layout, options), numbers),
        signs);
  }

  /** The same for a window, which keeps the drawings of arches that did not change. */
  public static SheetDrawing of(Optional<Layout> upper, Optional<Layout> lower, Arches arches) {
    return of(upper, lower, arches, List.of());
  }

  private static SheetDrawing of(
      Optional<Layout> upper, Optional<Layout> lower, Arches arches, List<Callout> callouts) {
    List<Mark> marks = new ArrayList<>();
    Optional<Drawing> above = upper.map(arches::draw);
    Optional<Drawing> below = lower.map(arches::draw);
    double half =
        Stream.concat(above.stream(), below.stream())
            .map(Drawing::bounds)
            .mapToDouble(b -> Math.max(-b.minX(), b.maxX()))
            .max()
            .orElse(40);
    double middle = MARGIN + half;
    double y = MARGIN;
    Optional<Transform> upperPlace = Optional.empty();
    Optional<Transform> lowerPlace = Optional.empty();
    if (upper.isPresent()) {
      Drawing d = above.orElseThrow();
      Box b = d.bounds();
      y += HEADING;
      Transform t = Transform.translation(middle, y - b.minY());
      marks.addAll(arches.place(d, t).marks());
      marks.addAll(PlacedCallout.marks(Callouts.of(upper.get(), d, callouts), t));
      marks.addAll(SheetFurniture.sides(Arch.UPPER, middle, half, y + 2));
      upperPlace = Optional.of(t);
      y += b.height() + GAP_BETWEEN_ARCHES;
    }
    if (lower.isPresent()) {
      Drawing d = below.orElseThrow();
      Box b = d.bounds();
      double bottom = y + b.height();
      Transform t = Transform.scaling(1, -1).then(Transform.translation(middle, bottom + b.minY()));
      marks.addAll(arches.place(d, t).marks());
      marks.addAll(PlacedCallout.marks(Callouts.of(lower.get(), d, callouts), t));
      marks.addAll(SheetFurniture.sides(Arch.LOWER, middle, half, bottom - 2));
      lowerPlace = Optional.of(t);
      y = bottom + HEADING;
    }
    marks.addAll(SheetFurniture.scaleBar(new Point(MARGIN, y + 4)));
    y += 7.5;
    y += Key.place(marks, new Point(MARGIN, y), 2 * half, marks);
    Box bounds = new Box(0, 0, 2 * middle, y + MARGIN / 2);
    return new SheetDrawing(new Drawing(marks, bounds), upperPlace, lowerPlace);
  }

  /**
   * The same sheet with another drawing in the place of an arch, in the frame of that arch; what
   * lies around it stays where it is.
   *
   * @param whole the drawing that is there
   */
  public SheetDrawing replacing(Arch arch, Drawing whole, Drawing other) {
    Optional<Transform> place = place(arch);
    if (place.isEmpty()) {
      return this;
    }
    Set<Mark> gone = new HashSet<>(whole.transformed(place.get()).marks());
    List<Mark> marks = new ArrayList<>(drawing.marks());
    marks.removeIf(gone::contains);
    marks.addAll(other.transformed(place.get()).marks());
    return new SheetDrawing(new Drawing(marks, drawing.bounds()), upperPlace, lowerPlace);
  }

  public Optional<Transform> place(Arch arch) {
    return arch == Arch.UPPER ? upperPlace : lowerPlace;
  }
}
