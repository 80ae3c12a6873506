package saddlewright.prescription;

/** Words of any origin on one line: line breaks, tabs and control characters become spaces. */
final class OneLine {
  private OneLine() {}

  static String of(String text) {
    StringBuilder out = new StringBuilder();
    text.codePoints()
        .forEach(
            c -> {
              boolean gap =
                  Character.isISOControl(c)
                      || Character.isWhitespace(c)
                      || Character.getType(c) == Character.LINE_SEPARATOR
                      || Character.getType(c) == Character.PARAGRAPH_SEPARATOR;
              boolean after = out.length() == 0 || out.charAt(out.length() - 1) == ' ';
              if (!gap) {
                out.appendCodePoint(c);
              } else if (!after) {
                out.append(' ');
              }
            });
    return out.toString().strip();
  }
}
