package saddlewright.desktop;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javafx.application.Platform;
import javafx.beans.binding.Bindings;
import javafx.collections.ListChangeListener;
import javafx.collections.WeakListChangeListener;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Hyperlink;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.Tooltip;
import javafx.scene.image.ImageView;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import saddlewright.archform.ArchForm;
import saddlewright.casefile.Case;
import saddlewright.casefile.Cautions;
import saddlewright.classification.Classification;
import saddlewright.dentition.Arch;
import saddlewright.desktop.desks.RecentFiles;
import saddlewright.desktop.safekeeping.RecoveryPane;
import saddlewright.desktop.welcome.Illustrations;
import saddlewright.desktop.welcome.OrderPicture;
import saddlewright.drawing.Ink;
import saddlewright.drawing.Palette;
import saddlewright.layout.Layout;

/**
 * What is seen when no case is open, or asked for in the Help menu: what this is, ways to begin,
 * the cautions, the order of work in pictures, and the demo cases.
 */
final class WelcomePage extends ScrollPane {
  /** Width of the picture in pixels. */
  private static final double PICTURE = 460;

  /** The same of a demo case. */
  private static final double THUMBNAIL = 96;

  private static final double THUMBNAIL_HEIGHT = 88;

  /** What stands beside the words of a demo case besides its picture, pixels. */
  private static final double BESIDE = 48;

  private static final double LEAST_WORDS = 160;

  private final CaseFiles files;
  private final RecentFiles remembered;
  private final VBox recent = new VBox(2);
  private final ListChangeListener<Path> following = c -> recentFiles();
  private final Worktable table;
  private final Runnable templates;
  private final StackPane picture = new StackPane();
  private final ImageView pictured = new ImageView();
  private final OrderPicture order = new OrderPicture();
  private final Illustrations illustrations = new Illustrations();
  private final Map<Case, ImageView> thumbnails = new LinkedHashMap<>();
  private final GridPane demos = new GridPane();

  /**
   * @param templates begins from a template
   */
  WelcomePage(CaseFiles files, Settings settings, Worktable table, Runnable templates) {
    this.table = table;
    this.templates = templates;
    this.files = files;
    this.remembered = settings.recent();
    setId("welcome");
    getStyleClass().add("welcome");
    setFitToWidth(true);
    picture.getStyleClass().add("welcome-picture");
    picture.setMinSize(PICTURE + 22, PICTURE * 0.9);
    picture.setMaxHeight(Region.USE_PREF_SIZE);
    picture.getChildren().add(pictured);
    HBox.setHgrow(picture, Priority.NEVER);
    HBox top = new HBox(36, left(), picture);
    top.setAlignment(Pos.TOP_LEFT);
    VBox page =
        new VBox(
            22,
            RecoveryPane.onPage(settings.found(), files::recover),
            top,
            orderOfWork(),
            demoList());
    page.getStyleClass().add("welcome-page");
    VBox holder = new VBox(page);
    holder.setAlignment(Pos.TOP_CENTER);
    holder.getStyleClass().add("welcome-desk");
    setContent(holder);
    remembered.shown().addListener(new WeakListChangeListener<>(following));
    recentFiles();
    // Behind a case nothing is drawn: the case has the machine to itself.
    visibleProperty().addListener(o -> draw());
    table.darkDeskProperty().addListener(o -> draw());
    table.inksProperty().addListener(o -> draw());
  }

  private VBox orderOfWork() {
    Label heading = new Label(Words.of("order.title"));
    heading.getStyleClass().add("form-heading");
    return new VBox(8, heading, order, words(Words.of("welcome.after")));
  }

  private VBox left() {
    Label title = new Label(Words.of("app.name"));
    title.getStyleClass().add("welcome-title");
    Label sub = words(Words.of("welcome.subtitle"));
    sub.getStyleClass().add("welcome-subtitle");
    Button fresh = new Button(Words.of("welcome.new"));
    fresh.setId("welcome-new");
    fresh.getStyleClass().add("primary");
    fresh.setDefaultButton(true);
    fresh.setOnAction(e -> files.create());
    Button open = new Button(Words.of("welcome.open"));
    open.setId("welcome-open");
    open.setOnAction(e -> files.choose());
    Button template = new Button(Words.of("welcome.template"));
    template.setId("welcome-template");
    template.setOnAction(e -> templates.run());
    Button back = new Button(Words.of("welcome.back"));
    back.setId("welcome-back");
    back.setOnAction(e -> table.welcomeShownProperty().set(false));
    back.visibleProperty().bind(table.openProperty());
    back.managedProperty().bind(back.visibleProperty());
    FlowPane buttons = new FlowPane(10, 8, fresh, template, open, back);
    Label heading = new Label(Words.of("welcome.recent"));
    heading.getStyleClass().add("form-heading");
    VBox box = new VBox(14, title, sub, buttons, heading, recent, cautions());
    box.setMinWidth(0);
    HBox.setHgrow(box, Priority.ALWAYS);
    box.setPrefWidth(460);
    return box;
  }

  /** Reads the demo cases, away from the thread that paints the window, and has them drawn. */
  void fill() {
    Thread reader =
        new Thread(
            () -> {
              List<Case> cases = DemoCases.all();
              Platform.runLater(() -> show(cases));
            },
            "demo cases");
    reader.setDaemon(true);
    reader.start();
  }

  private void show(List<Case> cases) {
    for (int n = 0; n < cases.size(); n++) {
      demos.add(card(cases.get(n)), n % 2, n / 2);
    }
    draw();
  }

