package saddlewright.desktop.preferences;

import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import saddlewright.desktop.Words;

/**
 * One thing that can be set: its key in the file, what holds until it is set, and how it is written
 * there.
 *
 * @param key in kebab case; renaming it loses what users have set
 * @param usual the value that holds until another is set
 * @param always whether the file has its line even while the usual value holds
 * @param lawful what may be written there, in words
 */
record Setting<T>(
    String key,
    T usual,
    boolean always,
    String lawful,
    Function<String, Optional<T>> reading,
    Function<T, String> writing) {

  /** One of the constants of an enum, written in kebab case. */
  static <E extends Enum<E>> Setting<E> choice(String key, E usual) {
    E[] all = usual.getDeclaringClass().getEnumConstants();
    return new Setting<>(
        key,
        usual,
        true,
        Words.of(
            "preferences.lawful-choice",
            Stream.of(all).map(Setting::kebab).collect(Collectors.joining(", "))),
        text ->
            Stream.of(all).filter(e -> kebab(e).equals(text.toLowerCase(Locale.ROOT))).findFirst(),
        Setting::kebab);
  }

  static Setting<Boolean> yesOrNo(String key, boolean usual) {
    return new Setting<>(
        key,
        usual,
        true,
        Words.of("preferences.lawful-choice", "yes, no"),
        text ->
            switch (text.toLowerCase(Locale.ROOT)) {
              case "yes", "true" -> Optional.of(true);
              case "no", "false" -> Optional.of(false);
              default -> Optional.empty();
            },
        on -> on ? "yes" : "no");
  }

  /** A number within bounds, written with one or two decimals. */
  static Setting<Number> number(String key, double usual, double least, double most) {
    return new Setting<>(
        key,
        usual,
        true,
        Words.of("preferences.lawful-number", plain(least), plain(most)),
        text -> parse(text).filter(v -> v >= least && v <= most).map(v -> (Number) v),
        v -> plain(v.doubleValue()));
  }

  private static Optional<Double> parse(String text) {
    try {
      return Optional.of(Double.valueOf(text));
    } catch (NumberFormatException e) {
      return Optional.empty();
    }
  }

  private static String plain(double v) {
    return String.format(Locale.ROOT, "%.2f", v).replaceAll("0$", "");
  }

  static String kebab(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
