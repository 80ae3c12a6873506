package saddlewright.desktop.preferences;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.control.RadioButton;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import saddlewright.desktop.Words;
import saddlewright.desktop.focus.AlwaysOne;
import saddlewright.desktop.inks.InkCheck;
import saddlewright.desktop.sheet.Picture;
import saddlewright.drawing.Ink;
import saddlewright.drawing.Palette;
import saddlewright.layout.Layout;

/** The colour of every ink on each desk, how well each can be seen, and a drawing in them. */
final class InksPage extends Page {
  private static final double SAMPLE = 330;

  private static final Map<String, List<Ink>> CHAPTERS = new LinkedHashMap<>();

  static {
    CHAPTERS.put(
        "parts",
        List.of(
            Ink.REST,
            Ink.RETENTIVE,
            Ink.RECIPROCAL,
            Ink.GUIDE,
            Ink.INDIRECT,
            Ink.METAL_LINE,
            Ink.ACRYLIC_LINE,
            Ink.MESH,
            Ink.RELIEF));
    CHAPTERS.put(
        "mouth",
        List.of(
            Ink.TOOTH_LINE,
            Ink.FISSURE,
            Ink.FAINT,
            Ink.GINGIVA,
            Ink.ANATOMY,
            Ink.UNDERCUT,
            Ink.EXTRACTION));
    CHAPTERS.put(
        "signs",
        List.of(
            Ink.LABEL, Ink.NOTE, Ink.NUMBER, Ink.FINDING, Ink.CAUTION, Ink.ADVICE, Ink.QUESTION));
    CHAPTERS.put(
        "surfaces",
        List.of(Ink.PAPER, Ink.MUCOSA, Ink.ENAMEL, Ink.ENAMEL_SHADE, Ink.METAL, Ink.ACRYLIC));
  }

  private final Preferences preferences;
  private final Supplier<Optional<Layout>> sample;
  private final BooleanProperty dark = new SimpleBooleanProperty();
  private final Map<Ink, InkRow> rows = new EnumMap<>(Ink.class);
  private final StackPane picture = new StackPane();
  private final Label sight = words("", "preferences-hint");
  private final BorderPane content = new BorderPane();
  private Optional<Layout> drawn = Optional.empty();

  /**
   * @param sample the design that is drawn; asked for once, when the page is first looked at
   */
  InksPage(Preferences preferences, Supplier<Optional<Layout>> sample) {
    super("inks");
    this.preferences = preferences;
    this.sample = sample;
    say(Words.of("preferences.inks-intro"));
    add(desks());
    CHAPTERS.forEach(
        (chapter, inks) -> {
          heading(Words.of("preferences.inks." + chapter));
          inks.forEach(
              ink -> {
                InkRow row = new InkRow(preferences, dark, ink);
                rows.put(ink, row);
                add(row);
              });
        });
    sight.setId("preferences-inks-sight");
    picture.getStyleClass().add("ink-sample");
    picture.setMinSize(SAMPLE, SAMPLE * 0.9);
    picture.setMaxWidth(SAMPLE);
    VBox beside =
        new VBox(
            10,
            words(Words.of("preferences.inks-sample"), "form-heading"),
            picture,
            words(Words.of("preferences.inks-sight"), "form-heading"),
            sight);
    beside.getStyleClass().add("ink-beside");
    beside.setPrefWidth(SAMPLE + 30);
    ScrollPane side = new ScrollPane(beside);
    side.setFitToWidth(true);
    side.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
    side.setMinWidth(SAMPLE + 44);
    content.setCenter(super.content());
    content.setRight(side);
    preferences.inksProperty().addListener(o -> refresh());
    dark.addListener(o -> refresh());
    refresh();
  }

  private FlowPane desks() {
    ToggleGroup group = new ToggleGroup();
    List<RadioButton> both = new ArrayList<>();
    for (boolean d : new boolean[] {false, true}) {
      RadioButton b =
          new RadioButton(Words.of(d ? "preferences.inks-dark" : "preferences.inks-light"));
      b.setId(d ? "preferences-inks-dark" : "preferences-inks-light");
      b.setToggleGroup(group);
      b.setSelected(dark.get() == d);
      b.setUserData(d);
      dark.addListener(
          (o, was, now) -> {
            if (now == d) {
              b.setSelected(true);
            }
          });
      both.add(b);
    }
    AlwaysOne.of(group, t -> dark.set((Boolean) t.getUserData()));
    FlowPane box = new FlowPane(16, 6);
    box.getChildren().addAll(both);
    box.setAlignment(Pos.CENTER_LEFT);
    return box;
  }

  private void refresh() {
    Palette palette = preferences.inksProperty().get().on(dark.get());
    InkCheck check = new InkCheck(palette);
    rows.values().forEach(r -> r.refresh(palette, check));
    List<InkCheck.Alike> alike = check.alike();
    StringBuilder said = new StringBuilder();
    for (InkCheck.Alike a : alike) {
      said.append(said.isEmpty() ? "" : "\n")
          .append(
              Words.of(
                  "preferences.inks-alike",
                  Words.of(a.one()),
                  Words.of(a.other()),
                  Words.of(a.to())));
    }
    sight.setText(alike.isEmpty() ? Words.of("preferences.inks-told-apart") : said.toString());
    drawn.ifPresent(l -> picture.getChildren().setAll(Picture.of(l, SAMPLE, palette)));
    picture.setStyle("-fx-background-color: " + palette.hex(Ink.PAPER));
  }

  @Override
  Region content() {
    return content;
  }

  @Override
  void look() {
    dark.set(preferences.darkProperty().get());
    if (drawn.isEmpty()) {
      drawn = sample.get();
      refresh();
    }
  }

  @Override
  void reset() {
    preferences.reset(Preferences.Group.INKS);
  }

  @Override
  Runnable wayBack() {
    Map<String, String> now = preferences.texts();
    return () -> preferences.take(now);
  }
}
