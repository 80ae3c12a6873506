package saddlewright.desktop.welcome;

import java.util.EnumMap;
import java.util.Map;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.image.ImageView;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import saddlewright.archform.ArchForm;
import saddlewright.casefile.Case;
import saddlewright.desktop.Step;
import saddlewright.desktop.Words;
import saddlewright.drawing.Palette;
import saddlewright.layout.Layout;
import saddlewright.prescription.growth.GrowthStage;

/** The order of work as pictures: one design as it grows from step to step. */
public final class OrderPicture extends FlowPane {
  private static final double WIDTH = 128;
  private static final double HEIGHT = 118;

  /** What stands at the steps that add something to the drawing. */
  private static final Map<Step, GrowthStage> STAGES = new EnumMap<>(Step.class);

  static {
    STAGES.put(Step.SURVEY, GrowthStage.CHART);
    STAGES.put(Step.SADDLES, GrowthStage.SADDLES);
    STAGES.put(Step.SUPPORT, GrowthStage.SUPPORT);
    STAGES.put(Step.RETENTION, GrowthStage.RETENTION);
    STAGES.put(Step.BRACING, GrowthStage.BRACING);
    STAGES.put(Step.CONNECTORS, GrowthStage.CONNECTORS);
    STAGES.put(Step.INDIRECT_RETENTION, GrowthStage.COMPLETE);
  }

  private final Map<Step, ImageView> views = new EnumMap<>(Step.class);

  public OrderPicture() {
    super(14, 12);
    setId("order-picture");
    STAGES
        .keySet()
        .forEach(
            s ->
                add(
                    s,
                    s == Step.SURVEY
                        ? Words.of("welcome.chart-and-survey")
                        : Words.of("welcome.step", s.ordinal() + 1, Words.of(s))));
  }

  private void add(Step step, String name) {
    ImageView view = new ImageView();
    view.setFitHeight(HEIGHT);
    views.put(step, view);
    StackPane frame = new StackPane(view);
    frame.getStyleClass().add("order-frame");
    frame.setMinSize(WIDTH + 2, HEIGHT + 2);
    frame.setMaxSize(WIDTH + 2, HEIGHT + 2);
    Label words = new Label(name);
    words.setWrapText(true);
    words.setMinHeight(Region.USE_PREF_SIZE);
    words.setMaxWidth(WIDTH + 2);
    VBox tile = new VBox(4, frame, words);
    tile.setAlignment(Pos.TOP_LEFT);
    getChildren().add(tile);
  }

  /** Has the lower design of a case drawn as it grows. */
  public void draw(Case c, Palette palette, Illustrations illustrations) {
    views.forEach(
        (step, view) ->
            illustrations.show(
                () -> Layout.of(ArchForm.of(c.lowerChart()), STAGES.get(step).of(c.lowerDesign())),
                WIDTH,
                palette,
                view));
  }
}
