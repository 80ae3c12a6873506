package saddlewright.desktop;

import java.util.Optional;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** A message above the sheet, in place of a box that stops the work. */
final class NoticeBar extends HBox {
  NoticeBar(Worktable table) {
    super(10);
    setId("notice");
    getStyleClass().add("notice");
    setAlignment(Pos.CENTER_LEFT);
    Label words = new Label();
    words.setId("notice-text");
    words.setWrapText(true);
    words.setMaxWidth(Double.MAX_VALUE);
    words.setMinHeight(USE_PREF_SIZE);
    Button dismiss = new Button(Words.of("notice.dismiss"));
    dismiss.setMinWidth(USE_PREF_SIZE);
    dismiss.setOnAction(e -> table.noticeProperty().set(Optional.empty()));
    // Below the words, so that neither is squeezed by the other.
    FlowPane offers = new FlowPane();
    offers.getStyleClass().add("offers");
    VBox said = new VBox(words, offers);
    said.getStyleClass().add("said");
    said.setAlignment(Pos.CENTER_LEFT);
    HBox.setHgrow(said, Priority.ALWAYS);
    getChildren().addAll(said, dismiss);
    Runnable update =
        () -> {
          Optional<String> notice = table.noticeProperty().get();
          words.setText(notice.orElse(""));
          offers.getChildren().setAll(table.offers().stream().map(o -> button(table, o)).toList());
          offers.setManaged(!table.offers().isEmpty());
          setVisible(notice.isPresent());
          setManaged(notice.isPresent());
        };
    table.noticeProperty().addListener(o -> update.run());
    update.run();
  }

  /** What is done about a notice takes it away, unless it has something of its own to say. */
  private static Button button(Worktable table, Offer offer) {
    Button b = new Button(offer.label());
    b.setMinWidth(USE_PREF_SIZE);
    b.getStyleClass().add("offer");
    b.hoverProperty().addListener((o, was, is) -> offer.considered().accept(is || b.isFocused()));
    b.focusedProperty().addListener((o, was, is) -> offer.considered().accept(is || b.isHover()));
    b.setOnAction(
        e -> {
          table.noticeProperty().set(Optional.empty());
          offer.action().run();
        });
    return b;
  }
}
