package saddlewright.desktop.help;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/** The words that somebody looks for. */
final class Sought {
  private Sought() {}

  /** In small letters; none for an empty field. */
  static List<String> words(String text) {
    return Stream.of(text.toLowerCase(Locale.ROOT).strip().split("\\s+"))
        .filter(w -> !w.isEmpty())
        .toList();
  }
}