  /** Has all pictures drawn in the colours of the desk. */
  private void draw() {
    illustrations.begin();
    if (!isVisible()) {
      return;
    }
    Palette palette = table.inksProperty().get().on(table.darkDeskProperty().get());
    picture.setStyle("-fx-background-color: " + palette.hex(Ink.PAPER));
    List<Case> cases = List.copyOf(thumbnails.keySet());
    cases.stream()
        .findFirst()
        .ifPresent(
            c -> {
              illustrations.show(() -> layout(c, Arch.LOWER), PICTURE, palette, pictured);
              order.draw(c, palette, illustrations);
            });
    thumbnails.forEach(
        (c, view) -> illustrations.show(() -> layout(c, designed(c)), THUMBNAIL, palette, view));
  }

  private static Layout layout(Case c, Arch arch) {
    return Layout.of(ArchForm.of(c.chart(arch)), c.design(arch));
  }

  /** The arch that a demo case is about; the upper one where it is about both. */
  private static Arch designed(Case c) {
    return c.upperDesign().components().isEmpty() ? Arch.LOWER : Arch.UPPER;
  }

  private void recentFiles() {
    recent.getChildren().clear();
    for (Path p : remembered.shown()) {
      Hyperlink link =
          new Hyperlink(Words.of("recent.line", p.getFileName(), RecentFiles.folderInWords(p)));
      link.setTooltip(new Tooltip(p.toString()));
      link.setOnAction(e -> files.open(p));
      recent.getChildren().add(link);
      if (recent.getChildren().size() == 5) {
        break;
      }
    }
    if (recent.getChildren().isEmpty()) {
      recent
          .getChildren()
          .add(
              words(
                  Words.of(
                      remembered.privateProperty().get()
                          ? "recent.private"
                          : "welcome.no-recent")));
    }
  }

  private VBox demoList() {
    Label heading = new Label(Words.of("welcome.demos"));
    heading.getStyleClass().add("form-heading");
    demos.setHgap(12);
    demos.setVgap(8);
    demos.setId("demo-cases");
    for (int i = 0; i < 2; i++) {
      ColumnConstraints half = new ColumnConstraints();
      half.setPercentWidth(50);
      demos.getColumnConstraints().add(half);
    }
    return new VBox(8, heading, demos);
  }

  private Button card(Case c) {
    Label title = new Label(c.title());
    title.getStyleClass().add("demo-title");
    Label classes = new Label(c.reference() + " · " + classes(c));
    classes.getStyleClass().add("demo-class");
    title.setWrapText(true);
    classes.setWrapText(true);
    VBox box = new VBox(3, title, classes);
    box.setFillWidth(true);
    HBox.setHgrow(box, Priority.ALWAYS);
    ImageView view = new ImageView();
    view.setFitHeight(THUMBNAIL_HEIGHT);
    thumbnails.put(c, view);
    StackPane frame = new StackPane(view);
    frame.getStyleClass().add("order-frame");
    frame.setMinSize(THUMBNAIL + 2, THUMBNAIL_HEIGHT + 2);
    frame.setMaxSize(THUMBNAIL + 2, THUMBNAIL_HEIGHT + 2);
    HBox row = new HBox(12, frame, box);
    row.setAlignment(Pos.CENTER_LEFT);
    Button b = new Button();
    b.setGraphic(row);
    b.getStyleClass().add("demo");
    b.setMaxSize(Double.MAX_VALUE, Double.MAX_VALUE);
    b.setMinWidth(0);
    // The height of words that wrap is reckoned from their least width, which must be the real one.
    for (Label words : List.of(title, classes)) {
      words
          .minWidthProperty()
          .bind(Bindings.max(LEAST_WORDS, b.widthProperty().subtract(THUMBNAIL + BESIDE)));
    }
    b.setContentDisplay(javafx.scene.control.ContentDisplay.GRAPHIC_ONLY);
    box.setMinWidth(0);
    b.setAccessibleText(c.title());
    b.setTooltip(new Tooltip(c.story()));
    b.getTooltip().setWrapText(true);
    b.getTooltip().setMaxWidth(420);
    b.setOnAction(e -> files.demo(c));
    return b;
  }

  private static String classes(Case c) {
    StringBuilder out = new StringBuilder();
    for (Arch arch : Arch.values()) {
      if (!c.design(arch).components().isEmpty()) {
        out.append(out.length() == 0 ? "" : "; ").append(arch.code()).append(' ');
        out.append(Classification.of(c.chart(arch), abutments(c, arch)).label());
      }
    }
    return out.toString();
  }

  private static java.util.Set<saddlewright.dentition.Tooth> abutments(Case c, Arch arch) {
    return saddlewright.dentition.Tooth.in(arch).stream()
        .filter(c.design(arch)::usesAsAbutment)
        .collect(java.util.stream.Collectors.toSet());
  }

  private static VBox cautions() {
    Label heading = new Label(Words.of("welcome.cautions"));
    heading.getStyleClass().add("form-heading");
    VBox box = new VBox(4, heading);
    for (String sentence : Cautions.FULL) {
      box.getChildren().add(words("•  " + sentence));
    }
    box.getStyleClass().add("cautions");
    return box;
  }

  private static Label words(String text) {
    Label l = new Label(text);
    l.setWrapText(true);
    l.setMinHeight(Region.USE_PREF_SIZE);
    return l;
  }
}
