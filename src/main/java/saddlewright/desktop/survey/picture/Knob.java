package saddlewright.desktop.survey.picture;

import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import javafx.geometry.Point2D;
import javafx.scene.AccessibleRole;
import javafx.scene.Group;
import javafx.scene.Node;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;
import javafx.scene.input.ScrollEvent;
import saddlewright.chart.ArchChart;
import saddlewright.dentition.Tooth;
import saddlewright.desktop.Words;
import saddlewright.desktop.history.Gesture;
import saddlewright.geometry.Point;

/** Something in a picture that is clicked, dragged, turned by the wheel or moved with the keys. */
public final class Knob extends Group {
  /** Smallest width and height of what can be grabbed, pixels. */
  public static final double TARGET = 26;

  private static final double CLICK = 4;

  /** Steps that follow each other within this are one edit, milliseconds. */
  private static final long ONE_GESTURE = 1000;

  /** Knows when a number is to be written, with what was typed already. */
  public interface Writing {
    void write(Knob from, Optional<String> typed);
  }

  private final Surveyed card;
  private final Touch touch;
  private final Optional<Tooth> own;
  private final Function<Point2D, Point> toPicture;
  private final Writing writing;
  private ArchChart before;
  private Point from = Point.ORIGIN;
  private double downX;
  private double downY;
  private boolean held;
  private boolean dragging;
  private Gesture stepping = new Gesture();
  private long steppedAt = Long.MIN_VALUE;

  /**
   * A knob.
   *
   * @param toPicture from a place of the window to millimetres of the picture, y up
   */
  public Knob(Surveyed card, Touch touch, Function<Point2D, Point> toPicture, Writing writing) {
    this(card, touch, Optional.empty(), toPicture, writing);
  }

  /** A knob of one tooth, whichever is shown. */
  public Knob(
      Surveyed card, Touch touch, Tooth own, Function<Point2D, Point> toPicture, Writing writing) {
    this(card, touch, Optional.of(own), toPicture, writing);
    setId(getId() + "-" + own);
  }

  private Knob(
      Surveyed card,
      Touch touch,
      Optional<Tooth> own,
      Function<Point2D, Point> toPicture,
      Writing writing) {
    this.own = own;
    this.card = card;
    this.touch = touch;
    this.toPicture = toPicture;
    this.writing = writing;
    this.before = card.chart();
    setId("knob-" + touch.id());
    getStyleClass().add("knob");
    setFocusTraversable(true);
    setAccessibleRole(AccessibleRole.SLIDER);
    addEventHandler(MouseEvent.MOUSE_PRESSED, this::pressed);
    addEventHandler(MouseEvent.MOUSE_DRAGGED, this::dragged);
    addEventHandler(MouseEvent.MOUSE_RELEASED, this::released);
    addEventHandler(ScrollEvent.SCROLL, this::scrolled);
    addEventHandler(KeyEvent.KEY_PRESSED, this::typed);
    addEventHandler(KeyEvent.KEY_TYPED, this::written);
  }

  /** The tooth whose item it sets. */
  public Tooth tooth() {
    return own.orElseGet(card::tooth);
  }

  public Touch touch() {
    return touch;
  }

  /** Has it told when it is looked at. */
  public Knob onLook(Consumer<Knob> look) {
    focusedProperty()
        .addListener(
            (o, was, is) -> {
              if (is) {
                look.accept(this);
              }
            });
    addEventHandler(MouseEvent.MOUSE_ENTERED, e -> look.accept(this));
    return this;
  }

  /** Shows itself so; keeps its focus. */
  public void show(Node... nodes) {
    getChildren().setAll(nodes);
    setAccessibleText(
        Words.of(
            "card.knob", Words.capital(touch.name(tooth())), touch.words(card.chart(), tooth())));
  }

  public boolean isDragging() {
    return dragging;
  }

  private Point at(MouseEvent e) {
    return toPicture.apply(new Point2D(e.getSceneX(), e.getSceneY()));
  }

  private void pressed(MouseEvent e) {
    if (e.getButton() != MouseButton.PRIMARY) {
      return;
    }
    requestFocus();
    before = card.chart();
    from = at(e);
    downX = e.getSceneX();
    downY = e.getSceneY();
    held = true;
    dragging = false;
    e.consume();
  }

  private void dragged(MouseEvent e) {
    if (!held) {
      return;
    }
    if (!dragging && Math.hypot(e.getSceneX() - downX, e.getSceneY() - downY) <= CLICK) {
      return;
    }
    dragging = true;
    boolean fine = e.isShiftDown() || e.isControlDown() || e.isAltDown();
    card.preview(touch.drag(before, tooth(), from, at(e), fine));
    e.consume();
  }

  private void released(MouseEvent e) {
    if (!held || e.getButton() != MouseButton.PRIMARY) {
      return;
    }
    held = false;
    e.consume();
    if (dragging) {
      dragging = false;
      card.commit(touch, tooth(), card.chart(), new Gesture());
    } else {
      click();
    }
  }

  private void click() {
    touch
        .click(card.chart(), tooth())
        .ifPresent(next -> card.commit(touch, tooth(), next, new Gesture()));
  }

  private void scrolled(ScrollEvent e) {
    // With Shift the wheel arrives as turned sideways.
    double turned = e.getDeltaY() != 0 ? e.getDeltaY() : e.getDeltaX();
    if (isFocused() && turned != 0 && !e.isControlDown() && !e.isInertia()) {
      int way = turned > 0 ? 1 : -1;
      step(way, way, e.isShiftDown());
      e.consume();
    }
  }

  private void step(int right, int up, boolean fine) {
    long now = System.currentTimeMillis();
    if (now - steppedAt > ONE_GESTURE) {
      stepping = new Gesture();
    }
    steppedAt = now;
    card.commit(touch, tooth(), touch.step(card.chart(), tooth(), right, up, fine), stepping);
  }

  private void typed(KeyEvent e) {
    if (e.isShortcutDown() || e.isAltDown()) {
      return;
    }
    KeyCode code = e.getCode();
    boolean fine = e.isShiftDown();
    if (held) {
      if (code == KeyCode.ESCAPE) {
        held = false;
        dragging = false;
        card.cancel();
      }
      e.consume();
      return;
    }
    switch (code) {
      case LEFT, KP_LEFT -> step(-1, 0, fine);
      case RIGHT, KP_RIGHT -> step(1, 0, fine);
      case UP, KP_UP -> step(0, 1, fine);
      case DOWN, KP_DOWN -> step(0, -1, fine);
      case SPACE -> click();
      case ENTER, F2 -> writing.write(this, Optional.empty());
      case DELETE, BACK_SPACE ->
          card.commit(touch, tooth(), touch.clear(card.chart(), tooth()), new Gesture());
      default -> {
        return;
      }
    }
    e.consume();
  }

  /** A figure that is typed begins the number anew. */
  private void written(KeyEvent e) {
    String c = e.getCharacter();
    if (!e.isControlDown() && !e.isMetaDown() && !e.isAltDown() && c.matches("[0-9.,]")) {
      writing.write(this, Optional.of(c));
      e.consume();
    }
  }
}
