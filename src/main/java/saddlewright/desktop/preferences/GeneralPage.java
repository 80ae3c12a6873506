package saddlewright.desktop.preferences;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import javafx.geometry.Pos;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Label;
import javafx.scene.control.Slider;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import saddlewright.dentition.Notation;
import saddlewright.desktop.Words;
import saddlewright.prescription.pdf.Paper;

/** Type, light or dark, notation, paper, what is remembered of files, and the role one signs in. */
final class GeneralPage extends Page {
  private static final double STEP = 0.25;

  private final Preferences preferences;

  GeneralPage(Preferences preferences) {
    super("general");
    this.preferences = preferences;
    row(
        Words.of("preferences.text-size"),
        textSize(),
        Optional.of(Words.of("preferences.text-size-hint")));
    row(
        Words.of("preferences.appearance"),
        choice(
            "preferences-appearance",
            List.of(Appearance.values()),
            Words::of,
            preferences.appearanceProperty()),
        Optional.empty());
    row(
        Words.of("preferences.notation"),
        choice(
            "preferences-notation",
            List.of(Notation.values()),
            Words::of,
            preferences.notationProperty()),
        Optional.of(Words.of("preferences.notation-hint")));
    row(
        Words.of("preferences.paper"),
        choice(
            "preferences-paper",
            List.of(Paper.values()),
            Paper::title,
            preferences.paperProperty()),
        Optional.empty());
    row(
        Words.of("preferences.role"),
        choice(
            "preferences-role",
            List.of(SigningRole.values()),
            r -> Words.capital(r.words()),
            preferences.roleProperty()),
        Optional.of(Words.of("preferences.role-hint")));
    CheckBox hidden = new CheckBox(Words.of("preferences.recent-private-on"));
    hidden.setId("preferences-recent-private");
    hidden.selectedProperty().bindBidirectional(preferences.recentPrivateProperty());
    row(
        Words.of("preferences.recent-private"),
        hidden,
        Optional.of(Words.of("preferences.recent-private-hint")));
  }

  /** The size is taken when the slider is let go, since everything moves with it. */
  private HBox textSize() {
    Slider slider = new Slider(Preferences.LEAST_TEXT, Preferences.MOST_TEXT, 1);
    slider.setId("preferences-text-size");
    slider.setAccessibleText(Words.of("preferences.text-size"));
    slider.setMajorTickUnit(0.5);
    slider.setMinorTickCount(1);
    slider.setShowTickMarks(true);
    slider.setBlockIncrement(STEP);
    HBox.setHgrow(slider, Priority.ALWAYS);
    slider.setMaxWidth(320);
    Label percent = new Label();
    percent.setMinWidth(Region.USE_PREF_SIZE);
    percent.getStyleClass().add("preferences-figure");
    Runnable follow =
        () -> {
          slider.setValue(preferences.textSizeProperty().get());
          percent.setText(percent(slider.getValue()));
        };
    slider
        .valueProperty()
        .addListener(
            o -> {
              percent.setText(percent(slider.getValue()));
              if (!slider.isValueChanging()) {
                take(slider);
              }
            });
    slider
        .valueChangingProperty()
        .addListener(
            (o, was, changing) -> {
              if (!changing) {
                take(slider);
              }
            });
    preferences.textSizeProperty().addListener(o -> follow.run());
    follow.run();
    HBox box = new HBox(10, slider, percent);
    box.setAlignment(Pos.CENTER_LEFT);
    return box;
  }

  private void take(Slider slider) {
    preferences.textSizeProperty().set(Math.round(slider.getValue() * 20) / 20.0);
  }

  private static String percent(double size) {
    return Math.round(size * 20) * 5 + " %";
  }

  @Override
  void reset() {
    preferences.reset(Preferences.Group.GENERAL);
  }

  @Override
  Runnable wayBack() {
    Map<String, String> now = preferences.texts();
    return () -> preferences.take(now);
  }
}
