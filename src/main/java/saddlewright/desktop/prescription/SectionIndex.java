package saddlewright.desktop.prescription;

import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import javafx.css.PseudoClass;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import saddlewright.desktop.Words;
import saddlewright.prescription.FormSection;

/**
 * The sections of the form, each a way to it: a list beside the form, or a menu where it is narrow.
 */
final class SectionIndex extends VBox {
  private static final PseudoClass READING = PseudoClass.getPseudoClass("reading");

  private final FormPage form;
  private final Map<FormSection, Button> buttons = new EnumMap<>(FormSection.class);
  private final Map<FormSection, Label> states = new EnumMap<>(FormSection.class);
  private final MenuButton menu = new MenuButton(Words.of("sections.menu"));
  private final VBox list = new VBox(1);

  SectionIndex(FormPage form) {
    this.form = form;
    getStyleClass().add("section-index");
    ScrollPane scroll = new ScrollPane(list);
    scroll.setFitToWidth(true);
    scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
    VBox.setVgrow(scroll, Priority.ALWAYS);
    getChildren().add(scroll);
    menu.setId("sections-menu");
    menu.setMinWidth(USE_PREF_SIZE);
    form.vvalueProperty().addListener(o -> mark());
  }

  /** The same as a menu. */
  MenuButton menu() {
    return menu;
  }

  void refresh() {
    List<SectionCard> sections = form.sections();
    Set<FormSection> kept = new HashSet<>();
    for (SectionCard c : sections) {
      kept.add(c.section());
      Button b = buttons.computeIfAbsent(c.section(), s -> button(c));
      states.get(c.section()).setText(c.sign());
      b.setAccessibleText(c.section().title() + ": " + c.state());
    }
    List<Button> now = sections.stream().map(c -> buttons.get(c.section())).toList();
    if (!list.getChildren().equals(now)) {
      list.getChildren().setAll(now);
    }
    menu.getItems()
        .setAll(
            sections.stream()
                .map(
                    c -> {
                      MenuItem item = new MenuItem(c.sign() + "  " + c.section().title());
                      item.setMnemonicParsing(false);
                      item.setOnAction(e -> form.go(c));
                      return item;
                    })
                .toList());
    mark();
  }

  private Button button(SectionCard card) {
    Label name = new Label(card.section().title());
    name.setMaxWidth(Double.MAX_VALUE);
    name.setWrapText(true);
    name.setMinHeight(USE_PREF_SIZE);
    HBox.setHgrow(name, Priority.ALWAYS);
    Label state = new Label();
    state.getStyleClass().add("section-sign");
    state.setMinWidth(USE_PREF_SIZE);
    states.put(card.section(), state);
    HBox row = new HBox(6, name, state);
    row.setAlignment(Pos.CENTER_LEFT);
    Button b = new Button();
    b.setGraphic(row);
    b.setId("to-" + card.section());
    b.getStyleClass().add("section-link");
    b.setMaxWidth(Double.MAX_VALUE);
    row.prefWidthProperty().bind(b.widthProperty().subtract(18));
    b.setOnAction(e -> form.go(card));
    return b;
  }

  private void mark() {
    form.reading()
        .ifPresent(now -> buttons.forEach((s, b) -> b.pseudoClassStateChanged(READING, s == now)));
  }
}
