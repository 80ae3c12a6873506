package saddlewright.desktop;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javafx.animation.AnimationTimer;
import javafx.animation.PauseTransition;
import javafx.application.Platform;
import javafx.beans.InvalidationListener;
import javafx.beans.binding.Bindings;
import javafx.beans.binding.BooleanBinding;
import javafx.geometry.Orientation;
import javafx.geometry.Rectangle2D;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.SplitPane;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import javafx.stage.Screen;
import javafx.stage.Stage;
import javafx.util.Duration;
import saddlewright.archform.ArchForm;
import saddlewright.desktop.actions.ActionFinder;
import saddlewright.desktop.actions.Actions;
import saddlewright.desktop.actions.MoreKeys;
import saddlewright.desktop.actions.ShortcutPage;
import saddlewright.desktop.desks.Desk;
import saddlewright.desktop.desks.DeskNames;
import saddlewright.desktop.desks.FileDrop;
import saddlewright.desktop.desks.OpenDesks;
import saddlewright.desktop.desks.RecentPage;
import saddlewright.desktop.desks.WindowPlaces;
import saddlewright.desktop.findings.FindingsPane;
import saddlewright.desktop.focus.Panes;
import saddlewright.desktop.history.HistoryPane;
import saddlewright.desktop.panels.BuiltWhenSeen;
import saddlewright.desktop.panels.OrderOfWork;
import saddlewright.desktop.panels.StatusStrip;
import saddlewright.desktop.panels.SubjectPane;
import saddlewright.desktop.panels.ToolStrip;
import saddlewright.desktop.panels.ViewChoice;
import saddlewright.desktop.preferences.Preferences;
import saddlewright.desktop.preferences.PreferencesPane;
import saddlewright.desktop.prescription.CompletenessPane;
import saddlewright.desktop.prescription.GapTrail;
import saddlewright.desktop.prescription.PrescriptionPane;
import saddlewright.desktop.preview.ScreenScale;
import saddlewright.desktop.roll.SheetWithList;
import saddlewright.desktop.safekeeping.RecoveryPane;
import saddlewright.desktop.sheet.SheetPane;
import saddlewright.desktop.templates.TemplatePage;
import saddlewright.desktop.templates.Templates;
import saddlewright.desktop.tools.ToolBox;
import saddlewright.desktop.views.SheetOnly;
import saddlewright.desktop.views.Stages;
import saddlewright.desktop.views.StepStrip;
import saddlewright.layout.Layout;

/** The window of the editor, put together. */
public final class EditorWindow implements Desk {
  private static final double WIDTH = 1440;
  private static final double HEIGHT = 900;
  private static final String PLACES = "window.properties";
  private static final double WIDEST_BESIDE = 0.4;

  /** Least width of the panels beside the sheet, pixels at the usual size of text. */
  private static final double LEAST_BESIDE = 280;

  private static final double LEAST_MIDDLE = 320;

  /** Least height of the two panels, pixels at the usual size of text, where text is larger. */
  private static final double LEAST_PANELS = 400;

  private static final double MOST_BEFORE_SCROLLING = 1.4;

  /** The largest share of the window that a least width may claim. */
  private static final double MOST_BESIDE = 0.47;

  private final Worktable table;
  private final ToolBox tools;
  private final Settings settings;
  private final OpenDesks<EditorWindow> desks;
  private final CaseFiles files;
  private final PrescriptionFiles prescriptions;
  private final GapTrail gaps;
  private final SheetPane sheet;
  private Optional<FindingsPane> findings = Optional.empty();
  private Optional<SchoolWindow> school = Optional.empty();
  private Optional<PreviewWindow> preview = Optional.empty();
  private final SplitPane right = new SplitPane();
  private final BorderPane root = new BorderPane();
  private final Menus menus;
  private final HelpWindows help;
  private Optional<ActionFinder> finder = Optional.empty();
  private Optional<SideWindow> shortcuts = Optional.empty();
  private Optional<SideWindow> history = Optional.empty();
  private Optional<SideWindow> preferences = Optional.empty();
  private Optional<SideWindow> recent = Optional.empty();
  private final SurveyWindows survey;
  private Optional<SheetOnly> alone = Optional.empty();
  private Optional<SideWindow> found = Optional.empty();
  private Optional<TemplateWindow> templates = Optional.empty();
  private final Stage stage;
  private final Panes panes;

  /**
   * Fills the stage and shows it.
   *
   * @param settings folder for preferences, recent files and the size of the window
   */
  public EditorWindow(Stage stage, Path settings) {
    this(stage, settings, settings.resolve("state"));
  }

