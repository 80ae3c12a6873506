package saddlewright.desktop.findings;

import javafx.scene.control.Label;
import javafx.scene.layout.StackPane;
import javafx.scene.shape.Circle;
import javafx.scene.shape.Polygon;
import javafx.scene.shape.Shape;
import saddlewright.desktop.Words;
import saddlewright.rules.Severity;

/** The sign of a kind of entry, in the shape that it has on the sheet. */
public final class Badge extends StackPane {
  private static final double RADIUS = 10;

  private Badge(Shape shape, String letter, String style, boolean low) {
    getStyleClass().addAll("sign", style);
    shape.getStyleClass().add("sign-shape");
    Label words = new Label(letter);
    words.getStyleClass().add("sign-letter");
    if (low) {
      words.setTranslateY(3);
    }
    getChildren().addAll(shape, words);
    setMinSize(2 * RADIUS + 2, 2 * RADIUS + 2);
    setPrefSize(2 * RADIUS + 2, 2 * RADIUS + 2);
    setMaxSize(USE_PREF_SIZE, USE_PREF_SIZE);
  }

  /** The sign of a severity, hollow once waived. */
  public static Badge of(Severity severity, boolean waived) {
    String style = waived ? "waived" : "severity-" + severity.code();
    String letter = Words.of(waived ? "sign.waived" : "severity.letter." + severity.code());
    return switch (severity) {
      case MUST -> new Badge(octagon(), letter, style, false);
      case SHOULD ->
          new Badge(
              new Polygon(0, -RADIUS, RADIUS + 1, RADIUS - 2, -RADIUS - 1, RADIUS - 2),
              letter,
              style,
              true);
      case CONSIDER -> new Badge(new Circle(RADIUS - 0.5), letter, style, false);
    };
  }

  /** The sign of what could not be judged. */
  static Badge question() {
    double half = RADIUS - 1;
    Polygon square = new Polygon(-half, -half, half, -half, half, half, -half, half);
    return new Badge(square, Words.of("sign.question"), "question", false);
  }

  private static Polygon octagon() {
    Polygon p = new Polygon();
    for (int i = 0; i < 8; i++) {
      double a = Math.PI / 8 + i * Math.PI / 4;
      p.getPoints().addAll(RADIUS * Math.cos(a), RADIUS * Math.sin(a));
    }
    return p;
  }
}
