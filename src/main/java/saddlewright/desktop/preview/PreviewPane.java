package saddlewright.desktop.preview;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Supplier;
import javafx.application.Platform;
import javafx.beans.InvalidationListener;
import javafx.beans.property.ObjectProperty;
import javafx.geometry.Orientation;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Hyperlink;
import javafx.scene.control.Label;
import javafx.scene.control.Separator;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCombination;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import saddlewright.dentition.Notation;
import saddlewright.desktop.InWords;
import saddlewright.desktop.Words;
import saddlewright.desktop.Worktable;
import saddlewright.prescription.Issue;
import saddlewright.prescription.pdf.Paper;
import saddlewright.prescription.pdf.print.Printer;

/**
 * The pages of the prescription as they will be saved and printed, with what can be chosen about
 * them. They follow the case while they are in view.
 */
public final class PreviewPane extends BorderPane {
  /** What is done with the document outside this pane. */
  public interface Actions {
    /** Saves it under a name that is asked for. */
    void save();

    /** Lets it go out as a revision, under a name that is asked for. */
    void issue();
  }

  private final Worktable table;
  private final Actions actions;
  // Held here, since what it is bound to holds it weakly.
  private final ObjectProperty<Boolean> mono;
  private final Backstage backstage = new Backstage();
  private final ScreenScale screen;
  private final PageStack stack;
  private final Thumbnails thumbnails;
  private final Label trouble = new Label();
  private final Label pageOf = new Label();
  private final TextField pageNumber = new TextField();
  private final Button print = button("pages.print");
  private final AtomicInteger generation = new AtomicInteger();
  private Supplier<List<Printer>> installed = Printer::installed;
  private Optional<Document> document = Optional.empty();
  private boolean watching;
  private boolean due;
  private int taken;

  public PreviewPane(Worktable table, MeasuredScreens screens, Actions actions) {
    this.screen = new ScreenScale(screens);
    this.stack = new PageStack(screen);
    this.thumbnails = new Thumbnails(stack);
    this.table = table;
    this.actions = actions;
    this.mono = table.blackAndWhiteProperty().asObject();
    setId("preview");
    getStyleClass().add("preview");
    setTop(bars());
    setLeft(thumbnails);
    trouble.setWrapText(true);
    trouble.setId("preview-trouble");
    trouble.getStyleClass().add("preview-trouble");
    trouble.setMaxWidth(480);
    trouble.setText(Words.of("pages.being-made"));
    setCenter(new StackPane(stack, trouble));
    setBottom(status());
    InvalidationListener changed = o -> changed();
    table.assessmentProperty().addListener(changed);
    table.notationProperty().addListener(changed);
    table.blackAndWhiteProperty().addListener(changed);
    table.inksProperty().addListener(changed);
    table.markersProperty().addListener(changed);
    table.paperProperty().addListener(changed);
    table.patientProperty().addListener(changed);
    stack.currentProperty().addListener(o -> tellPage());
    addEventFilter(KeyEvent.KEY_PRESSED, this::key);
    print.setDisable(true);
  }

  private VBox bars() {
    Button save = button("pages.save");
    save.setId("pages-save");
    save.setOnAction(e -> actions.save());
    Button issue = button("pages.issue");
    issue.setId("pages-issue");
    issue.setOnAction(e -> actions.issue());
    print.setId("pages-print");
    print.getStyleClass().add("primary");
    print.setOnAction(e -> print());
    Region gap = new Region();
    HBox.setHgrow(gap, Priority.ALWAYS);
    HBox deeds = new HBox(8, print, save, issue, gap, pageMoves());
    deeds.getStyleClass().add("preview-bar");
    deeds.setAlignment(Pos.CENTER_LEFT);
    FlowPane looks = new FlowPane(8, 6);
    looks.getStyleClass().addAll("preview-bar", "preview-looks");
    looks.setAlignment(Pos.CENTER_LEFT);
    looks
        .getChildren()
        .addAll(
            choice("pages.paper", List.of(Paper.values()), table.paperProperty(), Paper::title),
            choice(
                "pages.ink",
                List.of(false, true),
                mono,
                mono -> Words.of(mono ? "pages.ink-mono" : "pages.ink-colour")),
            choice("pages.teeth", List.of(Notation.values()), table.notationProperty(), Words::of),
            signs(),
            new Separator(Orientation.VERTICAL),
            zoom());
    return new VBox(deeds, looks);
  }

