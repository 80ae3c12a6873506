package saddlewright.desktop.survey.card;

import java.util.Optional;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextInputControl;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import saddlewright.dentition.Arch;
import saddlewright.dentition.Face;
import saddlewright.dentition.Tooth;
import saddlewright.dentition.ToothNames;
import saddlewright.design.Subject;
import saddlewright.desktop.Words;
import saddlewright.desktop.Worktable;
import saddlewright.desktop.survey.Item;
import saddlewright.desktop.survey.picture.Knob;
import saddlewright.desktop.survey.picture.Surveyed;
import saddlewright.desktop.survey.picture.Touch;

/** The card of the selected tooth: three pictures of it, and its numbers beside them. */
public final class ToothCard extends BorderPane {
  /** Text up to this size leaves the numbers beside the pictures. */
  private static final double MOST_BESIDE = 1.4;

  private final Surveyed card;
  private final Label title = new Label();
  private final Button previous = new Button();
  private final Button next = new Button();
  private final Label told = new Label();
  private final Label more = new Label();
  private final Label caution = new Label();
  private Optional<CardFields> fields = Optional.empty();

  public ToothCard(Worktable table) {
    card = new Surveyed(table);
    setId("tooth-card");
    getStyleClass().addAll("panel", "tooth-card");
    title.getStyleClass().add("panel-title");
    title.setId("card-title");
    previous.setId("card-previous");
    next.setId("card-next");
    previous.setOnAction(e -> walk(-1));
    next.setOnAction(e -> walk(1));
    Region left = new Region();
    Region right = new Region();
    HBox.setHgrow(left, Priority.ALWAYS);
    HBox.setHgrow(right, Priority.ALWAYS);
    HBox head = new HBox(10, previous, left, title, right, next);
    head.setAlignment(Pos.CENTER);
    setTop(head);
    for (Label l : new Label[] {told, more, caution}) {
      l.setWrapText(true);
    }
    told.setId("card-told");
    told.getStyleClass().add("entry-where");
    more.getStyleClass().add("soft");
    caution.getStyleClass().add("field-caution");
    VBox foot = new VBox(2, told, caution, more);
    foot.getStyleClass().add("card-foot");
    setBottom(foot);
    addEventFilter(KeyEvent.KEY_PRESSED, this::typed);
    table.selectionProperty().addListener(o -> follow());
    table.notationProperty().addListener(o -> turnTo(card.tooth()));
    table.textSizeProperty().addListener(o -> turnTo(card.tooth()));
    card.chartProperty().addListener(o -> tell());
    turnTo(Tooth.T46);
    follow();
  }

  /** Shows the selected tooth, or the first of what is selected. */
  private void follow() {
    Worktable table = card.table();
    table
        .selected()
        .flatMap(
            s ->
                s instanceof Subject.OfTooth t
                    ? Optional.of(t.tooth())
                    : table.component(s).flatMap(c -> c.teeth().stream().findFirst()))
        .filter(t -> t != card.tooth())
        .ifPresent(this::turnTo);
  }

  private void turnTo(Tooth tooth) {
    boolean focused = getScene() != null && getScene().getFocusOwner() instanceof Knob;
    String focus = focused ? getScene().getFocusOwner().getId() : "";
    setCenter(null);
    setRight(null);
    card.turnTo(tooth);
    title.setText(
        Words.of(
            "card.title",
            card.table().notationProperty().get().format(tooth),
            ToothNames.full(tooth)));
    name(previous, -1, "card.previous");
    name(next, 1, "card.next");
    CardFields beside = new CardFields(card, tooth);
    fields = Optional.of(beside);
    PlanPicture plan = new PlanPicture(card, tooth, this::write, this::look);
    FacePicture buccal = new FacePicture(card, tooth, Face.BUCCAL, this::write, this::look);
    FacePicture lingual = new FacePicture(card, tooth, Face.LINGUAL, this::write, this::look);
    SidePicture side = new SidePicture(card, tooth, this::write, this::look);
    FlowPane pictures = new FlowPane(plan, buccal, side, lingual);
    pictures.getStyleClass().add("card-pictures");
    // Large type leaves no room for numbers beside the pictures: there they follow below.
    boolean below = card.table().textSizeProperty().get() > MOST_BESIDE;
    ScrollPane middle = new ScrollPane(below ? new VBox(14, pictures, beside) : pictures);
    middle.setFitToWidth(true);
    setCenter(middle);
    if (!below) {
      ScrollPane rest = new ScrollPane(beside);
      rest.setFitToWidth(true);
      rest.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
      rest.getStyleClass().add("card-rest");
      setRight(rest);
    }
    if (focused) {
      applyCss();
      Optional.ofNullable(lookup("#" + focus)).ifPresent(javafx.scene.Node::requestFocus);
    }
    tell();
  }

  private void name(Button button, int by, String key) {
    Optional<Tooth> to = beside(by);
    button.setDisable(to.isEmpty());
    button.setText(
        Words.of(key, to.map(t -> card.table().notationProperty().get().format(t)).orElse(""))
            .strip());
  }

  private Optional<Tooth> beside(int by) {
    Arch arch = card.tooth().arch();
    int place = card.tooth().place() + by;
    return place < 0 || place > 15 ? Optional.empty() : Optional.of(Tooth.at(arch, place));
  }

  private void walk(int by) {
    beside(by).ifPresent(t -> card.table().select(Subject.of(t)));
  }

  private void typed(KeyEvent e) {
    KeyCode c = e.getCode();
    // In a text these go by words.
    boolean free = e.isShortcutDown() && !(e.getTarget() instanceof TextInputControl);
    boolean back = c == KeyCode.PAGE_UP || c == KeyCode.LEFT && free;
    boolean on = c == KeyCode.PAGE_DOWN || c == KeyCode.RIGHT && free;
    if ((back || on) && !e.isAltDown() && !e.isShiftDown()) {
      walk(on ? 1 : -1);
      e.consume();
    }
  }

  private Optional<Knob> looked = Optional.empty();

  private void look(Knob knob) {
    looked = Optional.of(knob);
    tell();
  }

  private void tell() {
    if (looked.isEmpty() || looked.get().getScene() == null) {
      boolean stands = card.chart().stands(card.tooth());
      told.setText(Words.of(stands ? "card.hint" : "card.lost"));
      more.setText(Words.of("card.keys"));
      caution.setText("");
      return;
    }
    Touch touch = looked.get().touch();
    Tooth tooth = card.tooth();
    Item item = touch.item();
    told.setText(
        Words.of("card.knob", Words.capital(touch.name(tooth)), touch.words(card.chart(), tooth)));
    caution.setText(item.caution(card.chart(), tooth).orElse(""));
    more.setText(
        item.published(tooth)
            .map(s -> Words.of("survey.published", s))
            .orElseGet(() -> Words.of("card.keys")));
  }

  /** Puts the focus on the first zone. */
  public void focus() {
    applyCss();
    lookupAll(".knob").stream()
        .filter(javafx.scene.Node::isFocusTraversable)
        .findFirst()
        .ifPresent(javafx.scene.Node::requestFocus);
  }

  private void write(Knob from, Optional<String> typed) {
    fields.flatMap(f -> f.field(from)).ifPresent(f -> f.write(from, typed));
  }
}
