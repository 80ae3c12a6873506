package saddlewright.command;

import java.util.Locale;
import java.util.Optional;
import saddlewright.dentition.Arch;
import saddlewright.dentition.Tooth;

/** Tooth numbers written in a row, such as 15,16 or 15;16. */
final class ToothList {
  private ToothList() {}

  /**
   * The places of the teeth named, one bit each.
   *
   * @throws IllegalArgumentException with a sentence, when a word is no tooth of this arch
   */
  static int places(String text, Arch arch) {
    int places = 0;
    int length = text.length();
    for (int start = 0; start < length; ) {
      if (separates(text.charAt(start))) {
        start++;
        continue;
      }
      int end = start + 1;
      while (end < length && !separates(text.charAt(end))) {
        end++;
      }
      places |= 1 << tooth(text, start, end, arch).place();
      start = end;
    }
    return places;
  }

  /**
   * The arch named.
   *
   * @throws IllegalArgumentException with a sentence, when it is neither upper nor lower
   */
  static Arch arch(String text) {
    return switch (text.strip().toLowerCase(Locale.ROOT)) {
      case "upper" -> Arch.UPPER;
      case "lower" -> Arch.LOWER;
      default ->
          throw new IllegalArgumentException(quoted(text) + " is no arch; use upper or lower");
    };
  }

  private static boolean separates(char c) {
    return c == ';' || c == ',' || Character.isWhitespace(c);
  }

  private static Tooth tooth(String text, int start, int end, Arch arch) {
    Optional<Tooth> tooth = end - start == 2 ? Tooth.find(number(text, start)) : Optional.empty();
    if (tooth.isEmpty()) {
      throw new IllegalArgumentException(
          quoted(text.substring(start, end)) + " is not an FDI tooth number; use " + range(arch));
    }
    if (tooth.get().arch() != arch) {
      throw new IllegalArgumentException(
          tooth.get()
              + " is not a tooth of the "
              + arch.code()
              + " arch; use "
              + range(arch)
              + ", or name the other arch");
    }
    return tooth.get();
  }

  private static int number(String text, int start) {
    int tens = text.charAt(start) - '0';
    int ones = text.charAt(start + 1) - '0';
    return tens >= 0 && tens <= 9 && ones >= 0 && ones <= 9 ? 10 * tens + ones : -1;
  }

  private static String range(Arch arch) {
    return arch == Arch.UPPER ? "11–18 and 21–28" : "31–38 and 41–48";
  }

  /** Text from outside, cut to a length that a sentence can hold. */
  static String quoted(String text) {
    String shown = text.length() > 20 ? text.substring(0, 20) + "…" : text;
    return '"' + shown.replaceAll("\\p{Cntrl}", " ") + '"';
  }
}