  /** As above, with a folder for work that is not saved. */
  public EditorWindow(Stage stage, Path settings, Path state) {
    this(stage, Settings.in(settings, state, Preferences.in(settings)));
  }

  /** As above, with the preferences that all windows share. */
  public EditorWindow(Stage stage, Path folder, Preferences preferences) {
    this(stage, Settings.in(folder, folder.resolve("state"), preferences));
  }

  private EditorWindow(Stage stage, Settings settings) {
    this(stage, settings, new OpenDesks<>((s, desks) -> new EditorWindow(s, settings, desks)));
  }

  /** A window among others, with which it shares what the user has settled. */
  EditorWindow(Stage stage, Settings settings, OpenDesks<EditorWindow> desks) {
    this.stage = stage;
    this.settings = settings;
    this.desks = desks;
    this.table = new Worktable(settings.preferences());
    this.tools = new ToolBox(table.stepProperty());
    this.gaps = new GapTrail(table);
    this.sheet = new SheetPane(table, tools);
    this.files = new CaseFiles(table, settings, this, desks);
    this.prescriptions = new PrescriptionFiles(table, files);
    this.survey = new SurveyWindows(table, stage);
    this.help = new HelpWindows(table, stage);
    DeskLook.wear(root, table);
    menus =
        new Menus(
            table,
            tools,
            files,
            prescriptions,
            settings.recent(),
            sheet,
            this,
            this::step,
            gaps,
            help,
            beside());
    root.setTop(menus);
    WelcomePage welcome = new WelcomePage(files, settings, table, () -> showTemplates(false));
    welcome.visibleProperty().bind(table.openProperty().not().or(table.welcomeShownProperty()));
    StackPane middle = new StackPane(welcome);
    table.openProperty().addListener(o -> putWorkInto(middle));
    VBox body = new VBox(new NoticeBar(table), middle);
    VBox.setVgrow(middle, Priority.ALWAYS);
    FileDrop drop = new FileDrop(files::openAll);
    root.setCenter(new StackPane(body, drop));
    table
        .findingProperty()
        .addListener(
            o ->
                table
                    .findingProperty()
                    .get()
                    .ifPresent(k -> sheet.reveal(table.selectionProperty().get())));
    WindowPlaces place = standing();
    Scene scene = new Scene(root, place.area().getWidth(), place.area().getHeight());
    scene
        .getStylesheets()
        .add(EditorWindow.class.getResource("/saddlewright/desktop/desk.css").toExternalForm());
    scene.addEventFilter(KeyEvent.KEY_TYPED, EditorWindow::dropControlCharacters);
    scene.addEventHandler(KeyEvent.KEY_PRESSED, this::escape);
    panes = new Panes(scene);
    panes.add(welcome);
    MoreKeys.install(scene, Actions.items(menus));
    drop.install(scene);
    stage.setScene(scene);
    table.schoolShownProperty().addListener((o, was, shown) -> showSchool(shown));
    table.pagesShownProperty().addListener((o, was, shown) -> showPages(shown));
    stage.setMinWidth(960);
    stage.setMinHeight(600);
    stage.setX(place.area().getMinX());
    stage.setY(place.area().getMinY());
    stage.setMaximized(place.maximised());
    stage
        .titleProperty()
        .bind(
            Bindings.createStringBinding(
                this::title,
                table.currentProperty(),
                table.openProperty(),
                table.unsavedProperty(),
                table.fileProperty()));
    stage.setOnCloseRequest(
        e -> {
          e.consume();
          desks.close(this);
        });
    followScreen();
    files.watch(stage);
    desks.enter(this);
    stage.show();
    table.noticeProperty().set(settings.preferences().troubleProperty().get());
    // The first frame is not kept waiting by what is not yet seen, not even on another processor:
    // the demo cases are read after it, and the panels are built while the welcome page is read,
    // so that neither is the first case kept waiting by its panels.
    afterFirstFrame(
        () -> {
          welcome.fill();
          stage.getIcons().setAll(Icons.all());
          settings.found().look(files::tellOfFound);
          PauseTransition idle = new PauseTransition(Duration.millis(250));
          idle.setOnFinished(e -> putWorkInto(middle));
          idle.play();
        });
    table
        .openProperty()
        .addListener(
            (o, was, open) -> {
              if (open) {
                // What had the focus on the welcome page loses it only once that is gone.
                Platform.runLater(sheet::requestFocus);
              }
            });
  }

