package saddlewright.desktop.tools;

import java.util.Locale;
import java.util.Optional;
import java.util.function.Predicate;
import saddlewright.chart.ArchChart;
import saddlewright.dentition.Arch;
import saddlewright.dentition.Tooth;
import saddlewright.design.Component;
import saddlewright.design.Subject;
import saddlewright.desktop.Words;
import saddlewright.desktop.subject.ComponentWords;
import saddlewright.rules.Situation;

/** The usual reasons why nothing can be placed. */
final class Reasons {
  private Reasons() {}

  /** That nothing but standing teeth can bear it, where the tooth is lost. */
  static Optional<Refusal> lost(Aim aim, ArchChart chart) {
    return aim.tooth()
        .filter(t -> !chart.stands(t))
        .map(
            t ->
                Refusal.of(
                    chart.isClosed(t)
                        ? Words.of("refusal.closed", t)
                        : Words.of(
                            "refusal.lost",
                            t,
                            Words.of(chart.tooth(t).status()).toLowerCase(Locale.ROOT))));
  }

  /** That the like is there, which a click selects. */
  static Optional<Refusal> there(Situation s, Predicate<Component> like) {
    return s.design().components().stream()
        .filter(like)
        .findFirst()
        .map(
            c ->
                Refusal.there(
                    Words.of("refusal.there", ComponentWords.full(c)), Subject.of(s.arch(), c)));
  }

  /** That it belongs to the other arch. */
  static Refusal otherArch(String what, Arch belongs) {
    return Refusal.of(Words.of("refusal.arch", what, belongs.code()));
  }

  /** That a saddle goes over lost teeth only. */
  static Refusal stands(Tooth tooth) {
    return Refusal.of(Words.of("refusal.stands", tooth));
  }
}
