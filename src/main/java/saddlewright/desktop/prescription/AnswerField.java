package saddlewright.desktop.prescription;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.css.PseudoClass;
import javafx.geometry.Pos;
import javafx.geometry.Side;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ContextMenu;
import javafx.scene.control.Label;
import javafx.scene.control.MenuItem;
import javafx.scene.control.SeparatorMenuItem;
import javafx.scene.control.TextField;
import javafx.scene.control.TextInputControl;
import javafx.scene.control.Tooltip;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import saddlewright.casefile.order.Answer;
import saddlewright.casefile.order.Answer.State;
import saddlewright.casefile.order.Item;
import saddlewright.desktop.Words;
import saddlewright.prescription.FormField;

/**
 * One control for an answer: words, typed or taken from the usual ones; or none, not applicable, or
 * to follow by a day. All but the words is in the menu behind it, which Alt+Down opens.
 */
final class AnswerField extends HBox {
  private static final PseudoClass STATED = PseudoClass.getPseudoClass("stated");

  /** What is typed for a state instead of choosing it. */
  private static final Map<String, State> SPOKEN =
      Map.of(
          "none", State.NONE,
          "n/a", State.NOT_APPLICABLE,
          "not applicable", State.NOT_APPLICABLE,
          "to follow", State.TO_FOLLOW);

  private final FormField field;
  private final Consumer<Answer> changed;
  private final Runnable left;
  private final TextInputControl words;
  private final Optional<CalendarButton> calendar;
  private final DayField by;
  private final HBox follow = new HBox(6);
  private final Button more = new Button();
  private Answer shown = Answer.BLANK;
  private boolean showing;

  /**
   * @param changed takes the answer whenever it becomes another, while it is typed as well
   * @param left is told when the field is left
   */
  AnswerField(FormField field, Item.Form form, Consumer<Answer> changed, Runnable left) {
    this.field = field;
    this.changed = changed;
    this.left = left;
    getStyleClass().add("answer-field");
    setAlignment(Pos.TOP_LEFT);
    words = form == Item.Form.LINES ? new Lines() : new TextField();
    words.setId("rx-" + field.key());
    HBox.setHgrow(words, Priority.ALWAYS);
    calendar =
        form == Item.Form.DATE ? Optional.of(new CalendarButton(this::picked)) : Optional.empty();
    calendar.ifPresent(c -> words.setPromptText(Words.of("day.prompt")));
    by =
        new DayField(
            "rx-" + field.key() + "-by",
            Words.of("answer.by", field.title()),
            d -> changed.accept(Answer.toFollow(d)));
    Label says = new Label(Words.of("answer.follows"));
    says.setMinWidth(Region.USE_PREF_SIZE);
    HBox.setHgrow(by, Priority.ALWAYS);
    follow.getChildren().addAll(says, by);
    follow.setAlignment(Pos.CENTER_LEFT);
    HBox.setHgrow(follow, Priority.ALWAYS);
    more.setId("rx-" + field.key() + "-more");
    more.getStyleClass().add("answer-more");
    Region arrow = new Region();
    arrow.getStyleClass().add("down-arrow");
    more.setGraphic(arrow);
    more.setFocusTraversable(false);
    more.setTooltip(new Tooltip(Words.of("answer.more")));
    more.setAccessibleText(Words.of("answer.more-of", field.title()));
    more.setOnAction(e -> openMenu());
    getChildren().add(words);
    calendar.ifPresent(getChildren()::add);
    getChildren().addAll(follow, more);
    words.textProperty().addListener(o -> typed());
    words
        .focusedProperty()
        .addListener(
            (o, was, is) -> {
              if (was && !is) {
                tidy();
              }
            });
    addEventFilter(KeyEvent.KEY_PRESSED, this::pressed);
    show(Answer.BLANK);
  }

  /** The input that takes the focus as it is now. */
  Node focus() {
    return shown.state() == State.TO_FOLLOW ? by.focus() : words;
  }

