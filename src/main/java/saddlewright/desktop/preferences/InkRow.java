package saddlewright.desktop.preferences;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javafx.beans.property.ObjectProperty;
import javafx.beans.value.ObservableBooleanValue;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.ColorPicker;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.scene.paint.Color;
import saddlewright.desktop.Words;
import saddlewright.desktop.inks.Colour;
import saddlewright.desktop.inks.InkCheck;
import saddlewright.desktop.inks.Inks;
import saddlewright.drawing.Ink;
import saddlewright.drawing.Palette;

/** One ink: its colour, chosen or typed, and how well what is drawn in it can be seen. */
final class InkRow extends VBox {
  private final Preferences preferences;
  private final ObservableBooleanValue dark;
  private final Ink ink;
  private final ColorPicker picker = new ColorPicker();
  private final TextField hex = new TextField();
  private final Label contrast = Page.words("", "preferences-hint");
  private final Label trouble = Page.words("", "field-error");
  private final Button better = new Button();
  private final Button usual = new Button(Words.of("preferences.ink-usual"));
  private final HBox remedy = new HBox(8, trouble, better);
  private Optional<String> nearest = Optional.empty();
  private String now = "";

  InkRow(Preferences preferences, ObservableBooleanValue dark, Ink ink) {
    this.preferences = preferences;
    this.dark = dark;
    this.ink = ink;
    String key = Setting.kebab(ink);
    String name = Words.of(ink);
    getStyleClass().add("ink-row");
    picker.setId("ink-" + key);
    picker.getStyleClass().add("ink-picker");
    picker.setAccessibleText(Words.of("preferences.ink-choose", name));
    picker.setOnAction(e -> take(Optional.of(hex(picker.getValue()))));
    Label label = new Label(name);
    label.setLabelFor(picker);
    label.setMinWidth(0);
    label.setWrapText(true);
    label.setMaxWidth(Double.MAX_VALUE);
    HBox.setHgrow(label, Priority.ALWAYS);
    hex.setId("ink-" + key + "-hex");
    hex.setAccessibleText(Words.of("preferences.ink-hex", name));
    hex.setPrefColumnCount(6);
    hex.setMinWidth(Region.USE_PREF_SIZE);
    hex.setOnAction(e -> typed());
    hex.focusedProperty()
        .addListener(
            (o, was, focused) -> {
              if (!focused) {
                typed();
              }
            });
    usual.setId("ink-" + key + "-usual");
    usual.setAccessibleText(Words.of("preferences.ink-usual-of", name));
    usual.setMinWidth(Region.USE_PREF_SIZE);
    usual.setOnAction(e -> take(Optional.empty()));
    better.setId("ink-" + key + "-better");
    better.setMinWidth(Region.USE_PREF_SIZE);
    better.setOnAction(e -> take(nearest));
    trouble.setId("ink-" + key + "-trouble");
    HBox.setHgrow(trouble, Priority.ALWAYS);
    remedy.setAlignment(Pos.CENTER_LEFT);
    remedy.managedProperty().bind(remedy.visibleProperty());
    contrast.setId("ink-" + key + "-contrast");
    HBox line = new HBox(8, picker, label, hex, usual);
    line.setAlignment(Pos.CENTER_LEFT);
    getChildren().addAll(line, contrast, remedy);
  }

  private ObjectProperty<Optional<String>> chosen() {
    return preferences.inkProperty(dark.get(), ink);
  }

  private static Palette own(boolean darkDesk) {
    return Inks.USUAL.on(darkDesk);
  }

  private void take(Optional<String> colour) {
    // The program's own colour is no choice of the user's, so that it may change with the program.
    chosen().set(colour.filter(c -> !c.equals(own(dark.get()).hex(ink))));
  }

  private void typed() {
    Optional<Colour> colour = Colour.parse(hex.getText());
    if (colour.isPresent()) {
      take(colour.map(Colour::hex));
      hex.setText(now);
    } else {
      say(Words.of("preferences.ink-not-a-colour", hex.getText()), Optional.empty());
    }
  }

  /** Shows the colour that holds in a palette, and what is to be said of it. */
  void refresh(Palette palette, InkCheck check) {
    now = palette.hex(ink);
    picker.setValue(Color.web(now));
    hex.setText(now);
    usual.setDisable(chosen().get().isEmpty());
    List<InkCheck.Standing> standings = check.standings(ink);
    InkCheck.Standing worst = standings.get(0);
    boolean surface = worst.ground() == ink;
    boolean passes = worst.passes();
    contrast.setText(
        Words.of(
            surface ? "preferences.ink-under" : "preferences.ink-on",
            passes ? "✓" : "✗",
            ratio(worst.ratio()),
            Words.of(surface ? worst.ink() : worst.ground()).toLowerCase(Locale.ROOT),
            plain(worst.least())));
    if (passes) {
      boolean printed =
          dark.get() || preferences.inksProperty().get().onPaper().hex(ink).equals(now);
      say(
          printed || ink == Ink.PAPER ? "" : Words.of("preferences.ink-not-printed"),
          Optional.empty());
    } else {
      Optional<String> found = check.nearest(ink);
      say(
          found.isPresent()
              ? Words.of("preferences.ink-weak")
              : Words.of("preferences.ink-hopeless"),
          found);
    }
  }

  private void say(String sentence, Optional<String> colour) {
    nearest = colour;
    trouble.setText(sentence);
    remedy.setVisible(!sentence.isEmpty());
    better.setVisible(colour.isPresent());
    better.setManaged(colour.isPresent());
    colour.ifPresent(
        c -> {
          better.setText(Words.of("preferences.ink-better", c));
          Region swatch = new Region();
          swatch.getStyleClass().add("swatch");
          swatch.setStyle("-fx-background-color: " + c);
          better.setGraphic(swatch);
        });
  }

  private static String ratio(double ratio) {
    return String.format(Locale.ROOT, "%.2f : 1", ratio);
  }

  private static String plain(double least) {
    return Words.number(least) + " : 1";
  }

  private static String hex(Color c) {
    return new Colour(part(c.getRed()), part(c.getGreen()), part(c.getBlue())).hex();
  }

  private static int part(double share) {
    return (int) Math.round(share * 255);
  }
}
