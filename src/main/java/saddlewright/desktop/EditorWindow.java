package saddlewright.desktop;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Properties;
import javafx.animation.PauseTransition;
import javafx.application.Platform;
import javafx.beans.InvalidationListener;
import javafx.beans.binding.BooleanBinding;
import javafx.geometry.Orientation;
import javafx.scene.Scene;
import javafx.scene.control.SplitPane;
import javafx.scene.input.DragEvent;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.TransferMode;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import javafx.stage.Stage;
import javafx.util.Duration;
import saddlewright.archform.ArchForm;
import saddlewright.desktop.actions.ActionFinder;
import saddlewright.desktop.actions.Actions;
import saddlewright.desktop.actions.MoreKeys;
import saddlewright.desktop.actions.ShortcutPage;
import saddlewright.desktop.findings.FindingsPane;
import saddlewright.desktop.history.HistoryPane;
import saddlewright.desktop.panels.OrderOfWork;
import saddlewright.desktop.panels.StatusStrip;
import saddlewright.desktop.panels.SubjectPane;
import saddlewright.desktop.panels.ToolStrip;
import saddlewright.desktop.panels.ViewChoice;
import saddlewright.desktop.preferences.MyDetails;
import saddlewright.desktop.preferences.Preferences;
import saddlewright.desktop.preferences.PreferencesPane;
import saddlewright.desktop.prescription.CompletenessPane;
import saddlewright.desktop.prescription.GapTrail;
import saddlewright.desktop.prescription.PrescriptionPane;
import saddlewright.desktop.preview.ScreenScale;
import saddlewright.desktop.sheet.SheetPane;
import saddlewright.desktop.tools.ToolBox;
import saddlewright.layout.Layout;

/** The window of the editor, put together. */
public final class EditorWindow {
  private static final double WIDTH = 1440;
  private static final double HEIGHT = 900;
  private static final double WIDEST_BESIDE = 0.4;

  private final Worktable table;
  private final ToolBox tools;
  private final Remembered remembered;
  private final CaseFiles files;
  private final PrescriptionFiles prescriptions;
  private final Printing printing;
  private final MyDetails mine;
  private final GapTrail gaps;
  private final SheetPane sheet;
  private Optional<FindingsPane> findings = Optional.empty();
  private Optional<SchoolWindow> school = Optional.empty();
  private Optional<PreviewWindow> preview = Optional.empty();
  private final SplitPane right = new SplitPane();
  private final BorderPane root = new BorderPane();
  private final Menus menus;
  private Optional<ActionFinder> finder = Optional.empty();
  private Optional<SideWindow> shortcuts = Optional.empty();
  private Optional<SideWindow> history = Optional.empty();
  private Optional<SideWindow> preferences = Optional.empty();
  private final Stage stage;

  /**
   * Fills the stage and shows it.
   *
   * @param settings folder for preferences, recent files and the size of the window
   */
  public EditorWindow(Stage stage, Path settings) {
    this(stage, settings, Preferences.in(settings));
  }

  /** As above, with the preferences that all windows share. */
  public EditorWindow(Stage stage, Path settings, Preferences preferences) {
    this.stage = stage;
    this.table = new Worktable(preferences);
    this.tools = new ToolBox(table.stepProperty());
    this.gaps = new GapTrail(table);
    this.sheet = new SheetPane(table, tools);
    this.remembered = new Remembered(settings);
    this.mine = preferences.mine().orElseGet(() -> new MyDetails(settings));
    this.files = new CaseFiles(table, remembered);
    this.printing = new Printing(remembered);
    this.prescriptions = new PrescriptionFiles(table, files);
    files.setWindow(stage);
    DeskLook.wear(root, table);
    menus =
        new Menus(
            table,
            tools,
            files,
            prescriptions,
            remembered,
            sheet,
            this::quit,
            this::step,
            gaps,
            new HelpPages(stage),
            beside());
    root.setTop(menus);
    WelcomePage welcome = new WelcomePage(files, remembered);
    welcome.visibleProperty().bind(table.openProperty().not());
    StackPane middle = new StackPane(welcome);
    table.openProperty().addListener(o -> putWorkInto(middle));
    VBox body = new VBox(new NoticeBar(table), middle);
    VBox.setVgrow(middle, Priority.ALWAYS);
    root.setCenter(body);
    table
        .findingProperty()
        .addListener(
            o ->
                table
                    .findingProperty()
                    .get()
                    .ifPresent(k -> sheet.reveal(table.selectionProperty().get())));
    Properties size = remembered.window();
    Scene scene = new Scene(root, number(size, "width", WIDTH), number(size, "height", HEIGHT));
    scene
        .getStylesheets()
        .add(EditorWindow.class.getResource("/saddlewright/desktop/desk.css").toExternalForm());
    scene.addEventFilter(KeyEvent.KEY_TYPED, EditorWindow::dropControlCharacters);
    scene.addEventHandler(KeyEvent.KEY_PRESSED, this::escape);
    MoreKeys.install(scene, Actions.items(menus));
    scene.setOnDragOver(EditorWindow::mayDrop);
    scene.setOnDragDropped(this::dropped);
    stage.setScene(scene);
    table.schoolShownProperty().addListener((o, was, shown) -> showSchool(shown));
    table.pagesShownProperty().addListener((o, was, shown) -> showPages(shown));
    stage.setMinWidth(960);
    stage.setMinHeight(600);
    stage.setMaximized(Boolean.parseBoolean(size.getProperty("maximised")));
    stage
        .titleProperty()
        .bind(
            javafx.beans.binding.Bindings.createStringBinding(
                this::title,
                table.currentProperty(),
                table.openProperty(),
                table.unsavedProperty(),
                table.fileProperty()));
    stage.setOnCloseRequest(
        e -> {
          e.consume();
          quit();
        });
    followScreen();
    stage.show();
    table.noticeProperty().set(preferences.troubleProperty().get());
    // The first frame is not kept waiting by what is not yet seen, not even on another processor:
    // the demo cases are read after it, and the panels are built while the welcome page is read,
    // so that neither is the first case kept waiting by its panels.
    after(
        Duration.millis(50),
        () -> {
          welcome.fill();
          stage.getIcons().setAll(Icons.all());
        });
    after(Duration.millis(300), () -> putWorkInto(middle));
    table
        .openProperty()
        .addListener(
            (o, was, open) -> {
              if (open) {
                sheet.requestFocus();
              }
            });
  }

