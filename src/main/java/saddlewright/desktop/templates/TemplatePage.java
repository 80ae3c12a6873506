package saddlewright.desktop.templates;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.application.Platform;
import javafx.geometry.Bounds;
import javafx.geometry.Pos;
import javafx.scene.Group;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import saddlewright.archform.ArchForm;
import saddlewright.casefile.Case;
import saddlewright.casefile.CaseFileException;
import saddlewright.classification.KennedyClass;
import saddlewright.dentition.Arch;
import saddlewright.desktop.Words;
import saddlewright.desktop.Worktable;
import saddlewright.desktop.sheet.Picture;
import saddlewright.layout.Layout;

/** The templates with their pictures, to begin a case from one, and to keep the case as one. */
public final class TemplatePage extends VBox {
  /** Whoever lays on a desk what begins from a template. */
  public interface Taker {
    void begin(Case subject, Template from, boolean surveyed);
  }

  private static final List<KennedyClass> CLASSES =
      List.of(KennedyClass.I, KennedyClass.II, KennedyClass.III, KennedyClass.IV);

  /** Width of a picture at the usual size of text, in pixels. */
  private static final double WIDTH = 232;

  private static final double LARGE = 1.5;

  private final Templates templates;
  private final Worktable table;
  private final Taker open;
  private final FlowPane cards = new FlowPane(14, 14);
  private final ScrollPane scroll = new ScrollPane();
  private final VBox below = new VBox(12);
  private final Label said = new Label();
  private final Button back = new Button(Words.of("templates.put-back"));
  private final CheckBox surveyed = new CheckBox(Words.of("templates.surveyed"));
  private final TextField name = new TextField();
  private final TextField words = new TextField();
  private List<Template> all = List.of();
  private Optional<Arch> arch = Optional.empty();
  private Optional<KennedyClass> kennedy = Optional.empty();

  /**
   * The page.
   *
   * @param table the desk whose case can be kept as a template
   * @param open takes the case that begins from a template
   */
  public TemplatePage(Templates templates, Worktable table, Taker open) {
    this.templates = templates;
    this.table = table;
    this.open = open;
    setId("templates");
    getStyleClass().add("templates");
    cards.getStyleClass().add("template-cards");
    cards.setId("template-cards");
    scroll.setFitToWidth(true);
    scroll.setFocusTraversable(false);
    VBox.setVgrow(scroll, Priority.ALWAYS);
    surveyed.setId("templates-surveyed");
    Label why = words(Words.of("templates.why-surveyed"));
    why.getStyleClass().add("hint-line");
    said.setId("templates-said");
    said.setWrapText(true);
    said.setMinHeight(Region.USE_PREF_SIZE);
    HBox.setHgrow(said, Priority.ALWAYS);
    said.setMaxWidth(Double.MAX_VALUE);
    back.setMinWidth(Region.USE_PREF_SIZE);
    back.setId("templates-put-back");
    HBox message = new HBox(10, said, back);
    message.setAlignment(Pos.CENTER_LEFT);
    message.managedProperty().bind(said.textProperty().isNotEmpty());
    message.visibleProperty().bind(said.textProperty().isNotEmpty());
    back.managedProperty().bind(back.visibleProperty());
    // Before the scroll pane, which takes some of these keys for itself.
    scroll.addEventFilter(KeyEvent.KEY_PRESSED, this::arrows);
    below.getChildren().addAll(message, new VBox(4, surveyed, why), keeping());
    getChildren().addAll(filters(), scroll, below);
    table.textSizeProperty().addListener((o, was, now) -> arrange());
    arrange();
    read();
  }

  /** With large text what stands below the templates would take their room: it goes with them. */
  private void arrange() {
    getChildren().remove(below);
    if (table.textSizeProperty().get() > LARGE) {
      scroll.setContent(new VBox(12, cards, below));
    } else {
      scroll.setContent(cards);
      getChildren().add(below);
    }
    fill();
  }

  private FlowPane filters() {
    FlowPane row = new FlowPane(5, 6);
    row.setAlignment(Pos.CENTER_LEFT);
    ToggleGroup arches = new ToggleGroup();
    row.getChildren()
        .add(
            filter(
                "templates-any-arch", Words.of("templates.any-arch"), arches, () -> ofArch(null)));
    for (Arch a : Arch.values()) {
      row.getChildren()
          .add(filter("templates-" + a.code(), Words.capital(a.code()), arches, () -> ofArch(a)));
    }
    Region gap = new Region();
    gap.setMinWidth(18);
    row.getChildren().add(gap);
    ToggleGroup classes = new ToggleGroup();
    row.getChildren()
        .add(
            filter(
                "templates-any-class",
                Words.of("templates.any-class"),
                classes,
                () -> ofClass(null)));
    for (KennedyClass k : CLASSES) {
      row.getChildren()
          .add(
              filter(
                  "templates-class-" + k.name(),
                  Words.of("templates.class", k.word()),
                  classes,
                  () -> ofClass(k)));
    }
    arches.getToggles().get(0).setSelected(true);
    classes.getToggles().get(0).setSelected(true);
    return row;
  }

