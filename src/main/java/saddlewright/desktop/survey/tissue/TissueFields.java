package saddlewright.desktop.survey.tissue;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ComboBox;
import javafx.scene.control.ContentDisplay;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import javafx.scene.shape.CubicCurveTo;
import javafx.scene.shape.MoveTo;
import javafx.scene.shape.Path;
import saddlewright.chart.ArchChart;
import saddlewright.chart.SoftTissues;
import saddlewright.chart.SoftTissues.PalateForm;
import saddlewright.chart.SoftTissues.RidgeState;
import saddlewright.chart.SoftTissues.Torus;
import saddlewright.dentition.Arch;
import saddlewright.dentition.Side;
import saddlewright.desktop.InWords;
import saddlewright.desktop.Words;
import saddlewright.desktop.Worktable;
import saddlewright.desktop.survey.Items;

/** What is charted of the soft tissues of an arch as a whole. */
final class TissueFields extends VBox {
  private final Worktable table;
  private final Arch arch;
  private final List<Runnable> updates = new ArrayList<>();
  private boolean showing;

  TissueFields(Worktable table, Arch arch) {
    this.table = table;
    this.arch = arch;
    getStyleClass().add("card-fields");
    if (arch == Arch.UPPER) {
      palate();
      limit();
    } else {
      check(
          "tissue-lingual-frenum",
          Words.of("soft.lingual-frenum"),
          SoftTissues::highLingualFrenum,
          SoftTissues::withHighLingualFrenum);
    }
    for (Torus torus : Torus.values()) {
      if ((torus == Torus.PALATAL) == (arch == Arch.UPPER)) {
        check(
            "tissue-torus-" + torus,
            Words.of(torus),
            s -> s.tori().contains(torus),
            (s, on) -> s.withTori(toggled(s.tori(), torus, on)));
      }
    }
    for (Side side : Side.values()) {
      ridge(side);
    }
    update();
  }

  /** Shows what is charted now. */
  void update() {
    showing = true;
    updates.forEach(Runnable::run);
    showing = false;
  }

  private SoftTissues now() {
    return table.current().chart(arch).softTissues();
  }

  private void soft(Function<SoftTissues, SoftTissues> change) {
    if (showing) {
      return;
    }
    ArchChart chart = table.current().chart(arch);
    table.apply(
        Words.of("edit.soft", arch.code()),
        table.current().with(chart.with(change.apply(chart.softTissues()))));
  }

  /** The vault in section, one button for each form. */
  private void palate() {
    Label name = new Label(Words.of("soft.palate"));
    name.getStyleClass().add("form-heading");
    ToggleGroup group = new ToggleGroup();
    FlowPane row = new FlowPane(6, 6);
    for (PalateForm form : PalateForm.values()) {
      ToggleButton b = new ToggleButton(Words.of(form), vault(form));
      b.setId("tissue-palate-" + form);
      b.setContentDisplay(ContentDisplay.TOP);
      b.getStyleClass().add("tool");
      b.setToggleGroup(group);
      b.setOnAction(
          e -> soft(s -> s.withPalate(b.isSelected() ? Optional.of(form) : Optional.empty())));
      updates.add(() -> b.setSelected(now().palate().filter(form::equals).isPresent()));
      row.getChildren().add(b);
    }
    getChildren().addAll(name, row);
  }

  private static Node vault(PalateForm form) {
    double rise =
        switch (form) {
          case SHALLOW -> 12;
          case MEDIUM -> 23;
          case HIGH -> 35;
        };
    Path p = new Path();
    p.getElements()
        .addAll(
            new MoveTo(0, 40),
            new CubicCurveTo(9, 40, 9, 40 - rise, 28, 40 - rise),
            new CubicCurveTo(47, 40 - rise, 47, 40, 56, 40));
    p.getStyleClass().add("vault");
    StackPane box = new StackPane(p);
    box.setAlignment(Pos.BOTTOM_CENTER);
    box.setMinSize(60, 44);
    return box;
  }

  private void limit() {
    TextField field = new TextField();
    field.setId("tissue-palate-limit");
    field.getStyleClass().add("value-input");
    Label said = new Label();
    said.getStyleClass().add("field-error");
    said.setWrapText(true);
    said.managedProperty().bind(said.textProperty().isNotEmpty());
    Runnable enter =
        () -> {
          String text = field.getText().strip().replace(',', '.');
          try {
            Optional<Double> mm =
                text.isEmpty() ? Optional.empty() : Optional.of(Double.valueOf(text));
            said.setText("");
            if (!mm.equals(now().palateLimit())) {
              soft(s -> s.withPalateLimit(mm));
            }
          } catch (NumberFormatException e) {
            said.setText(Words.of("error.not-a-number", text));
          } catch (IllegalArgumentException e) {
            said.setText(Words.capital(e.getMessage()) + ".");
          }
        };
    field.setOnAction(e -> enter.run());
    field
        .focusedProperty()
        .addListener(
            (o, was, is) -> {
              if (!is) {
                enter.run();
              }
            });
    updates.add(() -> field.setText(now().palateLimit().map(Words::number).orElse("")));
    Label odd = new Label();
    odd.getStyleClass().add("field-caution");
    odd.setWrapText(true);
    odd.managedProperty().bind(odd.textProperty().isNotEmpty());
    updates.add(
        () -> odd.setText(now().palateLimit().flatMap(Items::palateLimitCaution).orElse("")));
    line(Words.of("soft.palate-limit"), field, new Label(Words.of("unit.palate-limit")));
    getChildren().addAll(said, odd);
  }

  private void check(
      String id,
      String name,
      java.util.function.Predicate<SoftTissues> is,
      java.util.function.BiFunction<SoftTissues, Boolean, SoftTissues> with) {
    CheckBox box = new CheckBox(name);
    box.setId(id);
    box.setOnAction(e -> soft(s -> with.apply(s, box.isSelected())));
    updates.add(() -> box.setSelected(is.test(now())));
    getChildren().add(box);
  }

  private void ridge(Side side) {
    ComboBox<Optional<RidgeState>> box = new ComboBox<>();
    box.setId("tissue-ridge-" + side);
    box.getItems().add(Optional.empty());
    for (RidgeState r : RidgeState.values()) {
      box.getItems().add(Optional.of(r));
    }
    box.setConverter(
        new InWords<>(o -> o.map(Words::of).orElseGet(() -> Words.of("survey.uncharted"))));
    box.setOnAction(
        e -> {
          if (box.getValue() != null) {
            soft(s -> s.withRidge(side, box.getValue()));
          }
        });
    updates.add(() -> box.setValue(Optional.ofNullable(now().ridges().get(side))));
    line(Words.of("soft.ridge", Words.of(side)), box, new Label());
  }

  private void line(String name, javafx.scene.control.Control control, Label unit) {
    Label l = new Label(name);
    l.setLabelFor(control);
    l.getStyleClass().add("field-name");
    l.setWrapText(true);
    control.setAccessibleText(name);
    unit.getStyleClass().add("unit");
    unit.setMinWidth(USE_PREF_SIZE);
    HBox row = new HBox(8, l, control, unit);
    row.setAlignment(javafx.geometry.Pos.CENTER_LEFT);
    row.getStyleClass().add("value-field");
    getChildren().add(row);
  }

  private static Set<Torus> toggled(Set<Torus> tori, Torus torus, boolean on) {
    Set<Torus> out = EnumSet.noneOf(Torus.class);
    out.addAll(tori);
    if (on) {
      out.add(torus);
    } else {
      out.remove(torus);
    }
    return out;
  }
}