  /** True size on the sheet is that of the screen that the window stands on, as last measured. */
  private void followScreen() {
    ScreenScale screen = new ScreenScale(printing);
    InvalidationListener read =
        o -> {
          screen.read(stage);
          sheet.camera().trueScaleProperty().set(screen.pixelsPerMm());
        };
    stage.xProperty().addListener(read);
    stage.yProperty().addListener(read);
    stage.focusedProperty().addListener(read);
    stage.showingProperty().addListener(read);
  }

  private static void after(Duration delay, Runnable action) {
    PauseTransition pause = new PauseTransition(delay);
    pause.setOnFinished(e -> action.run());
    pause.play();
  }

  /** Puts the panels behind the welcome page, once. */
  private void putWorkInto(StackPane middle) {
    if (middle.getChildren().size() == 1) {
      BorderPane work = work();
      work.visibleProperty().bind(table.openProperty());
      middle.getChildren().add(0, work);
    }
  }

  private BorderPane work() {
    BooleanBinding prescribing = table.stepProperty().isEqualTo(Step.PRESCRIPTION);
    PrescriptionPane prescription =
        new PrescriptionPane(
            table,
            mine,
            gaps,
            new PrescriptionPane.Actions() {
              @Override
              public void preview() {
                table.pagesShownProperty().set(true);
              }

              @Override
              public void save() {
                prescriptions.save(stage);
              }

              @Override
              public void issue() {
                prescriptions.issue(stage, () -> {});
              }
            });
    prescription.visibleProperty().bind(prescribing);
    VBox drawing = new VBox(new ToolStrip(table, tools, new ViewChoice(table, sheet)), sheet);
    VBox.setVgrow(sheet, Priority.ALWAYS);
    drawing.visibleProperty().bind(prescribing.not());
    StackPane middle = new StackPane(drawing, prescription);
    right.setOrientation(Orientation.VERTICAL);
    FindingsPane pane = new FindingsPane(table);
    findings = Optional.of(pane);
    right.getItems().addAll(new SubjectPane(table), pane);
    right.setDividerPositions(0.5);
    table
        .stepProperty()
        .addListener(
            (o, old, step) -> {
              // The review is read; it gets the room.
              right.setDividerPositions(step == Step.REVIEW ? 0.28 : 0.5);
            });
    right.visibleProperty().bind(prescribing.not());
    CompletenessPane missing = new CompletenessPane(table, gaps);
    missing.visibleProperty().bind(prescribing);
    StackPane beside = new StackPane(right, missing);
    SplitPane across = new SplitPane(middle, beside);
    across.setDividerPositions(0.68);
    SplitPane.setResizableWithParent(beside, false);
    beside.setMinWidth(280);
    middle.setMinWidth(320);
    across
        .widthProperty()
        .addListener(
            // In a window made narrower the middle must not be what gives way alone. Only when the
            // panes have been laid out anew can they be laid out otherwise.
            o ->
                Platform.runLater(
                    () -> {
                      if (beside.getWidth() > WIDEST_BESIDE * across.getWidth()) {
                        across.setDividerPositions(1 - WIDEST_BESIDE);
                      }
                    }));
    BorderPane work = new BorderPane(across);
    work.setLeft(new OrderOfWork(table));
    work.setBottom(new StatusStrip(table, sheet.camera()));
    return work;
  }

  /** Opens the next finding, or the one before. */
  private void step(boolean onwards) {
    findings.ifPresent(
        f -> {
          if (onwards) {
            f.next();
          } else {
            f.previous();
          }
        });
  }

