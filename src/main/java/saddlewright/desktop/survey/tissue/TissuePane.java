package saddlewright.desktop.survey.tissue;

import java.util.Optional;
import javafx.scene.control.Label;
import javafx.scene.control.RadioButton;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.control.ToggleGroup;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import saddlewright.chart.ArchChart;
import saddlewright.dentition.Arch;
import saddlewright.dentition.Face;
import saddlewright.dentition.Tooth;
import saddlewright.design.Subject;
import saddlewright.desktop.Words;
import saddlewright.desktop.Worktable;
import saddlewright.desktop.history.Gesture;
import saddlewright.desktop.survey.Entry;
import saddlewright.desktop.survey.Item;
import saddlewright.desktop.survey.picture.Knob;
import saddlewright.desktop.survey.picture.Surveyed;

/** The soft tissues of an arch as pictures, with what is charted of the arch as a whole. */
public final class TissuePane extends BorderPane {
  /** Text up to this size leaves the section beside the arch. */
  private static final double MOST_BESIDE = 1.4;

  private final Surveyed survey;
  private final RadioButton upper = new RadioButton(Words.of("entry.arch.upper"));
  private final RadioButton lower = new RadioButton(Words.of("entry.arch.lower"));
  private final Label told = new Label();
  private final Label caution = new Label();
  private final Label more = new Label();
  private final TextField number = new TextField();
  private final Label unit = new Label();
  private final HBox writing = new HBox(8, number, unit);
  private Optional<Knob> looked = Optional.empty();
  private Optional<TissueFields> fields = Optional.empty();
  private Optional<SulcusSection> section = Optional.empty();

  public TissuePane(Worktable table) {
    survey = new Surveyed(table);
    setId("tissue");
    getStyleClass().addAll("panel", "tooth-card", "tissue");
    ToggleGroup group = new ToggleGroup();
    upper.setToggleGroup(group);
    lower.setToggleGroup(group);
    upper.setId("tissue-upper");
    lower.setId("tissue-lower");
    upper.setOnAction(e -> show(Arch.UPPER, Tooth.T11));
    lower.setOnAction(e -> show(Arch.LOWER, Tooth.T41));
    FlowPane tabs = new FlowPane(lower, upper);
    tabs.getStyleClass().add("entry-tabs");
    setTop(tabs);
    for (Label l : new Label[] {told, caution, more}) {
      l.setWrapText(true);
    }
    told.setId("tissue-told");
    told.getStyleClass().add("entry-where");
    more.getStyleClass().add("soft");
    number.setId("tissue-number");
    number.getStyleClass().add("value-input");
    writing.setAlignment(javafx.geometry.Pos.CENTER_LEFT);
    number.setOnAction(e -> enter(true));
    number
        .focusedProperty()
        .addListener(
            (o, was, is) -> {
              if (!is) {
                enter(false);
              }
            });
    number.addEventFilter(KeyEvent.KEY_PRESSED, this::typed);
    HBox line = new HBox(14, told, writing);
    line.setAlignment(javafx.geometry.Pos.CENTER_LEFT);
    VBox foot = new VBox(3, line, caution, more);
    foot.getStyleClass().add("card-foot");
    setBottom(foot);
    survey.chartProperty().addListener(o -> tell());
    table
        .currentProperty()
        .addListener(
            o -> {
              fields.ifPresent(TissueFields::update);
              tell();
            });
    table.textSizeProperty().addListener(o -> show(survey.tooth().arch(), survey.tooth()));
    Tooth first =
        table
            .selected()
            .filter(Subject.OfTooth.class::isInstance)
            .map(s -> ((Subject.OfTooth) s).tooth())
            .orElse(
                table.selected().map(Subject::arch).filter(Arch.UPPER::equals).isPresent()
                    ? Tooth.T11
                    : Tooth.T41);
    show(first.arch(), first);
  }

