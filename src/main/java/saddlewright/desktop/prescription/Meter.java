package saddlewright.desktop.prescription;

import javafx.css.PseudoClass;
import javafx.scene.AccessibleRole;
import javafx.scene.control.Label;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import saddlewright.desktop.Words;

/** How many of the fields that are asked for are filled in: in words, and as a bar. */
final class Meter extends VBox {
  private static final PseudoClass FULL = PseudoClass.getPseudoClass("full");

  private final String level;
  private final Label words = FieldBlock.small("meter-words");
  private final Region bar = new Region();
  private final StackPane track = new StackPane(bar);
  private double share;

  Meter(String level) {
    this.level = level;
    getStyleClass().addAll("meter", level);
    words.setId("meter-" + level);
    track.getStyleClass().add("meter-track");
    bar.getStyleClass().add("meter-bar");
    StackPane.setAlignment(bar, javafx.geometry.Pos.CENTER_LEFT);
    bar.setMaxWidth(0);
    bar.setMinWidth(0);
    track.widthProperty().addListener(o -> draw());
    getChildren().addAll(words, track);
    track.setAccessibleRole(AccessibleRole.PROGRESS_INDICATOR);
  }

  void show(int filled, int asked) {
    words.setText(Words.of("meter." + level, filled, asked));
    track.setAccessibleText(words.getText());
    share = asked == 0 ? 1 : (double) filled / asked;
    pseudoClassStateChanged(FULL, filled == asked);
    draw();
  }

  private void draw() {
    double w = Math.max(0, track.getWidth() - track.snappedLeftInset() - track.snappedRightInset());
    bar.setMaxWidth(share * w);
    bar.setPrefWidth(share * w);
  }
}
