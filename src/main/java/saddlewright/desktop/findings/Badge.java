package saddlewright.desktop.findings;

import javafx.scene.Group;
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

  /** The size of letter for which it is drawn, pixels, and how far a low one is let down. */
  private static final double LETTER = 12;

  private static final double LOW = 3;

  private Badge(Shape shape, String letter, String style, boolean low) {
    getStyleClass().addAll("sign", style);
    shape.getStyleClass().add("sign-shape");
    Label words = new Label(letter);
    words.getStyleClass().add("sign-letter");
    // A shape that is scaled keeps its place; in a group of its own it takes the room it fills.
    getChildren().addAll(new Group(shape), words);
    setMaxSize(USE_PREF_SIZE, USE_PREF_SIZE);
    grow(shape, words, low);
    words.fontProperty().addListener(o -> grow(shape, words, low));
  }

  /** As large as its letter asks. */
  private void grow(Shape shape, Label words, boolean low) {
    double share = Math.max(1, Math.round(words.getFont().getSize()) / LETTER);
    shape.setScaleX(share);
    shape.setScaleY(share);
    words.setTranslateY(low ? LOW * share : 0);
    double side = share * (2 * RADIUS + 2);
    setMinSize(side, side);
    setPrefSize(side, side);
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
