package saddlewright.desktop.views;

import java.util.Optional;
import javafx.animation.Animation;
import javafx.animation.KeyFrame;
import javafx.animation.Timeline;
import javafx.beans.InvalidationListener;
import javafx.geometry.Insets;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.Slider;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.util.Duration;
import javafx.util.StringConverter;
import saddlewright.desktop.Words;
import saddlewright.desktop.Worktable;
import saddlewright.prescription.growth.GrowthStage;

/** Below the sheet: a slider through the stages of the design, with what was decided and why. */
public final class StepStrip extends VBox {
  private static final Duration READING = Duration.seconds(5);

  private final Worktable table;
  private final Stages stages;
  private final Slider slider = new Slider(0, GrowthStage.values().length - 1.0, 0);
  private final Label title = new Label();
  private final CaptionLines lines = new CaptionLines();
  private final ScrollPane scroll = new ScrollPane(lines);
  private final Button back = button("steps.back", "steps-back");
  private final Button on = button("steps.on", "steps-on");
  private final Button play = button("steps.play", "steps-play");
  private final Timeline playing = new Timeline();

  /**
   * @param export writes a picture of each stage
   * @param project shows the sheet alone on the whole screen
   */
  public StepStrip(Worktable table, Stages stages, Runnable export, Runnable project) {
    this.table = table;
    this.stages = stages;
    setId("step-strip");
    getStyleClass().add("step-strip");
    slider.setId("steps-slider");
    slider.setMajorTickUnit(1);
    slider.setMinorTickCount(0);
    slider.setBlockIncrement(1);
    slider.setSnapToTicks(true);
    slider.setShowTickMarks(true);
    slider.setShowTickLabels(true);
    slider.setLabelFormatter(new ShortNames());
    slider.setAccessibleText(Words.of("steps.slider"));
    slider.valueProperty().addListener(o -> slid());
    slider.setMinWidth(0);
    title.getStyleClass().add("panel-title");
    back.setOnAction(e -> stages.back());
    on.setOnAction(e -> stages.onwards());
    play.setOnAction(e -> playOrPause());
    Button pictures = button("steps.export", "steps-export");
    pictures.setOnAction(e -> export.run());
    Button alone = button("steps.project", "steps-project");
    alone.setOnAction(e -> project.run());
    Button leave = button("steps.leave", "steps-leave");
    leave.setOnAction(e -> stages.leave());
    title.setMinWidth(Region.USE_PREF_SIZE);
    FlowPane row = new FlowPane(5, 5, title, back, on, play, alone, pictures, leave);
    row.setAlignment(Pos.CENTER_LEFT);
    FlowPane.setMargin(title, new Insets(0, 12, 0, 0));
    scroll.setFitToWidth(true);
    scroll.setId("steps-caption");
    scroll.setAccessibleText(Words.of("steps.caption"));
    scroll.getStyleClass().add("steps-caption");
    getChildren().addAll(row, slider, scroll);
    playing
        .getKeyFrames()
        .setAll(
            new KeyFrame(
                READING,
                e -> {
                  stages.onwards();
                  if (table.stageProperty().get().equals(Optional.of(GrowthStage.COMPLETE))) {
                    pause();
                  }
                }));
    playing.setCycleCount(Animation.INDEFINITE);
    InvalidationListener update = o -> update();
    table.stageProperty().addListener(update);
    table.assessmentProperty().addListener(update);
    table.notationProperty().addListener(update);
    table.shownProperty().addListener(update);
    update();
  }

  private static Button button(String key, String id) {
    Button b = new Button(Words.of(key));
    b.setId(id);
    b.getStyleClass().add("tool");
    b.setAccessibleText(Words.of(key + "-hint"));
    b.setTooltip(new Tooltip(Words.of(key + "-hint")));
    return b;
  }

  private void slid() {
    int wanted = (int) Math.round(slider.getValue());
    GrowthStage stage = GrowthStage.values()[wanted];
    if (stages.isShown() && !table.stageProperty().get().equals(Optional.of(stage))) {
      stages.show(stage);
    }
  }

  private void playOrPause() {
    if (playing.getStatus() == Animation.Status.RUNNING) {
      pause();
      return;
    }
    if (table.stageProperty().get().filter(s -> s != GrowthStage.COMPLETE).isEmpty()) {
      stages.show(GrowthStage.CHART);
    }
    play.setText(Words.of("steps.pause"));
    playing.playFromStart();
  }

  private void pause() {
    playing.stop();
    play.setText(Words.of("steps.play"));
  }

  private void update() {
    Optional<GrowthStage> stage = table.stageProperty().get();
    setVisible(stage.isPresent());
    setManaged(stage.isPresent());
    if (stage.isEmpty()) {
      pause();
      return;
    }
    GrowthStage now = stage.get();
    slider.setValue(now.ordinal());
    back.setDisable(now.previous().isEmpty());
    on.setDisable(now.next().isEmpty());
    title.setText(
        Words.of("steps.title", now.ordinal() + 1, GrowthStage.values().length, now.title()));
    stages.caption().ifPresent(c -> lines.show(c, table.notationProperty().get()));
    scroll.setVvalue(0);
  }

  /** A word for each stage below the slider. */
  private static final class ShortNames extends StringConverter<Double> {
    @Override
    public String toString(Double value) {
      return Words.of(GrowthStage.values()[(int) Math.round(value)]);
    }

    @Override
    public Double fromString(String text) {
      throw new UnsupportedOperationException("nothing is typed here");
    }
  }
}
