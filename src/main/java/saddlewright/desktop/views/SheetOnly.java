package saddlewright.desktop.views;

import java.util.Optional;
import java.util.function.Consumer;
import javafx.animation.PauseTransition;
import javafx.beans.InvalidationListener;
import javafx.beans.property.SimpleObjectProperty;
import javafx.geometry.Rectangle2D;
import javafx.scene.Cursor;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyCombination;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import javafx.stage.Screen;
import javafx.stage.Stage;
import javafx.stage.StageStyle;
import javafx.util.Duration;
import saddlewright.desktop.Step;
import saddlewright.desktop.Words;
import saddlewright.desktop.Worktable;
import saddlewright.desktop.sheet.SheetPane;
import saddlewright.desktop.tools.ToolBox;
import saddlewright.prescription.growth.GrowthStage;

/**
 * The page alone on the whole screen, for projecting: with the caption of the stage that is shown,
 * and keys to go through the stages. The window behind it keeps its own view.
 */
public final class SheetOnly {
  private static final Duration POINTER_RESTS = Duration.seconds(2);
  private static final double ZOOM = 1.25;

  /** The share of the screen that the caption takes, beside the page or below it. */
  private static final double CAPTION = 0.36;

  private final Worktable table;
  private final Stages stages;
  private final Stage stage = new Stage(StageStyle.UNDECORATED);
  private final SheetPane sheet;
  private final Label title = new Label();
  private final CaptionLines lines = new CaptionLines();
  private final VBox caption;
  private final BorderPane page = new BorderPane();
  private final StackPane root = new StackPane();
  private final PauseTransition pointer = new PauseTransition(POINTER_RESTS);

  /**
   * @param look gives a window the look of the desk
   */
  public SheetOnly(Worktable table, Stages stages, Stage editor, Consumer<Parent> look) {
    this.table = table;
    this.stages = stages;
    sheet = new SheetPane(table, new ToolBox(new SimpleObjectProperty<>(Step.REVIEW)));
    sheet.setId("sheet-only");
    sheet.setLive(false);
    title.getStyleClass().add("projected-title");
    title.setWrapText(true);
    title.setMinHeight(VBox.USE_PREF_SIZE);
    ScrollPane scroll = new ScrollPane(lines);
    scroll.setFitToWidth(true);
    scroll.setFocusTraversable(false);
    scroll.getStyleClass().add("projected-lines");
    caption = new VBox(8, title, scroll);
    caption.setId("projected-caption");
    caption.getStyleClass().add("projected-caption");
    VBox.setVgrow(scroll, Priority.ALWAYS);
    page.setCenter(sheet);
    sheet.setMinSize(0, 0);
    root.getChildren().add(page);
    root.widthProperty().addListener(o -> arrange());
    root.heightProperty().addListener(o -> arrange());
    look.accept(root);
    root.getStyleClass().add("projected");
    Scene scene = new Scene(root);
    scene.getStylesheets().setAll(editor.getScene().getStylesheets());
    scene.addEventFilter(KeyEvent.KEY_PRESSED, this::typed);
    scene.addEventFilter(MouseEvent.ANY, e -> moved(e));
    pointer.setOnFinished(e -> scene.setCursor(Cursor.NONE));
    stage.setScene(scene);
    stage.initOwner(editor);
    stage.setTitle(Words.of("project.title"));
    stage.setFullScreenExitHint("");
    stage.setFullScreenExitKeyCombination(KeyCombination.NO_MATCH);
    stage.setOnHidden(
        e -> {
          sheet.setLive(false);
          pointer.stop();
        });
    InvalidationListener update = o -> update();
    table.stageProperty().addListener(update);
    table.assessmentProperty().addListener(update);
    table.notationProperty().addListener(update);
    table.shownProperty().addListener(update);
    table
        .openProperty()
        .addListener(
            (o, was, open) -> {
              if (!open) {
                hide();
              }
            });
  }

