package saddlewright.desktop.findings;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeParseException;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;
import javafx.scene.control.Button;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.DatePicker;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import javafx.util.StringConverter;
import saddlewright.desktop.Words;
import saddlewright.desktop.preferences.SigningRole;
import saddlewright.rules.Waiver;

/** Asks for the reason, the role and the date of a waiver; the reason is not optional. */
final class WaiverForm extends VBox {
  /** What was given. */
  record Signed(String reason, String role, LocalDate date) {}

  private static final DateTimeFormatter ISO = DateTimeFormatter.ISO_LOCAL_DATE;

  private final TextField reason = new TextField();
  private final ChoiceBox<String> role = new ChoiceBox<>();
  private final DatePicker date = new DatePicker(LocalDate.now());
  private final Label error = ReportCard.words("");
  private final Consumer<Signed> sign;

  /**
   * An empty form.
   *
   * @param former an earlier waiver of the same finding, whose reason may still hold
   * @param usual the role that signs, as far as is known
   */
  WaiverForm(Optional<Waiver> former, String usual, Consumer<Signed> sign) {
    this.sign = sign;
    getStyleClass().add("waiver-form");
    reason.setId("waiver-reason");
    reason.setPromptText(Words.of("finding.reason"));
    reason.setAccessibleText(Words.of("finding.reason"));
    reason.setText(former.map(Waiver::reason).orElse(""));
    reason.setOnAction(e -> submit());
    reason.textProperty().addListener(o -> say(""));
    role.setId("waiver-role");
    Stream.of(SigningRole.values()).map(SigningRole::words).forEach(role.getItems()::add);
    role.getSelectionModel().selectFirst();
    Optional.of(former.map(Waiver::role).orElse(usual))
        .filter(role.getItems()::contains)
        .ifPresent(role::setValue);
    role.setAccessibleText(Words.of("finding.role"));
    date.setId("waiver-date");
    date.setPrefWidth(124);
    date.setConverter(new Days());
    date.setAccessibleText(Words.of("finding.date"));
    Button waive = new Button(Words.of("finding.waive"));
    waive.setId("waive");
    waive.setOnAction(e -> submit());
    error.getStyleClass().add("field-error");
    error.setId("waiver-error");
    say("");
    getChildren()
        .addAll(
            ReportCard.words(Words.of("finding.waive-title")),
            reason,
            error,
            new FlowPane(6, 6, role, date, waive));
  }

  /** Puts the cursor where the reason is written. */
  void begin() {
    reason.requestFocus();
    reason.selectAll();
  }

  private void submit() {
    if (reason.getText().isBlank()) {
      say(Words.of("finding.reason-needed"));
      reason.requestFocus();
    } else if (date.getValue() == null) {
      say(Words.of("finding.date-needed"));
      date.requestFocus();
    } else {
      sign.accept(new Signed(reason.getText().strip(), role.getValue(), date.getValue()));
    }
  }

  private void say(String words) {
    error.setText(words);
    error.setManaged(!words.isEmpty());
    error.setVisible(!words.isEmpty());
  }

  /** Dates as year-month-day; what is none is left empty. */
  private static final class Days extends StringConverter<LocalDate> {
    @Override
    public String toString(LocalDate day) {
      return day == null ? "" : ISO.format(day);
    }

    @Override
    public LocalDate fromString(String text) {
      try {
        return text == null || text.isBlank() ? null : LocalDate.parse(text.strip(), ISO);
      } catch (DateTimeParseException e) {
        return null;
      }
    }
  }
}