  /** The inputs, to be given their name. */
  List<Node> inputs() {
    return List.of(words, by.focus());
  }

  void show(Answer now) {
    showing = true;
    shown = now;
    boolean follows = now.state() == State.TO_FOLLOW;
    boolean stated = now.state() == State.NONE || now.state() == State.NOT_APPLICABLE;
    place(words, !follows);
    calendar.ifPresent(c -> place(c, !follows && !stated));
    place(follow, follows);
    words.setEditable(!stated);
    pseudoClassStateChanged(STATED, stated);
    String text = stated ? Words.of("answer." + now.state()) : now.text();
    if (!words.getText().strip().equals(text)) {
      words.setText(text);
    }
    if (words instanceof Lines l) {
      l.grow(stated);
    }
    calendar.ifPresent(c -> c.turnTo(DayWords.read(now.text())));
    by.show(now.by());
    showing = false;
  }

  private static void place(Node n, boolean on) {
    n.setVisible(on);
    n.setManaged(on);
  }

  private void typed() {
    if (!showing) {
      change(Answer.of(words.getText().strip()));
    }
  }

  private void change(Answer next) {
    if (!next.equals(shown)) {
      changed.accept(next);
    }
  }

  private void picked(LocalDate day) {
    words.setText(day.toString());
    words.requestFocus();
  }

  /** Reads what has been typed once more when the field is left. */
  private void tidy() {
    if (shown.state() == State.GIVEN) {
      State spoken = SPOKEN.get(shown.text().toLowerCase(Locale.ROOT));
      if (spoken != null) {
        change(answer(spoken));
      } else if (calendar.isPresent()) {
        DayWords.read(shown.text()).ifPresent(d -> change(Answer.of(d.toString())));
      }
    }
    left.run();
    show(shown);
  }

  private static Answer answer(State state) {
    return switch (state) {
      case NONE -> Answer.NONE;
      case NOT_APPLICABLE -> Answer.NOT_APPLICABLE;
      case TO_FOLLOW -> Answer.toFollow(Optional.empty());
      case BLANK, GIVEN -> Answer.BLANK;
    };
  }

  private void pressed(KeyEvent e) {
    if (e.getCode() == KeyCode.DOWN && e.isAltDown()) {
      e.consume();
      openMenu();
    } else if (e.getCode() == KeyCode.F4 && calendar.isPresent() && words.isFocused()) {
      e.consume();
      calendar.get().open(DayWords.read(shown.text()));
    } else if (words.isFocused()
        && !words.isEditable()
        && (e.getCode() == KeyCode.BACK_SPACE || e.getCode() == KeyCode.DELETE)) {
      e.consume();
      change(Answer.BLANK);
    }
  }

  private void openMenu() {
    menu().show(more, Side.BOTTOM, 0, 0);
  }

  private ContextMenu menu() {
    ContextMenu menu = new ContextMenu();
    for (String usual : field.usual()) {
      menu.getItems().add(item(usual, Answer.of(usual)));
    }
    if (!field.usual().isEmpty()) {
      menu.getItems().add(new SeparatorMenuItem());
    }
    calendar.ifPresent(
        c -> {
          MenuItem pick = new MenuItem(Words.of("day.pick"));
          pick.setOnAction(e -> c.open(DayWords.read(shown.text())));
          menu.getItems().add(pick);
        });
    for (State s : List.of(State.NONE, State.NOT_APPLICABLE, State.TO_FOLLOW)) {
      if (s != shown.state()) {
        menu.getItems().add(item(Words.of("answer.choose." + s), answer(s)));
      }
    }
    if (!shown.isBlank()) {
      menu.getItems().add(item(Words.of("answer.choose.BLANK"), Answer.BLANK));
    }
    return menu;
  }

  private MenuItem item(String name, Answer answer) {
    MenuItem item = new MenuItem(name);
    item.setMnemonicParsing(false);
    item.setOnAction(
        e -> {
          change(answer);
          focus().requestFocus();
        });
    return item;
  }
}
