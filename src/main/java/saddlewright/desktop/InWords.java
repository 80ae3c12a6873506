package saddlewright.desktop;

import java.util.function.Function;
import javafx.util.StringConverter;

/**
 * Shows values in words, in lists that are chosen from and not typed into.
 *
 * @param <T> the values
 */
public final class InWords<T> extends StringConverter<T> {
  private final Function<T, String> words;

  public InWords(Function<T, String> words) {
    this.words = words;
  }

  @Override
  public String toString(T value) {
    return value == null ? "" : words.apply(value);
  }

  @Override
  public T fromString(String text) {
    throw new UnsupportedOperationException("nothing is typed here");
  }
}
