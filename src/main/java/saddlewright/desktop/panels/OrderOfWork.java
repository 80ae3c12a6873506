package saddlewright.desktop.panels;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import javafx.css.PseudoClass;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import saddlewright.desktop.AfterTheSheet;
import saddlewright.desktop.Step;
import saddlewright.desktop.Words;
import saddlewright.desktop.Worktable;
import saddlewright.desktop.focus.AlwaysOne;
import saddlewright.rules.Severity;

/**
 * The steps of the work, each with how far it has come; choosing one changes what a click means.
 */
public final class OrderOfWork extends VBox {
  private static final PseudoClass FINDINGS = PseudoClass.getPseudoClass("findings");
  private static final PseudoClass DONE = PseudoClass.getPseudoClass("done");
  private static final PseudoClass BEGUN = PseudoClass.getPseudoClass("begun");

  private final Worktable table;
  private final Map<Step, ToggleButton> buttons = new EnumMap<>(Step.class);
  private final Map<Step, Label> states = new EnumMap<>(Step.class);

  private final AfterTheSheet pause = new AfterTheSheet(this::update);

  public OrderOfWork(Worktable table) {
    this.table = table;
    getStyleClass().add("order-of-work");
    setId("order");
    Label title = new Label(Words.of("order.title"));
    title.getStyleClass().add("panel-title");
    getChildren().add(title);
    ToggleGroup group = new ToggleGroup();
    for (Step step : Step.values()) {
      getChildren().add(button(step, group));
    }
    table.stepProperty().addListener((o, old, now) -> buttons.get(now).setSelected(true));
    table.assessmentProperty().addListener(o -> pause.ask());
    table.patientProperty().addListener(o -> pause.ask());
    buttons.get(table.stepProperty().get()).setSelected(true);
    AlwaysOne.of(group, t -> table.stepProperty().set((Step) t.getUserData()));
    update();
  }

  /** Whether it shows how far the work has come; shortly after an edit it still has to. */
  public boolean isSettled() {
    return pause.isSettled();
  }

  private ToggleButton button(Step step, ToggleGroup group) {
    Label number = new Label(Integer.toString(step.ordinal() + 1));
    number.getStyleClass().add("step-number");
    Label name = new Label();
    HBox.setHgrow(name, Priority.ALWAYS);
    name.setMaxWidth(Double.MAX_VALUE);
    Runnable naming =
        () ->
            name.setText(
                table.isTextLarge() && step == Step.BRACING
                    ? Words.of("order.bracing-short")
                    : Words.of(step));
    table.textSizeProperty().addListener(o -> naming.run());
    naming.run();
    Label state = new Label();
    state.getStyleClass().add("step-state");
    state.setMinWidth(Region.USE_PREF_SIZE);
    states.put(step, state);
    HBox row = new HBox(8, number, name, state);
    row.setAlignment(Pos.CENTER_LEFT);
    ToggleButton b = new ToggleButton();
    b.setGraphic(row);
    b.setId("step-" + step.name());
    b.getStyleClass().add("step");
    b.setToggleGroup(group);
    b.setMaxWidth(Double.MAX_VALUE);
    row.prefWidthProperty().bind(b.widthProperty().subtract(20));
    b.setUserData(step);
    b.setTooltip(new Tooltip(Words.of("step.hint." + step.name())));
    buttons.put(step, b);
    return b;
  }

  private void update() {
    Progress progress = new Progress(table.assessment(), table::isComplete);
    for (Step step : Step.values()) {
      long findings = progress.findings(step);
      Progress.State state = progress.state(step);
      Label label = states.get(step);
      boolean counted = findings > 0;
      label.setText(
          counted
              ? Long.toString(findings)
              : Words.of(
                  "state.sign."
                      + (step == Step.REVIEW && state != Progress.State.EMPTY
                          ? Progress.State.DONE
                          : state)));
      label.pseudoClassStateChanged(FINDINGS, counted);
      Optional<Severity> gravest = progress.gravest(step);
      for (Severity s : Severity.values()) {
        label.pseudoClassStateChanged(
            PseudoClass.getPseudoClass(s.code()), gravest.equals(Optional.of(s)));
      }
      label.pseudoClassStateChanged(DONE, !counted && state == Progress.State.DONE);
      label.pseudoClassStateChanged(BEGUN, !counted && state == Progress.State.BEGUN);
      buttons
          .get(step)
          .setAccessibleText(
              Words.of(step)
                  + ": "
                  + (counted ? Words.of("state.findings", findings) : Words.of("state." + state)));
    }
  }
}