  private void ofArch(Arch chosen) {
    arch = Optional.ofNullable(chosen);
    fill();
  }

  private void ofClass(KennedyClass chosen) {
    kennedy = Optional.ofNullable(chosen);
    fill();
  }

  private static ToggleButton filter(String id, String text, ToggleGroup group, Runnable chosen) {
    ToggleButton b = new ToggleButton(text);
    b.setId(id);
    b.getStyleClass().add("tool");
    b.setToggleGroup(group);
    b.setOnAction(
        e -> {
          b.setSelected(true);
          chosen.run();
        });
    return b;
  }

  /** The row in which the case on the desk is kept as a template. */
  private VBox keeping() {
    Label heading = new Label(Words.of("templates.keep-heading"));
    heading.getStyleClass().add("form-heading");
    name.setId("template-save-name");
    name.setPromptText(Words.of("templates.name"));
    name.setAccessibleText(Words.of("templates.name"));
    name.setPrefColumnCount(18);
    words.setId("template-save-words");
    words.setPromptText(Words.of("templates.words"));
    words.setAccessibleText(Words.of("templates.words"));
    HBox.setHgrow(words, Priority.ALWAYS);
    Button save = new Button(Words.of("templates.save"));
    save.setId("template-save");
    save.setMinWidth(Region.USE_PREF_SIZE);
    save.setOnAction(e -> save());
    name.setOnAction(e -> save());
    words.setOnAction(e -> save());
    save.disableProperty().bind(name.textProperty().isEmpty());
    HBox row = new HBox(8, name, words, save);
    row.setMinHeight(Region.USE_PREF_SIZE);
    Label without = words(Words.of("templates.without-patient"));
    without.getStyleClass().add("hint-line");
    VBox box = new VBox(4, heading, row, without);
    box.visibleProperty().bind(table.openProperty());
    box.managedProperty().bind(box.visibleProperty());
    return box;
  }

  private static Label words(String text) {
    Label l = new Label(text);
    l.setWrapText(true);
    l.setMinHeight(Region.USE_PREF_SIZE);
    return l;
  }

  /** Gives the keyboard to the first template. */
  public void choose() {
    read();
    cards().stream().findFirst().ifPresent(c -> c.button().requestFocus());
  }

  /** Gives the keyboard to the field for the name of a new template. */
  public void keep() {
    name.requestFocus();
    Platform.runLater(() -> scroll.setVvalue(below.getParent() == this ? scroll.getVvalue() : 1));
  }

  private void read() {
    Templates.Found found = templates.all();
    say(String.join("\n", found.troubles()), Optional.empty());
    if (!found.templates().equals(all)) {
      all = found.templates();
      fill();
    }
  }

  private void say(String sentence, Optional<Runnable> undo) {
    said.setText(sentence);
    back.setVisible(undo.isPresent());
    back.setOnAction(e -> undo.ifPresent(Runnable::run));
  }

  private void fill() {
    // Words need the room that their size takes; a picture is seen well enough in less.
    double width = WIDTH * (0.5 + 0.5 * table.textSizeProperty().get());
    List<TemplateCard> shown =
        all.stream()
            .filter(t -> t.fits(arch, kennedy))
            .map(t -> new TemplateCard(t, width, doing()))
            .toList();
    cards.getChildren().setAll(shown);
    if (shown.isEmpty()) {
      cards.getChildren().add(words(Words.of("templates.none")));
    }
    draw(shown);
  }

  private TemplateCard.Actions doing() {
    return new TemplateCard.Actions() {
      @Override
      public void begin(Template template) {
        open.begin(template.begin(surveyed.isSelected()), template, surveyed.isSelected());
      }

      @Override
      public void rename(Template template, String to) {
        change(() -> templates.rename(template, to), Words.of("templates.renamed", to));
      }

      @Override
      public void remove(Template template) {
        try {
          templates.remove(template);
          read();
          say(
              Words.of("templates.removed", template.name()),
              Optional.of(
                  () ->
                      change(
                          () -> templates.putBack(template),
                          Words.of("templates.is-back", template.name()))));
          back.requestFocus();
        } catch (IOException e) {
          say(
              Words.of("templates.not-removed", template.name(), String.valueOf(e.getMessage())),
              Optional.empty());
        }
      }
    };
  }