  /** Which document this is, in which state, on which paper. */
  private HBox status() {
    Label kind = new Label();
    kind.setId("preview-kind");
    kind.getStyleClass().add("preview-kind");
    kind.setMinWidth(USE_PREF_SIZE);
    Label state = new Label();
    state.setId("preview-state");
    InvalidationListener update =
        o -> {
          kind.setText(table.current().prescription().kind().title());
          state.setText(Issue.stateOf(table.current()));
        };
    table.currentProperty().addListener(update);
    update.invalidated(table.currentProperty());
    Hyperlink measure = new Hyperlink(Words.of("pages.measure-screen"));
    measure.setId("pages-measure");
    measure.setMinWidth(USE_PREF_SIZE);
    measure.setOnAction(e -> new ScreenDialog(getScene().getWindow(), screen).show());
    Region gap = new Region();
    HBox.setHgrow(gap, Priority.ALWAYS);
    HBox strip = new HBox(16, kind, state, gap, measure);
    strip.setAlignment(Pos.CENTER_LEFT);
    strip.getStyleClass().add("status-strip");
    return strip;
  }

  private HBox pageMoves() {
    Button back = button("pages.previous");
    Button on = button("pages.next");
    back.setAccessibleText(Words.of("pages.previous-hint"));
    on.setAccessibleText(Words.of("pages.next-hint"));
    back.setId("pages-previous");
    on.setId("pages-next");
    back.setOnAction(e -> stack.goTo(stack.currentProperty().get() - 1));
    on.setOnAction(e -> stack.goTo(stack.currentProperty().get() + 1));
    pageNumber.setPrefColumnCount(2);
    pageNumber.setAlignment(Pos.CENTER_RIGHT);
    pageNumber.setId("pages-number");
    pageNumber.setAccessibleText(Words.of("pages.number-hint"));
    pageNumber.setOnAction(e -> goToTyped());
    pageNumber.focusedProperty().addListener((o, was, now) -> tellPage());
    pageOf.setId("pages-of");
    pageOf.setMinWidth(USE_PREF_SIZE);
    HBox box = new HBox(5, new Label(Words.of("pages.page")), pageNumber, pageOf, back, on);
    box.setAlignment(Pos.CENTER_LEFT);
    box.setMinWidth(USE_PREF_SIZE);
    return box;
  }

  private void goToTyped() {
    try {
      stack.goTo(Integer.parseInt(pageNumber.getText().strip()) - 1);
    } catch (NumberFormatException e) {
      tellPage();
    }
  }

  private void tellPage() {
    int count = document.map(Document::count).orElse(0);
    pageNumber.setText(count == 0 ? "" : String.valueOf(stack.currentProperty().get() + 1));
    pageOf.setText(count == 0 ? "" : Words.of("pages.of", count));
  }

  private CheckBox signs() {
    CheckBox box = new CheckBox(Words.of("pages.signs"));
    box.setId("pages-signs");
    box.selectedProperty().bindBidirectional(table.markersProperty());
    return box;
  }

  private HBox zoom() {
    ComboBox<Zoom> box = new ComboBox<>();
    box.setId("pages-zoom");
    box.getItems().setAll(Zoom.CHOICES);
    box.setVisibleRowCount(Zoom.CHOICES.size());
    box.setConverter(new InWords<>(Zoom::words));
    box.valueProperty().bindBidirectional(stack.zoomProperty());
    box.setAccessibleText(Words.of("pages.zoom"));
    Button smaller = button("pages.smaller");
    Button larger = button("pages.larger");
    smaller.setAccessibleText(Words.of("view.zoom-out").replace("_", ""));
    larger.setAccessibleText(Words.of("view.zoom-in").replace("_", ""));
    smaller.setOnAction(e -> stack.zoomBy(false));
    larger.setOnAction(e -> stack.zoomBy(true));
    HBox all = new HBox(5, smaller, box, larger);
    all.setAlignment(Pos.CENTER_LEFT);
    return all;
  }