  public boolean isShowing() {
    return stage.isShowing();
  }

  /** The scene, for whoever presses keys in it. */
  public Scene scene() {
    return stage.getScene();
  }

  /** Shows the page on the screen on which the editor stands. */
  public void show() {
    if (!table.openProperty().get() || stage.isShowing()) {
      return;
    }
    Stage editor = (Stage) stage.getOwner();
    Rectangle2D screen =
        Screen.getScreensForRectangle(
                editor.getX() + editor.getWidth() / 2, editor.getY() + editor.getHeight() / 2, 1, 1)
            .stream()
            .findFirst()
            .orElse(Screen.getPrimary())
            .getBounds();
    stage.setX(screen.getMinX());
    stage.setY(screen.getMinY());
    stage.setWidth(screen.getWidth());
    stage.setHeight(screen.getHeight());
    sheet.setLive(true);
    stage.show();
    stage.setFullScreen(true);
    update();
    sheet.fit();
    sheet.requestFocus();
    pointer.playFromStart();
  }

  public void hide() {
    // Some platforms give what was hidden while it filled the screen to the window behind it.
    stage.setFullScreen(false);
    stage.hide();
  }

  /** The caption stands beside the page on a wide screen, below it on a high one. */
  private void arrange() {
    boolean wide = root.getWidth() > root.getHeight();
    if (caption.getParent() == null || wide != (page.getRight() == caption)) {
      page.setRight(null);
      page.setBottom(null);
      if (wide) {
        page.setRight(caption);
      } else {
        page.setBottom(caption);
      }
    }
    caption.setPrefWidth(wide ? CAPTION * root.getWidth() : VBox.USE_COMPUTED_SIZE);
    caption.setPrefHeight(wide ? VBox.USE_COMPUTED_SIZE : CAPTION * root.getHeight());
  }

  private void moved(MouseEvent e) {
    if (e.getEventType() == MouseEvent.MOUSE_MOVED
        || e.getEventType() == MouseEvent.MOUSE_PRESSED) {
      stage.getScene().setCursor(null);
      pointer.playFromStart();
    }
  }

  private void typed(KeyEvent e) {
    if (e.isShortcutDown() && isBracket(e)) {
      step(e.getCode() == KeyCode.CLOSE_BRACKET);
    } else if (e.isShortcutDown() || e.isAltDown()) {
      return;
    } else {
      switch (e.getCode()) {
        case ESCAPE, F11 -> hide();
        case RIGHT, DOWN, PAGE_DOWN, SPACE, ENTER -> step(true);
        case LEFT, UP, PAGE_UP, BACK_SPACE -> step(false);
        case HOME -> stages.show(GrowthStage.CHART);
        case END -> stages.show(GrowthStage.COMPLETE);
        case F -> table.markersProperty().set(!table.markersProperty().get());
        case W -> stages.leave();
        case DIGIT0, NUMPAD0 -> sheet.fit();
        case PLUS, EQUALS, ADD -> sheet.zoom(ZOOM);
        case MINUS, SUBTRACT -> sheet.zoom(1 / ZOOM);
        default -> {
          return;
        }
      }
    }
    e.consume();
  }

  private static boolean isBracket(KeyEvent e) {
    return e.getCode() == KeyCode.OPEN_BRACKET || e.getCode() == KeyCode.CLOSE_BRACKET;
  }

  private void step(boolean onwards) {
    if (onwards) {
      stages.onwards();
    } else {
      stages.back();
    }
  }

  private void update() {
    if (!stage.isShowing()) {
      return;
    }
    Optional<GrowthStage> now = table.stageProperty().get();
    caption.setVisible(now.isPresent());
    caption.setManaged(now.isPresent());
    now.ifPresent(
        s ->
            title.setText(
                Words.of("steps.title", s.ordinal() + 1, GrowthStage.values().length, s.title())));
    stages.caption().ifPresent(c -> lines.show(c, table.notationProperty().get()));
  }
}
