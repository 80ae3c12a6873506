package saddlewright.layout;

import java.util.Optional;
import saddlewright.archform.PlacedTooth;
import saddlewright.dentition.Arch;
import saddlewright.dentition.End;
import saddlewright.dentition.Side;
import saddlewright.dentition.Span;
import saddlewright.dentition.Tooth;
import saddlewright.design.Saddle;

/**
 * How far a saddle, or what lies in one, reaches along the ridge crest: arc lengths in mm of the
 * ridge frame, and what stops it at either end.
 */
record SaddleReach(double from, double to, Stop first, Stop last) {

  /** What ends a saddle. */
  enum Stop {
    /** A standing tooth: the saddle lies against its proximal surface. */
    ABUTMENT,
    /** Another saddle, with which it runs together. */
    SADDLE,
    /** Nothing: it covers the retromolar pad, or the tuberosity to the hamular notch. */
    PAD,
    /** Bare ridge that is not restored. */
    RIDGE
  }

  /** Share of the retromolar pad that a saddle covers (common practice: two thirds). */
  static final double PAD_COVER = 0.67;

  /** How far a saddle goes past its last artificial tooth on to a bare ridge, mm. */
  private static final double PAST_LAST_TOOTH = 1.5;

  private record Edge(double arc, Stop stop) {}

  static SaddleReach of(Ground ground, Span span) {
    Edge a = edge(ground, span, -1);
    Edge b = edge(ground, span, 1);
    return new SaddleReach(Math.min(a.arc, b.arc), Math.max(a.arc, b.arc), a.stop, b.stop);
  }

  double length() {
    return to - from;
  }

  double middle() {
    return (from + to) / 2;
  }

  boolean holds(double arc) {
    return arc >= from && arc <= to;
  }

  private static Edge edge(Ground ground, Span span, int direction) {
    Tooth end = direction < 0 ? span.first() : span.last();
    Optional<Tooth> next = ground.next(end, direction);
    if (next.isPresent() && ground.chart().stands(next.get())) {
      return new Edge(contact(ground, next.get(), -direction), Stop.ABUTMENT);
    }
    double own = contact(ground, end, direction);
    if (next.isPresent() && inSaddle(ground, next.get(), span)) {
      return new Edge(own, Stop.SADDLE);
    }
    Optional<Tooth> further = next;
    while (further.isPresent()) {
      if (ground.chart().stands(further.get()) || inSaddle(ground, further.get(), span)) {
        return new Edge(own + direction * PAST_LAST_TOOTH, Stop.RIDGE);
      }
      further = ground.next(further.get(), direction);
    }
    double share = ground.form().arch() == Arch.LOWER ? PAD_COVER : 1;
    double pad = ground.ridge().pad(direction < 0 ? Side.RIGHT : Side.LEFT, share);
    return new Edge(direction < 0 ? Math.min(own, pad) : Math.max(own, pad), Stop.PAD);
  }

  private static boolean inSaddle(Ground ground, Tooth tooth, Span except) {
    return ground.design().stream(Saddle.class)
        .anyMatch(s -> !s.span().equals(except) && s.span().contains(tooth));
  }

  /** Arc length of the contact of a place at the side towards which the direction leads. */
  private static double contact(Ground ground, Tooth tooth, int direction) {
    PlacedTooth t = ground.tooth(tooth);
    boolean rightwards = direction < 0;
    End end = rightwards == (tooth.side() == Side.RIGHT) ? End.DISTAL : End.MESIAL;
    return ground.ridge().arcOf(t.contact(end));
  }
}