  /** A change of the user's own templates that may fail. */
  private interface Change {
    void make() throws CaseFileException;
  }

  private boolean change(Change change, String done) {
    try {
      change.make();
      read();
      say(done, Optional.empty());
      return true;
    } catch (CaseFileException e) {
      say(e.sentences(), Optional.empty());
      return false;
    }
  }

  private void save() {
    if (name.getText().isBlank()) {
      say(Words.of("templates.name-wanted"), Optional.empty());
      name.requestFocus();
    } else if (change(
        () -> templates.save(table.current(), name.getText(), words.getText()),
        Words.of("templates.saved", name.getText().strip(), templates.folder()))) {
      name.clear();
      words.clear();
    }
  }

  /** Lays the designs out away from the thread of the window, and shows each when it is ready. */
  private void draw(List<TemplateCard> shown) {
    Thread drawing =
        new Thread(
            () -> {
              for (TemplateCard card : shown) {
                Case c = card.template().subject();
                List<Layout> layouts = new ArrayList<>();
                for (Arch a : card.template().arches()) {
                  layouts.add(Layout.of(ArchForm.of(c.chart(a)), c.design(a)));
                }
                Platform.runLater(() -> show(card, layouts));
              }
            },
            "templates");
    drawing.setDaemon(true);
    drawing.start();
  }

  private void show(TemplateCard card, List<Layout> layouts) {
    if (card.getScene() == null && !cards.getChildren().contains(card)) {
      return;
    }
    double height = card.pictureWidth() * 0.82;
    double room = card.pictureWidth() / Math.max(1, layouts.size());
    HBox row = new HBox();
    row.setAlignment(Pos.CENTER);
    for (Layout l : layouts) {
      Region drawn = (Region) Picture.of(l, room);
      double scale = Math.min(0.94, 0.94 * height / drawn.getPrefHeight());
      drawn.setScaleX(scale);
      drawn.setScaleY(scale);
      row.getChildren().add(new Group(drawn));
    }
    card.show(row);
  }

  private List<TemplateCard> cards() {
    return cards.getChildren().stream()
        .filter(TemplateCard.class::isInstance)
        .map(TemplateCard.class::cast)
        .toList();
  }

  /** The arrow keys go from card to card as they lie. */
  private void arrows(KeyEvent e) {
    List<TemplateCard> now = cards();
    Optional<TemplateCard> here =
        now.stream().filter(c -> getScene().getFocusOwner() == c.button()).findFirst();
    if (here.isEmpty()) {
      return;
    }
    Optional<TemplateCard> next =
        switch (e.getCode()) {
          case RIGHT -> at(now, now.indexOf(here.get()) + 1);
          case LEFT -> at(now, now.indexOf(here.get()) - 1);
          case DOWN -> beside(now, here.get(), 1);
          case UP -> beside(now, here.get(), -1);
          case HOME -> at(now, 0);
          case END -> at(now, now.size() - 1);
          default -> Optional.empty();
        };
    next.ifPresent(c -> c.button().requestFocus());
    next.ifPresent(this::bringIntoView);
    if (next.isPresent() || e.getCode() == KeyCode.UP || e.getCode() == KeyCode.DOWN) {
      e.consume();
    }
  }

  private static Optional<TemplateCard> at(List<TemplateCard> cards, int n) {
    return n >= 0 && n < cards.size() ? Optional.of(cards.get(n)) : Optional.empty();
  }

  /** The card in the next row, or the row before, that lies nearest below or above. */
  private static Optional<TemplateCard> beside(
      List<TemplateCard> cards, TemplateCard here, int down) {
    return cards.stream()
        .filter(c -> (c.getLayoutY() - here.getLayoutY()) * down > 1)
        .min(
            (a, b) ->
                Double.compare(
                    Math.abs(a.getLayoutY() - here.getLayoutY()) * 1e4
                        + Math.abs(a.getLayoutX() - here.getLayoutX()),
                    Math.abs(b.getLayoutY() - here.getLayoutY()) * 1e4
                        + Math.abs(b.getLayoutX() - here.getLayoutX())));
  }

  private void bringIntoView(Node card) {
    Bounds b = card.getBoundsInParent();
    double seen = scroll.getViewportBounds().getHeight();
    double beyond = scroll.getContent().getLayoutBounds().getHeight() - seen;
    if (beyond <= 0) {
      return;
    }
    double top = scroll.getVvalue() * beyond;
    if (b.getMinY() < top) {
      scroll.setVvalue(b.getMinY() / beyond);
    } else if (b.getMaxY() > top + seen) {
      scroll.setVvalue(Math.min(1, (b.getMaxY() - seen) / beyond));
    }
  }
}
