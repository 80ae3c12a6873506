package saddlewright.desktop;

import java.text.MessageFormat;
import java.util.Locale;
import java.util.MissingResourceException;
import java.util.ResourceBundle;
import saddlewright.rules.Sentence;

/** The words of the window, from its message file. */
public final class Words {
  /** The user's language where there is a message file for it, otherwise English. */
  private static ResourceBundle bundle =
      ResourceBundle.getBundle(
          "saddlewright.desktop.messages",
          Locale.getDefault(),
          ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES));

  private Words() {}

  /** Speaks in the words of another bundle; what was said before stays as it was said. */
  static ResourceBundle speak(ResourceBundle other) {
    ResourceBundle before = bundle;
    bundle = other;
    return before;
  }

  /** The words under a key, with {0}, {1} … filled in. */
  public static String of(String key, Object... arguments) {
    String pattern = bundle.getString(key);
    return arguments.length == 0
        ? pattern
        : new MessageFormat(pattern, Locale.ROOT).format(arguments);
  }

  /** The name of a constant, such as Rest.Form.STANDARD; its own words where the file has none. */
  public static String of(Enum<?> constant) {
    String key = constant.getDeclaringClass().getSimpleName() + "." + constant.name();
    try {
      return bundle.getString(key);
    } catch (MissingResourceException e) {
      String plain = constant.name().toLowerCase(Locale.ROOT).replace('_', ' ');
      return Character.toUpperCase(plain.charAt(0)) + plain.substring(1);
    }
  }

  /** A length with its unit, such as 2.5 mm. */
  public static String mm(double value) {
    return number(value) + " mm";
  }

  /** A number with at most two decimals. */
  public static String number(double value) {
    String s = String.format(Locale.ROOT, "%.2f", value);
    return s.contains(".") ? s.replaceAll("0+$", "").replaceAll("\\.$", "") : s;
  }

  /** The same with a capital at its beginning. */
  public static String capital(String text) {
    return Sentence.capital(text);
  }
}
