package saddlewright.desktop.prescription;

import java.util.function.Consumer;
import java.util.function.Predicate;
import javafx.scene.control.TextField;
import javafx.scene.control.TextFormatter;

/** A line of text in a row: what fits is taken over as it is typed, what does not is put back. */
final class RowText extends TextField {
  private final Predicate<String> fits;
  private String shown = "";
  private boolean showing;

  /**
   * @param fits whether a text can stand there
   * @param changed takes a text that fits
   * @param left is told when the field is left
   */
  RowText(
      String id,
      String name,
      int columns,
      Predicate<String> fits,
      Consumer<String> changed,
      Runnable left) {
    this.fits = fits;
    setId(id);
    setAccessibleText(name);
    setPrefColumnCount(columns);
    textProperty()
        .addListener(
            o -> {
              String text = getText().strip();
              if (!showing && !text.equals(shown) && fits.test(text)) {
                shown = text;
                changed.accept(text);
              }
            });
    focusedProperty()
        .addListener(
            (o, was, is) -> {
              if (was && !is) {
                left.run();
                show(shown);
              }
            });
  }

  /** Takes digits only, so many at most. */
  RowText digits(int most) {
    setTextFormatter(
        new TextFormatter<>(c -> c.getControlNewText().matches("\\d{0," + most + "}") ? c : null));
    return this;
  }

  void show(String now) {
    shown = now;
    boolean typing = isFocused() && !fits.test(getText().strip());
    if (!typing && !getText().strip().equals(now)) {
      showing = true;
      setText(now);
      showing = false;
    }
  }
}
