package saddlewright.interchange;

/**
 * Words of any origin as a FHIR string: no control characters but tab and line ends, no halves of
 * characters, no blanks around (R4, data types, string; XML 1.0, characters).
 */
final class Plain {
  private static final int REPLACEMENT = 0xFFFD;

  private Plain() {}

  static String of(String text) {
    StringBuilder out = new StringBuilder(text.length());
    text.codePoints().forEach(c -> out.appendCodePoint(allowed(c) ? c : REPLACEMENT));
    int from = 0;
    int to = out.length();
    while (from < to && isBlank(out.charAt(from))) {
      from++;
    }
    while (from < to && isBlank(out.charAt(to - 1))) {
      to--;
    }
    return out.substring(from, to);
  }

  /** Java's own stripping leaves spaces that do not break. */
  private static boolean isBlank(char c) {
    return Character.isWhitespace(c) || Character.isSpaceChar(c);
  }

  private static boolean allowed(int c) {
    boolean control = Character.isISOControl(c) && c != '\t' && c != '\n' && c != '\r';
    boolean half = c >= Character.MIN_SURROGATE && c <= Character.MAX_SURROGATE;
    boolean noCharacter = (c & 0xFFFE) == 0xFFFE;
    return !control && !half && !noCharacter;
  }

  /** The same as text of an XHTML element. */
  static String escaped(String text) {
    return of(text)
        .replace("&", "&amp;")
        .replace("<", "&lt;")
        .replace(">", "&gt;")
        .replace("\"", "&quot;");
  }
}
