package saddlewright.desktop.survey.picture;

import java.util.ArrayList;
import java.util.List;
import javafx.beans.InvalidationListener;
import javafx.beans.WeakInvalidationListener;
import javafx.beans.binding.DoubleBinding;
import javafx.geometry.HPos;
import javafx.geometry.Point2D;
import javafx.geometry.VPos;
import javafx.scene.AccessibleRole;
import javafx.scene.Group;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.Pane;
import javafx.scene.shape.Circle;
import javafx.scene.shape.ClosePath;
import javafx.scene.shape.LineTo;
import javafx.scene.shape.MoveTo;
import javafx.scene.shape.Path;
import javafx.scene.shape.Rectangle;
import saddlewright.geometry.Point;

/** A schematic drawing in millimetres, with knobs on it; drawn anew whenever the chart changes. */
public abstract class Picture extends Pane {
  /** A word that is put where it belongs once its size is known. */
  private record Word(Label label, double x, double y, HPos across, VPos down) {}

  private final Surveyed card;
  // Held here alone, so that a picture that is shown no more is forgotten.
  private final InvalidationListener onChart = o -> redraw();
  private final Group ink = new Group();
  private final Group knobs = new Group();
  private final Group words = new Group();
  private final List<Word> unplaced = new ArrayList<>();
  private double scale = 10;
  private double midX;
  private double midY;

  protected Picture(Surveyed card, String id, String name) {
    this.card = card;
    setId(id);
    getStyleClass().add("tooth-picture");
    setAccessibleRole(AccessibleRole.IMAGE_VIEW);
    setAccessibleText(name);
    for (Group g : List.of(ink, words, knobs)) {
      g.setManaged(false);
    }
    ink.setMouseTransparent(true);
    words.setMouseTransparent(true);
    getChildren().addAll(ink, knobs, words);
    Rectangle clip = new Rectangle();
    clip.widthProperty().bind(widthProperty());
    clip.heightProperty().bind(heightProperty());
    setClip(clip);
    widthProperty().addListener(o -> redraw());
    heightProperty().addListener(o -> redraw());
    card.chartProperty().addListener(new WeakInvalidationListener(onChart));
  }

  protected Surveyed card() {
    return card;
  }

  /**
   * Asks for so much room at the usual size of text, in pixels. With larger text it grows, but less
   * than the text, so that it stays in sight as a whole.
   */
  protected void ask(double width, double height) {
    DoubleBinding grown = card.table().textSizeProperty().multiply(0.45).add(0.55);
    prefWidthProperty().bind(grown.multiply(width));
    prefHeightProperty().bind(grown.multiply(height));
    minWidthProperty().bind(prefWidthProperty());
    minHeightProperty().bind(prefHeightProperty());
  }

  /** Draws it anew, if it is in a window. */
  public final void redraw() {
    if (getWidth() <= 0 || getHeight() <= 0 || getScene() == null) {
      return;
    }
    ink.getChildren().clear();
    words.getChildren().clear();
    unplaced.clear();
    draw();
    for (Word w : unplaced) {
      w.label().applyCss();
      double width = w.label().prefWidth(-1);
      double height = w.label().prefHeight(width);
      w.label().resize(width, height);
      double left =
          switch (w.across()) {
            case LEFT -> w.x();
            case CENTER -> w.x() - width / 2;
            case RIGHT -> w.x() - width;
          };
      double top =
          switch (w.down()) {
            case TOP -> w.y();
            case BOTTOM -> w.y() - height;
            default -> w.y() - height / 2;
          };
      // No word is cut off by the edge.
      w.label()
          .relocate(
              Math.max(3, Math.min(getWidth() - width - 3, left)),
              Math.max(2, Math.min(getHeight() - height - 2, top)));
    }
  }

  protected abstract void draw();

  /** Sets how large a millimetre is, and where the origin lies in pixels. */
  protected void frame(double pixelsPerMm, double originX, double originY) {
    scale = pixelsPerMm;
    midX = originX;
    midY = originY;
  }

  protected double scale() {
    return scale;
  }

  /** The place in pixels of millimetres, y up. */
  protected Point2D at(double x, double y) {
    return new Point2D(midX + x * scale, midY - y * scale);
  }

  /** From a place of the window to millimetres, y up. */
  protected Point toPicture(Point2D scene) {
    Point2D p = sceneToLocal(scene);
    return new Point((p.getX() - midX) / scale, (midY - p.getY()) / scale);
  }

  protected void add(Node node, String... styles) {
    node.getStyleClass().addAll(styles);
    ink.getChildren().add(node);
  }

  protected void addKnob(Knob knob) {
    knobs.getChildren().add(knob);
  }

  protected Label word(String text, Point2D at, HPos across, VPos down, String... styles) {
    Label l = new Label(text);
    l.getStyleClass().addAll(styles);
    words.getChildren().add(l);
    unplaced.add(new Word(l, at.getX(), at.getY(), across, down));
    return l;
  }

  protected static Path line(List<Point2D> points, boolean closed) {
    Path path = new Path();
    for (int i = 0; i < points.size(); i++) {
      Point2D p = points.get(i);
      path.getElements()
          .add(i == 0 ? new MoveTo(p.getX(), p.getY()) : new LineTo(p.getX(), p.getY()));
    }
    if (closed) {
      path.getElements().add(new ClosePath());
    }
    return path;
  }

  /** A round handle with room around it to be grabbed. */
  public static Node[] handle(Point2D at) {
    Circle room = new Circle(at.getX(), at.getY(), Knob.TARGET / 2);
    room.getStyleClass().add("knob-room");
    Circle shape = new Circle(at.getX(), at.getY(), 6.5);
    shape.getStyleClass().add("knob-shape");
    return new Node[] {room, shape};
  }
}
