package saddlewright.prescription.pdf;

import java.text.Normalizer;
import java.util.HashMap;
import java.util.Map;

/**
 * Arabic letters in the forms that they take beside each other.
 *
 * <p>The forms are characters of their own in Unicode (Arabic Presentation Forms A and B); which
 * letter has which form, and so whether it joins on both sides, is read from their names in the
 * Java library (Unicode Standard, section 9.2).
 */
final class JoinedLetters {
  /** Forms of a letter in the order in which {@link Shape} names them; 0 where there is none. */
  private static final Map<String, int[]> FORMS = forms();

  private static final int LAM = 0x0644;
  private static final int LENGTHENER = 0x0640;
  private static final int JOINER = 0x200D;
  private static final int NON_JOINER = 0x200C;

  private enum Shape {
    ISOLATED,
    FINAL,
    INITIAL,
    MEDIAL
  }

  private JoinedLetters() {}

  static boolean isNeeded(String text) {
    return text.codePoints().anyMatch(JoinedLetters::isArabic);
  }

  private static boolean isArabic(int c) {
    return c >= 0x0620 && c <= 0x06FF;
  }

  private static Map<String, int[]> forms() {
    Map<String, int[]> out = new HashMap<>();
    for (int c = 0xFB50; c <= 0xFEFC; c++) {
      String name = Character.isDefined(c) ? String.valueOf(Character.getName(c)) : "";
      for (Shape s : Shape.values()) {
        if (name.startsWith("ARABIC L") && name.endsWith(" " + s.name() + " FORM")) {
          String letters = Normalizer.normalize(Character.toString(c), Normalizer.Form.NFKC);
          boolean single = letters.length() == 1;
          boolean lamWithAlef =
              name.startsWith("ARABIC LIGATURE LAM WITH ALEF") && letters.length() == 2;
          if ((single || lamWithAlef) && Face.DEJAVU_SANS.has(c)) {
            int[] forms = out.computeIfAbsent(letters, l -> new int[Shape.values().length]);
            forms[s.ordinal()] = c;
          }
        }
      }
    }
    return out;
  }

  /** The text with each letter in its form; lam and alef become one. */
  static String joined(String text) {
    int[] c = text.codePoints().toArray();
    StringBuilder out = new StringBuilder(text.length());
    for (int i = 0; i < c.length; i++) {
      if (!isArabic(c[i]) || Directions.isMark(c[i])) {
        out.appendCodePoint(c[i]);
        continue;
      }
      String letters = Character.toString(c[i]);
      int last = i;
      if (c[i] == LAM && i + 1 < c.length) {
        String pair = letters + Character.toString(c[i + 1]);
        if (FORMS.containsKey(pair)) {
          letters = pair;
          last = i + 1;
        }
      }
      boolean before = i > 0 && joinsOnwards(c, neighbour(c, i, -1));
      boolean after = joinsOnwards(c, last) && joinsBack(c, neighbour(c, last, 1));
      out.appendCodePoint(form(letters, c[i], before, after));
      i = last;
    }
    return out.toString();
  }

  private static int form(String letters, int letter, boolean before, boolean after) {
    int[] forms = FORMS.get(letters);
    if (forms == null) {
      return letter;
    }
    Shape wanted =
        before ? (after ? Shape.MEDIAL : Shape.FINAL) : after ? Shape.INITIAL : Shape.ISOLATED;
    if (wanted == Shape.ISOLATED && letters.length() == 1) {
      return letter;
    }
    int form = forms[wanted.ordinal()];
    return form != 0 ? form : letter;
  }

  /** The next character that is no mark; -1 or past the end where there is none. */
  private static int neighbour(int[] c, int from, int step) {
    int i = from + step;
    while (i >= 0 && i < c.length && Directions.isMark(c[i])) {
      i += step;
    }
    return i;
  }

  /** Whether a character joins to the one after it in reading order. */
  private static boolean joinsOnwards(int[] c, int i) {
    if (i < 0 || i >= c.length || c[i] == NON_JOINER) {
      return false;
    }
    int[] forms = FORMS.get(Character.toString(c[i]));
    return c[i] == LENGTHENER
        || c[i] == JOINER
        || forms != null && forms[Shape.INITIAL.ordinal()] != 0;
  }

  /** Whether a character joins to the one before it in reading order. */
  private static boolean joinsBack(int[] c, int i) {
    if (i < 0 || i >= c.length || c[i] == NON_JOINER) {
      return false;
    }
    int[] forms = FORMS.get(Character.toString(c[i]));
    return c[i] == LENGTHENER
        || c[i] == JOINER
        || forms != null && forms[Shape.FINAL.ordinal()] != 0;
  }
}
