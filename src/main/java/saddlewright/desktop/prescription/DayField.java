package saddlewright.desktop.prescription;

import java.time.LocalDate;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.control.Tooltip;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import saddlewright.desktop.Words;
import saddlewright.prescription.Dates;

/** A day that may be left empty: typed as 2026-12-01 or in words, or picked from a calendar. */
final class DayField extends VBox {
  private final TextField text = new TextField();
  private final CalendarButton calendar;
  private final Label error = new Label();
  private final Consumer<Optional<LocalDate>> changed;
  private Optional<LocalDate> day = Optional.empty();
  private boolean showing;

  /**
   * @param id of the input
   * @param name what it is called to those who hear it
   * @param changed takes the day whenever another one is given
   */
  DayField(String id, String name, Consumer<Optional<LocalDate>> changed) {
    this.changed = changed;
    getStyleClass().add("day-field");
    text.setId(id);
    text.setAccessibleText(name);
    text.setPromptText(Words.of("day.prompt"));
    text.setPrefColumnCount(8);
    HBox.setHgrow(text, Priority.ALWAYS);
    calendar = new CalendarButton(d -> take(Optional.of(d)));
    error.getStyleClass().add("field-error");
    error.setWrapText(true);
    error.setMinHeight(USE_PREF_SIZE);
    getChildren().addAll(new HBox(text, calendar), error);
    say("");
    text.textProperty().addListener(o -> typed());
    text.focusedProperty().addListener((o, was, is) -> left(is));
    text.setOnAction(e -> left(false));
    text.addEventFilter(KeyEvent.KEY_PRESSED, this::pressed);
  }

  Node focus() {
    return text;
  }

  void show(Optional<LocalDate> now) {
    if (now.equals(day) && (text.isFocused() || text.getText().equals(words(now)))) {
      return;
    }
    day = now;
    showing = true;
    text.setText(words(now));
    showing = false;
    say("");
    calendar.turnTo(now);
    describe();
  }

  private static String words(Optional<LocalDate> day) {
    return day.map(LocalDate::toString).orElse("");
  }

  private void describe() {
    text.setTooltip(day.map(d -> new Tooltip(Dates.withWeekday(d))).orElse(null));
  }

  private void typed() {
    if (showing) {
      return;
    }
    Optional<LocalDate> read = DayWords.read(text.getText());
    if ((read.isPresent() || text.getText().isBlank()) && !read.equals(day)) {
      day = read;
      calendar.turnTo(read);
      describe();
      changed.accept(read);
    }
    if (read.isPresent() || text.getText().isBlank()) {
      say("");
    }
  }

  private void left(boolean focused) {
    if (focused) {
      return;
    }
    boolean read = text.getText().isBlank() || DayWords.read(text.getText()).isPresent();
    say(read ? "" : Words.of("day.unread", text.getText().strip()));
    if (read) {
      showing = true;
      text.setText(words(day));
      showing = false;
    }
  }

  private void take(Optional<LocalDate> picked) {
    showing = true;
    text.setText(words(picked));
    showing = false;
    typed();
    text.requestFocus();
  }

  private void pressed(KeyEvent e) {
    if (e.getCode() == KeyCode.F4 || e.getCode() == KeyCode.DOWN && e.isAltDown()) {
      calendar.open(day);
      e.consume();
    }
  }

  private void say(String sentence) {
    error.setText(sentence);
    error.setVisible(!sentence.isEmpty());
    error.setManaged(!sentence.isEmpty());
  }
}
