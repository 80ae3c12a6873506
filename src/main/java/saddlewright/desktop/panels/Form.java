package saddlewright.desktop.panels;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import javafx.geometry.HPos;
import javafx.scene.Node;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Hyperlink;
import javafx.scene.control.Label;
import javafx.scene.control.TextArea;
import javafx.scene.control.TextField;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import saddlewright.chart.ArchChart;
import saddlewright.dentition.Tooth;
import saddlewright.desktop.InWords;
import saddlewright.desktop.Words;
import saddlewright.desktop.survey.Entry;
import saddlewright.desktop.survey.NumberItem;

/** Labelled fields in two columns, with errors beside the field that has them. */
final class Form extends GridPane {
  private int row;

  Form() {
    getStyleClass().add("form");
    ColumnConstraints names = new ColumnConstraints();
    names.setHalignment(HPos.LEFT);
    names.setPercentWidth(39);
    ColumnConstraints values = new ColumnConstraints();
    values.setHgrow(Priority.ALWAYS);
    getColumnConstraints().addAll(names, values);
  }

  void heading(String text) {
    Label l = new Label(text);
    l.setWrapText(true);
    l.setMinHeight(USE_PREF_SIZE);
    l.getStyleClass().add("form-heading");
    add(l, 0, row++, 2, 1);
  }

  void wide(Node node) {
    add(node, 0, row++, 2, 1);
  }

  void words(String text) {
    Label l = new Label(text);
    l.setWrapText(true);
    l.setMinHeight(USE_PREF_SIZE);
    l.getStyleClass().add("form-words");
    wide(l);
  }

  void fact(String name, String value) {
    Label v = new Label(value);
    v.setWrapText(true);
    v.setMinHeight(USE_PREF_SIZE);
    line(name, v, v);
  }

  void link(String text, Runnable action) {
    Hyperlink link = new Hyperlink(text);
    link.setWrapText(true);
    link.setOnAction(e -> action.run());
    wide(link);
  }

  /** A choice; taking it acts at once. */
  <T> void choice(
      String id, String name, List<T> options, T now, Function<T, String> words, Consumer<T> set) {
    ComboBox<T> box = new ComboBox<>();
    box.setId(id);
    box.getItems().setAll(options);
    box.setConverter(new InWords<>(words));
    box.setValue(now);
    box.setMaxWidth(Double.MAX_VALUE);
    box.setOnAction(
        e -> {
          if (box.getValue() != null && !box.getValue().equals(now)) {
            set.accept(box.getValue());
          }
        });
    line(name, box, box);
  }

  void check(String id, String name, boolean now, Consumer<Boolean> set) {
    CheckBox box = new CheckBox(name);
    box.setId(id);
    box.setSelected(now);
    box.setOnAction(e -> set.accept(box.isSelected()));
    wide(box);
  }

  /**
   * An item of the survey that is a number and may be left empty; a value that is not usual is
   * taken with a word of caution.
   *
   * @param set takes the chart with the number
   */
  void number(String name, NumberItem item, ArchChart chart, Tooth tooth, Consumer<ArchChart> set) {
    String now = item.text(chart, tooth);
    Label behind = new Label(item.unitAndRange(tooth));
    item.published(tooth).ifPresent(s -> behind.setTooltip(source(s)));
    TextField field =
        entry(
            item.id(),
            name,
            behind,
            now,
            item.caution(chart, tooth),
            text -> {
              Entry entry = item.enter(chart, tooth, text);
              if (entry instanceof Entry.Taken taken) {
                set.accept(taken.chart());
                return "";
              }
              return ((Entry.Refused) entry).sentence();
            });
    item.published(tooth).ifPresent(field::setAccessibleHelp);
  }

  private static Tooltip source(String text) {
    Tooltip tip = new Tooltip(Words.of("survey.published", text));
    tip.setWrapText(true);
    tip.setMaxWidth(420);
    return tip;
  }

  /** A number about which nothing was published. */
  void number(
      String id, String name, String unit, Optional<Double> now, Consumer<Optional<Double>> set) {
    number(id, name, unit, now, Optional.empty(), set);
  }

