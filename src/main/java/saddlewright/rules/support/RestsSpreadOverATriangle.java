package saddlewright.rules.support;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import saddlewright.dentition.Tooth;
import saddlewright.design.Rest;
import saddlewright.design.Saddle;
import saddlewright.design.Subject;
import saddlewright.geometry.Point;
import saddlewright.mechanics.Bearings;
import saddlewright.mechanics.RotationAxis;
import saddlewright.rules.Amount;
import saddlewright.rules.Claim;
import saddlewright.rules.Draft;
import saddlewright.rules.Judging;
import saddlewright.rules.Literature;
import saddlewright.rules.NewRest;
import saddlewright.rules.Quantity;
import saddlewright.rules.Rule;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;

/** A denture rocks on a line of rests as a plank rocks on a rail. */
public final class RestsSpreadOverATriangle implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "rests-spread-over-a-triangle",
          "The rests of a denture spread over a triangle, not along a line.",
          Severity.SHOULD,
          Source.read(Literature.EXAM_NOTES + "; " + Literature.ANKARA));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    List<Point> seats = new ArrayList<>();
    for (Rest r : s.design().all(Rest.class)) {
      if (s.chart().stands(r.tooth())) {
        seats.add(Bearings.seat(s.layout(), r));
      }
    }
    if (seats.size() < 3 || s.design().all(Saddle.class).isEmpty()) {
      return;
    }
    double spread = spread(seats);
    double asked = s.profile().limit(Quantity.REST_TRIANGLE);
    if (spread >= asked) {
      on.judged();
      return;
    }
    Optional<Tooth> better =
        SpareAbutments.of(s).stream()
            .max(Comparator.comparingDouble(t -> spreadWith(s, seats, t)))
            .filter(t -> spreadWith(s, seats, t) >= asked);
    Draft d =
        on.finding(s.arch().code() + " denture", Subject.of(s.arch()))
            .fact(
                better.isPresent()
                    ? "its rests lie nearly on one line"
                    : "its rests lie nearly on one line, and no sound tooth stands off it")
            .measured(Amount.mm(spread) + " off the line", Amount.atLeastMm(asked))
            .weighing(better.isPresent() ? Severity.SHOULD : Severity.CONSIDER);
    better.ifPresent(
        t ->
            d.remedy(
                NewRest.label(t, SpareAbutments.site(t)),
                NewRest.edit(s, t, SpareAbutments.site(t))));
    d.done();
  }

  private static double spreadWith(Situation s, List<Point> seats, Tooth added) {
    List<Point> more = new ArrayList<>(seats);
    more.add(SpareAbutments.seat(s, added));
    return spread(more);
  }

  /** The farthest seat from the line through the two that lie farthest apart, in mm. */
  private static double spread(List<Point> seats) {
    Point from = seats.get(0);
    Point to = seats.get(1);
    for (Point a : seats) {
      for (Point b : seats) {
        if (a.distanceTo(b) > from.distanceTo(to)) {
          from = a;
          to = b;
        }
      }
    }
    if (from.distanceTo(to) < 1) {
      return 0;
    }
    RotationAxis line = new RotationAxis(from, to);
    return seats.stream().mapToDouble(p -> Math.abs(line.distanceTo(p))).max().orElse(0);
  }
}
