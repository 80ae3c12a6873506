package saddlewright.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import saddlewright.archform.PlacedTooth;
import saddlewright.dentition.Tooth;
import saddlewright.design.Note;
import saddlewright.design.Subject;
import saddlewright.geometry.Path;
import saddlewright.geometry.Point;
import saddlewright.geometry.Region;
import saddlewright.layout.Laid;
import saddlewright.layout.Layout;

/** Finds a place for each sign, beside its subject and clear of the drawing and of the others. */
public final class Callouts {
  private final Layout layout;
  private final Coverage coverage;

  private Callouts(Layout layout, Drawing arch) {
    this.layout = layout;
    this.coverage = new Coverage(arch);
  }

  /**
   * The signs of one arch with their places, in the order given; those of the other arch are left
   * out.
   *
   * @param drawing the drawing of the arch in its own frame
   */
  public static List<PlacedCallout> of(Layout layout, Drawing drawing, List<Callout> callouts) {
    return of(layout, drawing, callouts, 1);
  }

  /** The same for a window, where signs stay readable however far it is zoomed out. */
  public static List<PlacedCallout> of(
      Layout layout, Drawing drawing, List<Callout> callouts, double size) {
    List<Callout> here =
        callouts.stream().filter(c -> c.subject().arch() == layout.form().arch()).toList();
    List<PlacedCallout> out =
        new ArrayList<>(
            Balloons.of(layout, drawing, here.stream().filter(Callout::isNumber).toList()));
    Callouts places = null;
    for (Callout c : here) {
      if (!c.isNumber()) {
        places = places == null ? new Callouts(layout, drawing) : places;
        out.add(places.place(c, size));
      }
    }
    return out;
  }

  private PlacedCallout place(Callout c, double size) {
    double radius = PlacedCallout.RADIUS * size;
    double words = PlacedCallout.numberWidth(c, size);
    Point anchor = anchor(c.subject());
    Point at = coverage.freeNear(anchor, radius, words);
    coverage.take(at, radius, words);
    Optional<Point> target =
        c.subject() instanceof Subject.OfArch ? Optional.empty() : Optional.of(target(c, at));
    target.ifPresent(t -> coverage.takeLine(at, t));
    return new PlacedCallout(c, at, target, size);
  }

  /** The middle of the subject. */
  private Point anchor(Subject subject) {
    if (subject instanceof Subject.OfTooth t) {
      return tooth(t.tooth()).centre();
    }
    if (subject instanceof Subject.OfArea a) {
      List<Tooth> teeth = a.span().teeth();
      return tooth(teeth.get(teeth.size() / 2)).centre();
    }
    return laid(subject).map(Callouts::middle).orElseGet(this::midline);
  }

  private Point target(Callout c, Point at) {
    Optional<Laid> laid = laid(c.subject());
    Region body = laid.map(Laid::body).orElse(Region.EMPTY);
    if (!body.isEmpty()) {
      return body.contains(at) ? body.innerPoint() : body.nearest(at);
    }
    if (c.subject() instanceof Subject.OfTooth t) {
      return tooth(t.tooth()).region().nearest(at);
    }
    return anchor(c.subject());
  }

  private static Point middle(Laid laid) {
    if (laid.component() instanceof Note n) {
      return new Point(n.x(), n.y());
    }
    Optional<Path> line =
        laid.centreline().or(() -> laid.details().stream().findFirst()).filter(p -> p.length() > 0);
    if (line.isPresent()) {
      return line.get().at(line.get().length() / 2);
    }
    return laid.body().isEmpty() ? Point.ORIGIN : laid.body().innerPoint();
  }

  /** On the midline between the arms of the arch, where a sign about the whole arch stands. */
  private Point midline() {
    return new Point(0, layout.form().box().maxY() * 0.62);
  }

  private Optional<Laid> laid(Subject subject) {
    return subject.component().flatMap(layout::find);
  }

  private PlacedTooth tooth(Tooth tooth) {
    return layout.form().tooth(tooth);
  }
}
