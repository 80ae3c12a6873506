package saddlewright.desktop.panels;

import java.util.Optional;
import javafx.beans.InvalidationListener;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import saddlewright.desktop.Step;
import saddlewright.desktop.Words;
import saddlewright.desktop.Worktable;
import saddlewright.desktop.focus.AlwaysOne;
import saddlewright.desktop.tools.ToolBox;
import saddlewright.desktop.tools.ToolChoice;

/** The tools of the step in hand, above the sheet. */
public final class ToolStrip extends VBox {
  private final Node view;
  private final Worktable table;
  private final ToolBox tools;
  private final FlowPane row = new FlowPane();
  private final Label hint = new Label();

  /**
   * The strip.
   *
   * @param view what chooses the part of the sheet that is seen, at the strip's end
   */
  public ToolStrip(Worktable table, ToolBox tools, Node view) {
    this.table = table;
    this.tools = tools;
    getStyleClass().add("tool-strip");
    setId("tools");
    row.getStyleClass().add("tools");
    hint.getStyleClass().add("hint");
    hint.setWrapText(true);
    hint.setMinSize(0, 0);
    Tooltip whole = new Tooltip();
    whole.textProperty().bind(hint.textProperty());
    hint.setTooltip(whole);
    setMinWidth(0);
    HBox.setHgrow(hint, Priority.ALWAYS);
    hint.setMaxWidth(Double.MAX_VALUE);
    this.view = view;
    table.textSizeProperty().addListener(o -> arrange());
    arrange();
    InvalidationListener rebuild = o -> rebuild();
    table.stepProperty().addListener(rebuild);
    table.shownProperty().addListener(rebuild);
    tools.inHandProperty().addListener((o, old, now) -> hint());
    rebuild();
  }

  /** Large words stand in a row of their own. */
  private void arrange() {
    getChildren().clear();
    if (table.isTextLarge()) {
      getChildren().addAll(row, hint, view);
    } else {
      HBox below = new HBox(12, hint, view);
      below.setAlignment(Pos.CENTER_LEFT);
      getChildren().addAll(row, below);
    }
  }

  private void rebuild() {
    row.getChildren().clear();
    ToggleGroup group = new ToggleGroup();
    Step step = table.stepProperty().get();
    tools
        .chosen(step)
        .filter(c -> !isShown(c))
        .flatMap(c -> tools.of(step).stream().filter(this::isShown).findFirst())
        .ifPresent(c -> tools.take(step, c, true));
    Optional<ToolChoice> inHand = tools.chosen(step);
    for (ToolChoice c : tools.of(step)) {
      if (!isShown(c)) {
        continue;
      }
      ToggleButton b = new ToggleButton(c.label());
      b.setId("tool-" + c.id().replace('.', '-'));
      b.getStyleClass().add("tool");
      b.setToggleGroup(group);
      b.setSelected(inHand.map(c::equals).orElse(false));
      b.setAccessibleText(c.label() + ". " + c.hint());
      b.setUserData(c);
      row.getChildren().add(b);
    }
    AlwaysOne.of(group, t -> tools.take(step, (ToolChoice) t.getUserData(), true));
    setVisible(step != Step.PRESCRIPTION);
    setManaged(step != Step.PRESCRIPTION);
    hint();
  }

  /** What can only be placed in an arch that is not seen is not offered. */
  private boolean isShown(ToolChoice c) {
    return c.arch().map(table.shownProperty().get()::shows).orElse(true);
  }

  private void hint() {
    hint.setText(
        tools
            .chosen(table.stepProperty().get())
            .map(ToolChoice::hint)
            .orElse(Words.of("hint.none")));
  }
}
