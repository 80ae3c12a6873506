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
    Optional<RotationAxis> longest = longest(seats);
    if (longest.isEmpty()) {
      return;
    }
    RotationAxis base = longest.get();
    double spread = seats.stream().mapToDouble(p -> off(base, p)).max().orElse(0);
    double asked = s.profile().limit(Quantity.REST_TRIANGLE);
    if (spread >= asked) {
      on.judged();
      return;
    }
    Optional<Tooth> better =
        farthest(s, base).filter(t -> off(base, SpareAbutments.seat(s, t)) >= asked);
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

  private static double off(RotationAxis line, Point p) {
    return Math.abs(line.distanceTo(p));
  }

  /** The line through the two seats farthest apart; none when all are at one place. */
  private static Optional<RotationAxis> longest(List<Point> seats) {
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
    return from.distanceTo(to) < 1 ? Optional.empty() : Optional.of(new RotationAxis(from, to));
  }

  private static Optional<Tooth> farthest(Situation s, RotationAxis base) {
    return SpareAbutments.of(s).stream()
        .max(Comparator.comparingDouble(t -> off(base, SpareAbutments.seat(s, t))));
  }
}
