package saddlewright.desktop;

import java.text.MessageFormat;
import java.util.Locale;
import java.util.MissingResourceException;
import java.util.ResourceBundle;
import saddlewright.rules.Sentence;

/** The words of the window, from its message file. */
public final class Words {
  private static final ResourceBundle BUNDLE =
      ResourceBundle.getBundle("saddlewright.desktop.messages", Locale.UK);

  private Words() {}

  /** The words under a key, with {0}, {1} … filled in. */
  public static String of(String key, Object... arguments) {
    String pattern = BUNDLE.getString(key);
    return arguments.length == 0
        ? pattern
        : new MessageFormat(pattern, Locale.ROOT).format(arguments);
  }

  /** The name of a constant, such as Rest.Form.STANDARD; its own words where the file has none. */
  public static String of(Enum<?> constant) {
    String key = constant.getDeclaringClass().getSimpleName() + "." + constant.name();
    try {
      return BUNDLE.getString(key);
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