  private void show(Arch arch, Tooth tooth) {
    (arch == Arch.UPPER ? upper : lower).setSelected(true);
    looked = Optional.empty();
    setCenter(null);
    setRight(null);
    survey.turnTo(tooth);
    TissueFields all = new TissueFields(survey.table(), arch);
    fields = Optional.of(all);
    SulcusPicture buccal = new SulcusPicture(survey, arch, Face.BUCCAL, this::write, this::look);
    VBox pictures = new VBox(10);
    VBox beside = new VBox(10);
    beside.getStyleClass().add("tissue-beside");
    if (arch == Arch.LOWER) {
      SulcusSection s = new SulcusSection(survey, this::write, this::look);
      section = Optional.of(s);
      beside.getChildren().add(s);
      pictures
          .getChildren()
          .add(new SulcusPicture(survey, arch, Face.LINGUAL, this::write, this::look));
    } else {
      section = Optional.empty();
    }
    pictures.getChildren().add(buccal);
    beside.getChildren().add(all);
    boolean below = survey.table().textSizeProperty().get() > MOST_BESIDE;
    if (below) {
      pictures.getChildren().add(beside);
    }
    ScrollPane middle = new ScrollPane(pictures);
    middle.setFitToWidth(true);
    setCenter(middle);
    if (!below) {
      ScrollPane rest = new ScrollPane(beside);
      rest.setFitToWidth(true);
      rest.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
      rest.getStyleClass().add("card-rest");
      setRight(rest);
    }
    tell();
  }

  private void look(Knob knob) {
    // While a number is being written, what the pointer passes over is not meant.
    if (looked.filter(knob::equals).isPresent() || number.isFocused() && !knob.isFocused()) {
      return;
    }
    looked = Optional.of(knob);
    if (knob.tooth() != survey.tooth()) {
      survey.turnTo(knob.tooth());
      section.ifPresent(SulcusSection::redraw);
    }
    tell();
  }

  private void tell() {
    boolean known = looked.isPresent() && looked.get().getScene() != null;
    writing.setVisible(known && !looked.get().touch().item().unit().isEmpty());
    if (!known) {
      told.setText(Words.of("tissue.hint"));
      caution.setText("");
      more.setText(Words.of("tissue.keys"));
      return;
    }
    Knob k = looked.get();
    Item item = k.touch().item();
    told.setText(
        Words.of(
            "tissue.knob",
            survey.table().notationProperty().get().format(k.tooth()),
            k.touch().name(k.tooth()),
            k.touch().words(survey.chart(), k.tooth())));
    if (!number.isFocused()) {
      number.setText(item.text(survey.chart(), k.tooth()));
    }
    unit.setText(item.unit());
    say(item.caution(survey.chart(), k.tooth()).orElse(""), "field-caution");
    more.setText(
        item.published(k.tooth())
            .map(s -> Words.of("survey.published", s))
            .orElseGet(() -> Words.of("tissue.keys")));
  }

  private void say(String words, String style) {
    caution.setText(words);
    caution.getStyleClass().setAll("label", style);
  }

  private void write(Knob from, Optional<String> typed) {
    look(from);
    number.requestFocus();
    typed.ifPresent(number::setText);
    if (typed.isPresent()) {
      number.end();
      number.deselect();
    } else {
      number.selectAll();
    }
  }

  private void typed(KeyEvent e) {
    if (e.getCode() == KeyCode.ESCAPE) {
      looked.ifPresent(k -> number.setText(k.touch().item().text(survey.settled(), k.tooth())));
      looked.ifPresent(Knob::requestFocus);
      tell();
      e.consume();
    }
  }

  /** Takes over the number that is written, and goes back to the picture. */
  private void enter(boolean back) {
    if (looked.isEmpty()) {
      return;
    }
    Knob k = looked.get();
    Item item = k.touch().item();
    ArchChart chart = survey.table().current().chart(k.tooth().arch());
    if (!number.getText().strip().equals(item.text(chart, k.tooth()))) {
      Entry entry = item.enter(chart, k.tooth(), number.getText());
      if (entry instanceof Entry.Refused no) {
        say(no.sentence(), "field-error");
        return;
      }
      survey.commit(k.touch(), k.tooth(), ((Entry.Taken) entry).chart(), new Gesture());
    }
    if (back) {
      k.requestFocus();
    }
    tell();
  }
}
