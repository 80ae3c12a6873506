package saddlewright.desktop.roll;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;

/** What has been typed at the list, and the line that it finds. */
final class Typed {
  /** What is typed later than this after the last letter begins anew, milliseconds. */
  private static final long PAUSE = 1500;

  private String text = "";
  private long last = Long.MIN_VALUE;

  String text() {
    return text;
  }

  /** Whether what is typed now goes on from what was typed before. */
  boolean isGoingOn(long now) {
    return !text.isEmpty() && now - last <= PAUSE;
  }

  /** Whether words are being typed, so that a space is one more sign; a number is at its end. */
  boolean isInWords(long now) {
    return isGoingOn(now) && text.chars().anyMatch(Character::isLetter);
  }

  void type(String letter, long now) {
    text = isGoingOn(now) ? text + letter : letter;
    last = now;
  }

  void back(long now) {
    text = text.isEmpty() ? text : text.substring(0, text.length() - 1);
    last = now;
  }

  void clear() {
    text = "";
  }

  /**
   * The line that is meant: the one with that very number, else one whose number begins so, else
   * one that holds the words; from the present line onwards and round.
   *
   * @param from index of the present line
   */
  <T> Optional<T> find(
      List<T> lines, int from, Function<T, String> number, Function<T, String> words) {
    String wanted = text.strip().toLowerCase(Locale.ROOT);
    if (wanted.isEmpty()) {
      return Optional.empty();
    }
    List<T> round = new java.util.ArrayList<>(lines.subList(Math.max(0, from), lines.size()));
    round.addAll(lines.subList(0, Math.max(0, from)));
    return first(round, l -> low(number.apply(l)).equals(wanted))
        .or(() -> first(round, l -> low(number.apply(l)).startsWith(wanted)))
        .or(() -> first(round, l -> low(words.apply(l)).contains(wanted)));
  }

  private static String low(String s) {
    return s.toLowerCase(Locale.ROOT);
  }

  private static <T> Optional<T> first(List<T> lines, java.util.function.Predicate<T> wanted) {
    return lines.stream().filter(wanted).findFirst();
  }
}
