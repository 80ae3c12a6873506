package saddlewright.desktop;

import java.util.Enumeration;
import java.util.ResourceBundle;

/**
 * A language that nobody speaks: English with accents, a third longer, between marks. What stands
 * in a window without the marks did not come from the message file.
 */
final class PseudoWords extends ResourceBundle {
  static final char OPEN = '\u27e6';
  static final char CLOSE = '\u27e7';

  private static final String PLAIN = "aceinouyACEINOUY";
  private static final String ACCENTED =
      "\u00e1\u00e7\u00e9\u00ed\u00f1\u00f3\u00fa\u00fd\u00c1\u00c7\u00c9\u00cd\u00d1\u00d3\u00da\u00dd";

  private final ResourceBundle english;

  PseudoWords(ResourceBundle english) {
    this.english = english;
  }

  @Override
  protected Object handleGetObject(String key) {
    return of(english.getString(key));
  }

  @Override
  public Enumeration<String> getKeys() {
    return english.getKeys();
  }

  /** The pattern in that language; what stands in braces stays, so that it can be filled in. */
  static String of(String pattern) {
    StringBuilder out = new StringBuilder().append(OPEN);
    int depth = 0;
    for (char c : pattern.toCharArray()) {
      depth += c == '{' ? 1 : c == '}' ? -1 : 0;
      int at = PLAIN.indexOf(c);
      out.append(depth == 0 && at >= 0 ? ACCENTED.charAt(at) : c);
    }
    int more = Math.max(1, pattern.replaceAll("\\{[^}]*}", "").length() / 3);
    for (int i = 0; i < more; i++) {
      out.append(i % 6 == 5 ? ' ' : '\u00b7');
    }
    return out.append(CLOSE).toString();
  }

  static boolean isMarked(String text) {
    return text.indexOf(OPEN) >= 0;
  }
}