  /** True size on the sheet is that of the screen that the window stands on, as last measured. */
  private void followScreen() {
    ScreenScale screen = new ScreenScale(settings.printing());
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

  /** The third pulse begins when the frame of the first has long been painted. */
  private static void afterFirstFrame(Runnable action) {
    new AnimationTimer() {
      private int pulses;

      @Override
      public void handle(long now) {
        if (++pulses == 3) {
          stop();
          action.run();
        }
      }
    }.start();
  }

  /** Puts the panels behind the welcome page, once. */
  private void putWorkInto(StackPane middle) {
    if (middle.getChildren().size() == 1) {
      BorderPane work = work();
      work.visibleProperty().bind(table.openProperty().and(table.welcomeShownProperty().not()));
      middle.getChildren().add(0, work);
    }
  }

  private BorderPane work() {
    BooleanBinding prescribing = table.stepProperty().isEqualTo(Step.PRESCRIPTION);
    Node prescription = new BuiltWhenSeen(prescribing, this::prescription);
    ToolStrip strip = new ToolStrip(table, tools, new ViewChoice(table, sheet));
    VBox drawing =
        new VBox(
            strip,
            sheet,
            new StepStrip(table, new Stages(table), files::exportSteps, this::showAlone));
    VBox.setVgrow(sheet, Priority.ALWAYS);
    SheetWithList listed = new SheetWithList(table, sheet, drawing);
    listed.visibleProperty().bind(prescribing.not());
    StackPane middle = new StackPane(listed, prescription);
    right.setOrientation(Orientation.VERTICAL);
    FindingsPane pane = new FindingsPane(table);
    findings = Optional.of(pane);
    SubjectPane subject = new SubjectPane(table);
    right.getItems().addAll(subject, pane);
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
    // Where large words leave too little room for both panels, they scroll together.
    ScrollPane panels = new ScrollPane(right);
    panels.setFitToWidth(true);
    panels.setFitToHeight(true);
    panels.visibleProperty().bind(prescribing.not());
    right
        .minHeightProperty()
        .bind(
            Bindings.when(table.textSizeProperty().greaterThan(MOST_BEFORE_SCROLLING))
                .then(table.textSizeProperty().multiply(LEAST_PANELS))
                .otherwise(0));
    StackPane beside = new StackPane(panels, missing);
    SplitPane across = new SplitPane(middle, beside);
    across.setDividerPositions(0.68);
    SplitPane.setResizableWithParent(beside, false);
    // As wide as its words need, but the sheet keeps the larger part.
    beside
        .minWidthProperty()
        .bind(
            Bindings.min(
                table.textSizeProperty().multiply(LEAST_BESIDE),
                across.widthProperty().multiply(MOST_BESIDE)));
    middle
        .minWidthProperty()
        .bind(Bindings.min(LEAST_MIDDLE, across.widthProperty().multiply(MOST_BESIDE)));
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
    OrderOfWork order = new OrderOfWork(table);
    ScrollPane steps = new ScrollPane(order);
    steps.setFitToWidth(true);
    steps.setFitToHeight(true);
    steps.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
    work.setLeft(steps);
    StatusStrip status = new StatusStrip(table, sheet.camera());
    work.setBottom(status);
    // The list takes its part where it stands, as soon as it is shown.
    List.of(order, listed.list(), strip, sheet, prescription, subject, pane, missing, status)
        .forEach(panes::add);
    table
        .stepProperty()
        .addListener(
            o -> Platform.runLater(() -> panes.stay(prescribing.get() ? prescription : sheet)));
    return work;
  }

  private PrescriptionPane prescription() {
    return new PrescriptionPane(
        table,
        settings.mine(),
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
        preview =
            Optional.of(new PreviewWindow(table, files, prescriptions, settings.printing(), stage));
      }
      preview.get().show();
    } else {
      preview.ifPresent(PreviewWindow::hide);
    }
  }

  private void showAlone() {
    if (alone.isEmpty()) {
      alone =
          Optional.of(new SheetOnly(table, new Stages(table), stage, r -> DeskLook.wear(r, table)));
    }
    alone.get().show();
  }

  /** The sheet alone on the screen, once it has been shown. */
  Optional<SheetOnly> alone() {
    return alone;
  }