  /**
   * A number that may be left empty.
   *
   * @param unit shown behind the field, with what is usual or possible
   * @param caution what is odd about the number
   * @param set takes the number; refuses it with an IllegalArgumentException whose message is shown
   */
  void number(
      String id,
      String name,
      String unit,
      Optional<Double> now,
      Optional<String> caution,
      Consumer<Optional<Double>> set) {
    entry(
        id,
        name,
        new Label(unit),
        now.map(Form::exact).orElse(""),
        caution,
        written -> {
          String text = written.replace(',', '.');
          try {
            set.accept(text.isEmpty() ? Optional.empty() : Optional.of(Double.valueOf(text)));
            return "";
          } catch (NumberFormatException e) {
            return Words.of("error.not-a-number", text);
          } catch (IllegalArgumentException e) {
            return Words.capital(e.getMessage()) + ".";
          }
        });
  }

  /**
   * A field for a short text, taken over on Enter or when it is left.
   *
   * @param take takes the text; what it answers is shown below the field
   */
  private TextField entry(
      String id,
      String name,
      Label behind,
      String now,
      Optional<String> caution,
      Function<String, String> take) {
    TextField field = new TextField(now);
    field.setId(id);
    field.setPrefColumnCount(5);
    field.getStyleClass().add("number-entry");
    Label error = error();
    behind.getStyleClass().add("unit");
    behind.setMinWidth(USE_PREF_SIZE);
    Runnable commit =
        () -> {
          String text = field.getText().strip();
          show(error, text.equals(now) ? "" : take.apply(text));
        };
    field.setOnAction(e -> commit.run());
    field
        .focusedProperty()
        .addListener(
            (o, was, is) -> {
              if (was && !is) {
                commit.run();
              }
            });
    HBox values = new HBox(6, field, behind);
    values.setAlignment(javafx.geometry.Pos.CENTER_LEFT);
    VBox block = new VBox(2, values, error);
    caution.ifPresent(
        c -> {
          Label l = new Label(c);
          l.setWrapText(true);
          l.setMinHeight(USE_PREF_SIZE);
          l.getStyleClass().add("field-caution");
          l.setId(id + "-caution");
          block.getChildren().add(l);
        });
    line(name, block, field);
    return field;
  }

  /** The number with all its digits, to four decimals: what is edited must not be rounded. */
  private static String exact(double value) {
    return BigDecimal.valueOf(value)
        .setScale(4, RoundingMode.HALF_UP)
        .stripTrailingZeros()
        .toPlainString();
  }

  /** A line of text; taken over on Enter or when the field is left. */
  void text(String id, String name, String now, Consumer<String> set) {
    TextField field = new TextField(now);
    field.setId(id);
    Runnable commit =
        () -> {
          if (!field.getText().equals(now)) {
            set.accept(field.getText());
          }
        };
    field.setOnAction(e -> commit.run());
    field
        .focusedProperty()
        .addListener(
            (o, was, is) -> {
              if (was && !is) {
                commit.run();
              }
            });
    line(name, field, field);
  }

  /** Several lines of text; taken over when the field is left. */
  TextArea area(String id, String name, String now, int rows, Consumer<String> set) {
    TextArea field = new TextArea(now);
    field.setId(id);
    field.setWrapText(true);
    field.setPrefRowCount(rows);
    field
        .focusedProperty()
        .addListener(
            (o, was, is) -> {
              if (was && !is && !field.getText().equals(now)) {
                set.accept(field.getText());
              }
            });
    Label label = new Label(name);
    label.setLabelFor(field);
    wide(label);
    wide(field);
    return field;
  }

  private void line(String name, Node value, Node named) {
    Label label = new Label(name);
    label.setWrapText(true);
    label.setLabelFor(named);
    label.getStyleClass().add("field-name");
    named.setAccessibleText(name);
    label.setMinHeight(USE_PREF_SIZE);
    FormLine line = new FormLine(label, value);
    GridPane.setHgrow(line, Priority.ALWAYS);
    wide(line);
  }

  private static Label error() {
    Label l = new Label();
    l.getStyleClass().add("field-error");
    l.setWrapText(true);
    l.setManaged(false);
    l.setVisible(false);
    return l;
  }

  private static void show(Label error, String text) {
    error.setText(text);
    error.setManaged(!text.isEmpty());
    error.setVisible(!text.isEmpty());
  }
}
