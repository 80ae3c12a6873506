package saddlewright.casefile.json;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/** A value of an enum as the file spells it: lower case with hyphens. */
final class Word {
  private Word() {}

  static String of(Enum<?> value) {
    return value.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  static <E extends Enum<E>> Optional<E> find(Class<E> type, String word) {
    return Arrays.stream(type.getEnumConstants()).filter(e -> of(e).equals(word)).findFirst();
  }

  /** All words of a type, as a list in a sentence. */
  static <E extends Enum<E>> String all(Class<E> type) {
    return Arrays.stream(type.getEnumConstants()).map(Word::of).collect(Collectors.joining(", "));
  }
}
