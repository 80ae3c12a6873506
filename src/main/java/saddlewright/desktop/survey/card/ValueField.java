package saddlewright.desktop.survey.card;

import java.util.Optional;
import javafx.geometry.Pos;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Control;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.control.Tooltip;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import saddlewright.chart.ArchChart;
import saddlewright.dentition.Tooth;
import saddlewright.desktop.InWords;
import saddlewright.desktop.Words;
import saddlewright.desktop.history.Gesture;
import saddlewright.desktop.survey.ChoiceItem;
import saddlewright.desktop.survey.Entry;
import saddlewright.desktop.survey.Item;
import saddlewright.desktop.survey.NumberItem;
import saddlewright.desktop.survey.picture.Knob;
import saddlewright.desktop.survey.picture.Surveyed;

/** One item beside the pictures, as a number or a word that can be changed there. */
final class ValueField extends VBox {
  private final Surveyed card;
  // Its own: what is left unfinished when the card turns to another tooth still belongs to this
  // one.
  private final Tooth tooth;
  private final Item item;
  private final Label name;
  private final Label unit = new Label();
  private final Label remark = new Label();
  private final Optional<TextField> text;
  private final Optional<ComboBox<String>> choice;
  private Optional<Knob> askedBy = Optional.empty();
  private boolean showing;

  ValueField(Surveyed card, Tooth tooth, Item item, String title) {
    this.card = card;
    this.tooth = tooth;
    this.item = item;
    this.name = new Label(title);
    getStyleClass().add("value-field");
    name.getStyleClass().add("field-name");
    name.setWrapText(true);
    name.setMinHeight(Region.USE_PREF_SIZE);
    unit.getStyleClass().add("unit");
    unit.setMinWidth(Region.USE_PREF_SIZE);
    remark.setWrapText(true);
    remark.setMinHeight(Region.USE_PREF_SIZE);
    remark.managedProperty().bind(remark.textProperty().isNotEmpty());
    remark.visibleProperty().bind(remark.managedProperty());
    Control control;
    if (item instanceof ChoiceItem<?> c) {
      ComboBox<String> box = new ComboBox<>();
      box.setConverter(
          new InWords<>(w -> w.isEmpty() ? Words.of("survey.uncharted") : Words.capital(w)));
      box.getItems().add("");
      box.getItems().addAll(c.choices());
      box.setOnAction(
          e -> {
            if (!showing && box.getValue() != null) {
              enter(box.getValue());
            }
          });
      control = box;
      choice = Optional.of(box);
      text = Optional.empty();
    } else {
      TextField field = new TextField();
      field.setOnAction(e -> done());
      field.addEventFilter(KeyEvent.KEY_PRESSED, this::typed);
      field
          .focusedProperty()
          .addListener(
              (o, was, is) -> {
                if (!is) {
                  enter(field.getText());
                }
              });
      control = field;
      text = Optional.of(field);
      choice = Optional.empty();
    }
    control.getStyleClass().add("value-input");
    control.setId("card-" + item.id());
    control.setAccessibleText(title);
    name.setLabelFor(control);
    HBox line = new HBox(8, name, control, unit);
    line.setAlignment(Pos.CENTER_LEFT);
    getChildren().addAll(line, remark);
  }

  Item item() {
    return item;
  }

  void show(ArchChart chart) {
    showing = true;
    boolean asked = item.isAskedOf(chart, tooth);
    setVisible(asked);
    setManaged(asked);
    if (asked) {
      String now = item.text(chart, tooth);
      text.filter(f -> !f.isFocused() || !f.getText().equals(now)).ifPresent(f -> f.setText(now));
      choice.ifPresent(c -> c.setValue(now));
      unit.setText(item instanceof NumberItem n ? n.unitAndRange(tooth) : item.unit());
      item.published(tooth)
          .ifPresent(
              s -> {
                Tooltip tip = new Tooltip(Words.of("survey.published", s));
                tip.setWrapText(true);
                tip.setMaxWidth(420);
                unit.setTooltip(tip);
              });
      say(item.caution(chart, tooth).orElse(""), "field-caution");
    }
    showing = false;
  }

  private void say(String words, String style) {
    remark.setText(words);
    remark.getStyleClass().setAll("label", style);
  }

  /** Begins to write it, for a knob to which the focus goes back. */
  void write(Knob from, Optional<String> typed) {
    askedBy = Optional.of(from);
    text.ifPresent(
        f -> {
          f.requestFocus();
          typed.ifPresent(f::setText);
          if (typed.isPresent()) {
            f.end();
            f.deselect();
          } else {
            f.selectAll();
          }
        });
  }

  private void typed(KeyEvent e) {
    if (e.getCode() == KeyCode.ESCAPE) {
      String now = item.text(settled(), tooth);
      boolean changed = !text.orElseThrow().getText().equals(now);
      text.orElseThrow().setText(now);
      if (changed || askedBy.isPresent()) {
        e.consume();
      }
      back();
    }
  }

  private void done() {
    if (enter(text.orElseThrow().getText())) {
      back();
    }
  }

  private void back() {
    Optional<Knob> to = askedBy;
    askedBy = Optional.empty();
    to.ifPresent(Knob::requestFocus);
  }

  private ArchChart settled() {
    return card.table().current().chart(tooth.arch());
  }

  /** Takes over what is written; whether it could be used. */
  private boolean enter(String written) {
    ArchChart chart = settled();
    if (showing || !item.isAskedOf(chart, tooth)) {
      return false;
    }
    if (written.strip().equals(item.text(chart, tooth))) {
      say(item.caution(chart, tooth).orElse(""), "field-caution");
      return true;
    }
    Entry entry = item.enter(chart, tooth, written);
    if (entry instanceof Entry.Refused no) {
      say(no.sentence(), "field-error");
      return false;
    }
    Entry.Taken taken = (Entry.Taken) entry;
    String value = item.text(taken.chart(), tooth);
    card.table()
        .apply(
            Words.of(
                "edit.survey",
                tooth,
                item.name(tooth),
                value.isEmpty() ? Words.of("survey.uncharted") : value + " " + item.unit()),
            card.table().current().with(taken.chart()),
            new Gesture());
    taken.remark().ifPresent(r -> say(r, "soft"));
    return true;
  }
}