  private void showSchool(boolean shown) {
    if (shown) {
      if (school.isEmpty()) {
        school = Optional.of(new SchoolWindow(table, stage));
      }
      school.get().show();
    } else {
      school.ifPresent(SchoolWindow::hide);
    }
  }

  private void showPages(boolean shown) {
    if (shown) {
      if (preview.isEmpty()) {
        preview = Optional.of(new PreviewWindow(table, files, prescriptions, printing, stage));
      }
      preview.get().show();
    } else {
      preview.ifPresent(PreviewWindow::hide);
    }
  }

  Menus.Beside beside() {
    return new Menus.Beside() {
      @Override
      public void findAction() {
        if (finder.isEmpty()) {
          finder = Optional.of(new ActionFinder(() -> Actions.of(menus)));
        }
        finder.get().show(stage);
      }

      @Override
      public void shortcuts() {
        if (shortcuts.isEmpty()) {
          shortcuts =
              Optional.of(
                  new SideWindow(
                      table,
                      stage,
                      Words.of("shortcuts.title"),
                      new ShortcutPage(Actions.of(menus)),
                      620,
                      760));
        }
        shortcuts.get().show();
      }

      @Override
      public void history() {
        if (history.isEmpty()) {
          history =
              Optional.of(
                  new SideWindow(
                      table, stage, Words.of("history.title"), new HistoryPane(table), 460, 560));
        }
        history.get().show();
      }

      @Override
      public void preferences() {
        showPreferences();
      }
    };
  }

  private void showPreferences() {
    if (preferences.isEmpty()) {
      PreferencesPane pane =
          new PreferencesPane(table.preferences(), EditorWindow::sampleDesign, List.of());
      preferences =
          Optional.of(
              new SideWindow(table, stage, Words.of("preferences.title"), pane, 1040, 720)
                  .onHidden(pane::closed));
    }
    preferences.get().show();
  }

  /** The window of the preferences, once it has been opened. */
  Optional<SideWindow> preferences() {
    return preferences;
  }

  /** A design that shows most inks. */
  private static Optional<Layout> sampleDesign() {
    return DemoCases.all().stream()
        .findFirst()
        .map(c -> Layout.of(ArchForm.of(c.lowerChart()), c.lowerDesign()));
  }

  /** The field in which actions are found, once it has been opened. */
  Optional<ActionFinder> finder() {
    return finder;
  }

  Menus menus() {
    return menus;
  }

  /** The window of the prescription's pages, once it has been opened. */
  Optional<PreviewWindow> preview() {
    return preview;
  }

  /** The window of the school profile, once it has been opened. */
  Optional<SchoolWindow> school() {
    return school;
  }

  public Worktable table() {
    return table;
  }

  PrescriptionFiles prescriptions() {
    return prescriptions;
  }

  CaseFiles files() {
    return files;
  }

  SheetPane sheet() {
    return sheet;
  }

  /** Opens a file from the command line. */
  public void open(Path file) {
    files.load(file);
  }

  private static void mayDrop(DragEvent e) {
    if (e.getDragboard().hasFiles()) {
      e.acceptTransferModes(TransferMode.COPY);
    }
  }

  /** Opens the file that was dropped on the window, once whoever dropped it has been answered. */
  private void dropped(DragEvent e) {
    if (e.getDragboard().hasFiles()) {
      Path file = e.getDragboard().getFiles().get(0).toPath();
      Platform.runLater(() -> files.open(file));
      e.setDropCompleted(true);
    }
  }

  private void quit() {
    if (files.mayLeave()) {
      remembered.noteWindow(
          stage.getScene().getWidth(), stage.getScene().getHeight(), stage.isMaximized());
      table.pagesShownProperty().set(false);
      stage.close();
    }
  }

  private String title() {
    if (!table.openProperty().get()) {
      return Words.of("app.name");
    }
    String name =
        table
            .fileProperty()
            .get()
            .map(p -> p.getFileName().toString())
            .orElseGet(
                () ->
                    table.current().title().isBlank()
                        ? Words.of("title.untitled")
                        : table.current().title());
    return Words.of("app.name") + " – " + name + (table.unsavedProperty().get() ? " *" : "");
  }

  /** Shortcuts with Ctrl also arrive as typed characters, which no field should take. */
  private static void dropControlCharacters(KeyEvent e) {
    if (e.isControlDown() && !e.isAltDown()) {
      e.consume();
    }
  }

  private void escape(KeyEvent e) {
    // Under the form the sheet must not take keys that nobody sees it take.
    if (e.getCode() == KeyCode.ESCAPE
        && table.openProperty().get()
        && table.stepProperty().get() != Step.PRESCRIPTION) {
      sheet.requestFocus();
    }
  }

  private static double number(Properties p, String key, double otherwise) {
    try {
      double v = Double.parseDouble(p.getProperty(key, ""));
      return v >= 600 && v <= 10000 ? v : otherwise;
    } catch (NumberFormatException e) {
      return otherwise;
    }
  }
}
