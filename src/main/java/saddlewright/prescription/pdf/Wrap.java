package saddlewright.prescription.pdf;

import java.util.ArrayList;
import java.util.List;

/** Breaks words into lines of a width. */
final class Wrap {
  private Wrap() {}

  /**
   * Lines no wider than the width. Line breaks in the text are kept; a word that is wider than the
   * line is broken within; empty text gives no line.
   *
   * @param width in points
   * @param size of the type in points
   */
  static List<String> lines(String text, Weight weight, double size, double width) {
    List<String> out = new ArrayList<>();
    for (String paragraph : text.strip().split("\\R", -1)) {
      paragraph(unbroken(TypeFace.printable(paragraph)).strip(), weight, size, width, out);
    }
    while (!out.isEmpty() && out.get(out.size() - 1).isEmpty()) {
      out.remove(out.size() - 1);
    }
    return out;
  }

  /** Keeps a number and its unit together. */
  private static String unbroken(String text) {
    return text.replaceAll("(\\d) (mm|%|min)\\b", "$1\u00a0$2");
  }

  private static void paragraph(
      String text, Weight weight, double size, double width, List<String> out) {
    String direction = Directions.ofParagraph(text);
    int first = out.size();
    StringBuilder line = new StringBuilder();
    for (String word : text.split(" +")) {
      String longer = line.length() == 0 ? word : line + " " + word;
      if (TypeFace.width(longer, weight, size) <= width) {
        line.setLength(0);
        line.append(longer);
        continue;
      }
      if (line.length() > 0) {
        out.add(line.toString());
        line.setLength(0);
      }
      line.append(brokenWithin(word, weight, size, width, out));
    }
    out.add(line.toString());
    if (!direction.isEmpty()) {
      // Each line would otherwise run as its own first letter does.
      out.subList(first, out.size()).replaceAll(l -> direction + l);
    }
  }

  /** Adds full lines of a long word and gives back what is left of it. */
  private static String brokenWithin(
      String word, Weight weight, double size, double width, List<String> out) {
    String rest = word;
    while (TypeFace.width(rest, weight, size) > width) {
      int end = 0;
      while (true) {
        int next = rest.offsetByCodePoints(end, 1);
        while (next < rest.length() && Directions.isMark(rest.codePointAt(next))) {
          next += Character.charCount(rest.codePointAt(next));
        }
        if (end > 0 && TypeFace.width(rest.substring(0, next), weight, size) > width) {
          break;
        }
        end = next;
        if (end == rest.length()) {
          return rest;
        }
      }
      out.add(rest.substring(0, end));
      rest = rest.substring(end);
    }
    return rest;
  }
}
