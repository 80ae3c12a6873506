package saddlewright.desktop.tools;

import java.util.function.Predicate;
import saddlewright.dentition.Span;
import saddlewright.dentition.Tooth;

/** The places passed in a drag along the arch. */
final class Run {
  private Run() {}

  /** From the first place towards the other, as far as each on the way will do. */
  static Span of(Tooth from, Tooth to, Predicate<Tooth> will) {
    int way = to.place() < from.place() ? -1 : 1;
    Tooth end = from;
    for (int p = from.place(); p != to.place() + way; p += way) {
      Tooth t = Tooth.at(from.arch(), p);
      if (!will.test(t)) {
        break;
      }
      end = t;
    }
    return Span.of(from, end);
  }
}