  private static <T> HBox choice(
      String key,
      List<T> all,
      ObjectProperty<T> chosen,
      java.util.function.Function<T, String> words) {
    ComboBox<T> box = new ComboBox<>();
    box.setId(key.replace('.', '-'));
    box.getItems().setAll(all);
    box.setConverter(new InWords<>(words));
    box.valueProperty().bindBidirectional(chosen);
    Label label = new Label(Words.of(key));
    label.setLabelFor(box);
    label.setMnemonicParsing(true);
    HBox both = new HBox(5, label, box);
    both.setAlignment(Pos.CENTER_LEFT);
    return both;
  }

  private static Button button(String key) {
    Button b = new Button(Words.of(key));
    b.setMnemonicParsing(true);
    b.setMinWidth(USE_PREF_SIZE);
    return b;
  }

  /** Begins or ends to follow the case; while nobody looks, no pages are made. */
  public void watch(boolean looking) {
    watching = looking;
    if (looking) {
      screen.read(getScene().getWindow());
      changed();
    }
  }

  /** The window has been moved, perhaps to another screen. */
  public void moved() {
    screen.read(getScene().getWindow());
  }

  /** Has the document made anew; several changes at once make one document. */
  private void changed() {
    if (!watching || due) {
      return;
    }
    due = true;
    Platform.runLater(
        () -> {
          due = false;
          make();
        });
  }

  private void make() {
    int mine = generation.incrementAndGet();
    DeskDocument desk = DeskDocument.of(table);
    backstage.make(
        Backstage.Urgency.DOCUMENT,
        () -> generation.get() == mine,
        () -> new Document(desk.toBytes(), backstage),
        d -> take(d, mine),
        e -> {
          if (generation.get() == mine) {
            trouble.setText(Words.of("pages.not-made", String.valueOf(e.getMessage())));
            trouble.setVisible(true);
            print.setDisable(true);
          }
        });
  }

  private void take(Document newer, int number) {
    taken = number;
    Optional<Document> older = document;
    document = Optional.of(newer);
    trouble.setVisible(false);
    print.setDisable(false);
    stack.take(newer);
    if (older.isEmpty()) {
      stack.goTo(0);
    }
    thumbnails.take(newer, stack.currentProperty().get());
    tellPage();
    older.ifPresent(Document::close);
  }

  /** Opens the box in which printing is ordered. */
  public void print() {
    document.ifPresent(
        d -> {
          PrintForm form =
              new PrintForm(
                  d,
                  backstage,
                  installed,
                  stack.currentProperty().get(),
                  table.current().reference());
          new PrintDialog(
                  getScene().getWindow(),
                  form,
                  words -> table.noticeProperty().set(Optional.of(words)))
              .show();
        });
  }

  /** Takes other printers than those of this computer. */
  public void setPrinters(Supplier<List<Printer>> printers) {
    installed = printers;
  }

  /** Whether the pages in view are those of the case as it stands. */
  public boolean isSettled() {
    return !due
        && taken == generation.get()
        && document.isPresent()
        && !stack.pages().isEmpty()
        && stack.pages().get(stack.currentProperty().get()).isShown();
  }

  private static final KeyCombination FIT_PAGE = KeyCombination.valueOf("Shortcut+0");
  private static final KeyCombination TRUE_SIZE = KeyCombination.valueOf("Shortcut+1");
  private static final KeyCombination FIT_WIDTH = KeyCombination.valueOf("Shortcut+2");
  private static final KeyCombination PRINT = KeyCombination.valueOf("Shortcut+P");

  private void key(KeyEvent e) {
    if (PRINT.match(e)) {
      print();
    } else if (FIT_PAGE.match(e)) {
      stack.zoomProperty().set(Zoom.PAGE);
    } else if (TRUE_SIZE.match(e)) {
      stack.zoomProperty().set(Zoom.TRUE);
    } else if (FIT_WIDTH.match(e)) {
      stack.zoomProperty().set(Zoom.WIDTH);
    } else if (e.isShortcutDown()) {
      switch (e.getCode()) {
        case EQUALS, PLUS, ADD -> stack.zoomBy(true);
        case MINUS, SUBTRACT -> stack.zoomBy(false);
        default -> {
          return;
        }
      }
    } else {
      return;
    }
    e.consume();
  }
}
