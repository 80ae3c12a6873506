package saddlewright.desktop.preview;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyIntegerProperty;
import javafx.beans.property.ReadOnlyIntegerWrapper;
import javafx.beans.property.SimpleObjectProperty;
import javafx.geometry.Bounds;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.ScrollPane;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.ScrollEvent;
import javafx.scene.layout.VBox;

/** The pages below each other, as they are scrolled through. */
final class PageStack extends ScrollPane {
  private static final double GAP = 14;
  private static final double STEP = 1.2;

  /** How far keys scroll, in pixels. */
  private static final double ARROW = 48;

  private final VBox column = new VBox(GAP);
  private final List<PageView> pages = new ArrayList<>();
  private final ReadOnlyIntegerWrapper current = new ReadOnlyIntegerWrapper(0);
  private final ObjectProperty<Zoom> zoom = new SimpleObjectProperty<>(Zoom.PAGE);
  private final ScreenScale screen;
  private Optional<Integer> heading = Optional.empty();

  PageStack(ScreenScale screen) {
    this.screen = screen;
    setId("pages");
    getStyleClass().add("pages-desk");
    column.setAlignment(Pos.TOP_CENTER);
    column.getStyleClass().add("pages-column");
    setContent(column);
    setFitToWidth(true);
    setPannable(true);
    setFocusTraversable(false);
    viewportBoundsProperty().addListener(o -> rescale());
    vvalueProperty().addListener(o -> lookAt());
    column.heightProperty().addListener(o -> settle());
    zoom.addListener(o -> rescale());
    screen.addListener(this::rescale);
    addEventFilter(ScrollEvent.SCROLL, this::wheel);
    addEventFilter(KeyEvent.KEY_PRESSED, this::key);
  }

  /** The page that is looked at, from 0. */
  ReadOnlyIntegerProperty currentProperty() {
    return current.getReadOnlyProperty();
  }

  ObjectProperty<Zoom> zoomProperty() {
    return zoom;
  }

  /** Pixels a millimetre at which the page looked at is shown. */
  double scale() {
    return pages.isEmpty() ? screen.pixelsPerMm() : scale(pages.get(current.get()));
  }

  void zoomBy(boolean larger) {
    double share = scale() / screen.pixelsPerMm();
    zoom.set(Zoom.of(larger ? share * STEP : share / STEP));
  }

  /** Shows another document, at the place that was looked at in the one before. */
  void take(Document document) {
    while (pages.size() > document.count()) {
      pages.remove(pages.size() - 1).disappear();
    }
    while (pages.size() < document.count()) {
      pages.add(new PageView(pages.size(), document.sizes().get(pages.size())));
    }
    pages.forEach(p -> p.take(document));
    column.getChildren().setAll(pages);
    current.set(Math.min(current.get(), pages.size() - 1));
    rescale();
  }

  /** Goes to a page, from 0, and puts the keyboard there. */
  void goTo(int page) {
    if (pages.isEmpty()) {
      return;
    }
    int to = Math.max(0, Math.min(pages.size() - 1, page));
    current.set(to);
    heading = Optional.of(to);
    settle();
    pages.get(to).requestFocus();
  }

  List<PageView> pages() {
    return pages;
  }

  private double scale(PageView p) {
    Bounds room = getViewportBounds();
    double margins = column.getInsets().getLeft() + column.getInsets().getRight();
    return zoom.get()
        .scale(
            p.size(),
            Math.max(60, room.getWidth() - margins),
            Math.max(60, room.getHeight() - 2 * GAP),
            screen.pixelsPerMm());
  }

  /** Sizes the pages anew; what is in view stays in view. */
  private void rescale() {
    if (pages.isEmpty() || getViewportBounds().getHeight() < 1) {
      return;
    }
    heading = heading.or(() -> Optional.of(current.get()));
    double share = share();
    pages.forEach(p -> p.setScale(scale(p)));
    setFitToWidth(pages.stream().allMatch(p -> p.getPrefWidth() <= getViewportBounds().getWidth()));
    keep = share;
    layout();
    settle();
  }

  private double keep;

  /** How far down the page looked at the window begins, as a share of its height. */
  private double share() {
    PageView p = pages.get(current.get());
    double height = p.getLayoutBounds().getHeight();
    return height < 1 ? 0 : Math.max(0, Math.min(1, (offset() - p.getLayoutY()) / height));
  }

  private double offset() {
    return getVvalue() * Math.max(0, column.getHeight() - getViewportBounds().getHeight());
  }

  /** Goes where one was heading, now that the pages have their places. */
  private void settle() {
    heading.ifPresent(
        to -> {
          PageView p = pages.get(Math.min(to, pages.size() - 1));
          double y = p.getLayoutY() + keep * p.getPrefHeight() - (keep > 0 ? 0 : GAP);
          scrollTo(y);
        });
    heading = Optional.empty();
    keep = 0;
    lookAt();
  }

  private void scrollTo(double y) {
    double room = column.getHeight() - getViewportBounds().getHeight();
    setVvalue(room <= 0 ? 0 : Math.max(0, Math.min(1, y / room)));
  }

  /** Has the pages in view drawn, and says which of them is looked at. */
  private void lookAt() {
    double top = offset();
    double height = getViewportBounds().getHeight();
    double line = top + height / 3;
    double output =
        getScene() == null || getScene().getWindow() == null
            ? 1
            : getScene().getWindow().getOutputScaleX();
    for (int i = 0; i < pages.size(); i++) {
      PageView p = pages.get(i);
      double from = p.getLayoutY();
      double to = from + p.getPrefHeight();
      if (to >= top - height / 2 && from <= top + height * 1.5) {
        p.appear(output);
      } else if (to < top - 2 * height || from > top + 3 * height) {
        p.disappear();
      }
      if (heading.isEmpty() && from <= line && to + GAP > line) {
        current.set(i);
      }
    }
  }

  private void wheel(ScrollEvent e) {
    if (e.isShortcutDown() && e.getDeltaY() != 0) {
      zoomBy(e.getDeltaY() > 0);
      e.consume();
    }
  }

  private void key(KeyEvent e) {
    if (e.isShortcutDown() || e.isAltDown()) {
      return;
    }
    switch (e.getCode()) {
      case PAGE_DOWN -> goTo(current.get() + 1);
      case PAGE_UP -> goTo(current.get() - 1);
      case HOME -> goTo(0);
      case END -> goTo(pages.size() - 1);
      case DOWN -> scrollTo(offset() + ARROW);
      case UP -> scrollTo(offset() - ARROW);
      case SPACE ->
          scrollTo(offset() + (e.isShiftDown() ? -1 : 1) * 0.9 * getViewportBounds().getHeight());
      default -> {
        return;
      }
    }
    e.consume();
  }

  /** The page that holds the keyboard, to hand it back after a dialogue. */
  Node focusTarget() {
    return pages.isEmpty() ? this : pages.get(current.get());
  }
}