  Menus.Beside beside() {
    return new Menus.Beside() {
      @Override
      public void sheetOnly() {
        showAlone();
      }

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
      public void pane(boolean onwards) {
        panes.go(stage.getScene(), onwards);
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
          new PreferencesPane(
              table.preferences(),
              EditorWindow::sampleDesign,
              List.of(
                  Map.entry("settings", settings.folder()),
                  Map.entry("recovery", settings.safe().folder())));
      preferences =
          Optional.of(
              new SideWindow(table, stage, Words.of("preferences.title"), pane, 1040, 720)
                  .onHidden(pane::closed));
    }
    preferences.get().show();
  }

  /** The windows of the Help menu. */
  HelpWindows help() {
    return help;
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

  /** The windows in which the survey is entered. */
  SurveyWindows survey() {
    return survey;
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

  @Override
  public Worktable table() {
    return table;
  }

  @Override
  public Stage stage() {
    return stage;
  }

  @Override
  public Optional<Path> place() {
    return files.place();
  }

  @Override
  public boolean mayLeave() {
    return files.mayLeave();
  }

  @Override
  public void shut() {
    settings.remembered().write(PLACES, here().text(settings.remembered().properties(PLACES)));
    table.pagesShownProperty().set(false);
    files.leave();
    stage.close();
    if (desks.all().isEmpty()) {
      settings.safe().close();
    }
  }

  /** Writes at once what waits to be kept safe, since the computer is being shut down. */
  void flush() {
    settings.safe().flush();
  }

  OpenDesks<EditorWindow> desks() {
    return desks;
  }

  /** Where the window is to stand: in the cascade after the one in front, or where one stood. */
  private WindowPlaces standing() {
    List<Rectangle2D> screens = Screen.getScreens().stream().map(Screen::getVisualBounds).toList();
    Optional<EditorWindow> front =
        desks.all().stream()
            .filter(d -> d.stage.isFocused())
            .findFirst()
            .or(() -> desks.all().stream().reduce((a, b) -> b));
    return front
        .map(f -> WindowPlaces.after(f.here(), screens))
        .orElseGet(
            () ->
                WindowPlaces.kept(
                    settings.remembered().properties(PLACES),
                    new Rectangle2D(0, 0, WIDTH, HEIGHT),
                    screens));
  }

  private WindowPlaces here() {
    return new WindowPlaces(
        new Rectangle2D(
            stage.getX(), stage.getY(), stage.getScene().getWidth(), stage.getScene().getHeight()),
        stage.isMaximized());
  }

  /** Shows the work that was found and not yet taken up. */
  void showFound() {
    if (found.isEmpty()) {
      found =
          Optional.of(
              new SideWindow(
                  table,
                  stage,
                  Words.of("safe.heading"),
                  RecoveryPane.inWindow(
                      settings.found(),
                      work -> {
                        found.ifPresent(SideWindow::hide);
                        files.recover(work);
                      }),
                  560,
                  420));
    }
    found.get().show();
  }

  /** Shows the files that were opened lately, to open or to take off. */
  void showRecent() {
    if (recent.isEmpty()) {
      recent =
          Optional.of(
              new SideWindow(
                  table,
                  stage,
                  Words.of("welcome.recent"),
                  new RecentPage(
                      settings.recent(),
                      file -> {
                        recent.ifPresent(SideWindow::hide);
                        files.open(file);
                      }),
                  520,
                  480));
    }
    recent.get().show();
  }

  /** Shows the templates: to begin from one, or to keep the case as one. */
  void showTemplates(boolean toKeep) {
    if (templates.isEmpty()) {
      TemplatePage page =
          new TemplatePage(
              new Templates(settings.folder()),
              table,
              (c, from, surveyed) -> {
                templates.ifPresent(w -> w.window().hide());
                files.begin(c, from, surveyed);
              });
      templates =
          Optional.of(
              new TemplateWindow(
                  new SideWindow(table, stage, Words.of("templates.title"), page, 1120, 760),
                  page));
    }
    templates.get().window().show();
    if (toKeep) {
      templates.get().page().keep();
    } else {
      templates.get().page().choose();
    }
  }

  /** The page of templates and the window in which it stands. */
  private record TemplateWindow(SideWindow window, TemplatePage page) {}

  PrescriptionFiles prescriptions() {
    return prescriptions;
  }

  CaseFiles files() {
    return files;
  }

  SheetPane sheet() {
    return sheet;
  }

  /** Opens a file in this window, in the place of what lies there. */
  public void open(Path file) {
    files.load(file);
  }

  /** Opens files from the command line, the first of them here. */
  public void open(List<Path> named) {
    files.openAll(named);
  }

  private String title() {
    if (!table.openProperty().get()) {
      return Words.of("app.name");
    }
    return Words.of("app.name")
        + " – "
        + DeskNames.of(table)
        + (table.unsavedProperty().get() ? " *" : "");
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
}
