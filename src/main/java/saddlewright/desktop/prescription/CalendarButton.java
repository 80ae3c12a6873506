package saddlewright.desktop.prescription;

import java.time.LocalDate;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.scene.control.DatePicker;
import saddlewright.desktop.Words;

/**
 * The button that opens a calendar to pick a day from; the day is written in the field beside it.
 */
final class CalendarButton extends DatePicker {
  private boolean showing;

  CalendarButton(Consumer<LocalDate> picked) {
    getStyleClass().add("calendar-button");
    setEditable(false);
    // The field beside it opens the calendar by F4; two stops for one value would be one too many.
    setFocusTraversable(false);
    setAccessibleText(Words.of("day.calendar"));
    valueProperty()
        .addListener(
            (o, was, now) -> {
              if (!showing && now != null) {
                picked.accept(now);
              }
            });
  }

  /** Opens the calendar at a day. */
  void open(Optional<LocalDate> at) {
    turnTo(at);
    show();
  }

  /** Turns the calendar to a day. */
  void turnTo(Optional<LocalDate> at) {
    showing = true;
    setValue(at.orElse(null));
    showing = false;
  }
}
