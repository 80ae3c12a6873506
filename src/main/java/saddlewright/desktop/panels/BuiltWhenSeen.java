package saddlewright.desktop.panels;

import java.util.function.Supplier;
import javafx.beans.value.ObservableBooleanValue;
import javafx.scene.Node;
import javafx.scene.layout.StackPane;

/**
 * The place of a panel that is built when it is first to be seen, and kept: thousands of hidden
 * nodes would be walked through by the toolkit at every frame, and take memory for nothing.
 */
public final class BuiltWhenSeen extends StackPane {
  private final Supplier<? extends Node> source;

  public BuiltWhenSeen(ObservableBooleanValue seen, Supplier<? extends Node> source) {
    this.source = source;
    visibleProperty().bind(seen);
    visibleProperty().addListener(o -> build());
    build();
  }

  private void build() {
    if (isVisible() && getChildren().isEmpty()) {
      getChildren().add(source.get());
    }
  }
}
