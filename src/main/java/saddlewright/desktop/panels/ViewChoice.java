package saddlewright.desktop.panels;

import java.util.EnumMap;
import java.util.Map;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.FlowPane;
import saddlewright.desktop.Words;
import saddlewright.desktop.Worktable;
import saddlewright.desktop.focus.AlwaysOne;
import saddlewright.desktop.sheet.SheetPane;

/** Which arches are seen, and how large. */
public final class ViewChoice extends FlowPane {
  private static final double ZOOM = 1.25;

  public ViewChoice(Worktable table, SheetPane sheet) {
    super(5, 5);
    setAlignment(Pos.CENTER_RIGHT);
    Runnable room = () -> setMinWidth(table.isTextLarge() ? 0 : USE_PREF_SIZE);
    table.textSizeProperty().addListener(o -> room.run());
    room.run();
    ToggleGroup group = new ToggleGroup();
    Map<Worktable.Shown, ToggleButton> buttons = new EnumMap<>(Worktable.Shown.class);
    for (Worktable.Shown shown : Worktable.Shown.values()) {
      ToggleButton b = new ToggleButton(Words.of(shown));
      b.setId("show-" + shown.name());
      b.getStyleClass().add("tool");
      b.setToggleGroup(group);
      b.setUserData(shown);
      buttons.put(shown, b);
      getChildren().add(b);
    }
    table.shownProperty().addListener((o, old, now) -> buttons.get(now).setSelected(true));
    buttons.get(table.shownProperty().get()).setSelected(true);
    AlwaysOne.of(group, t -> table.shownProperty().set((Worktable.Shown) t.getUserData()));
    getChildren()
        .addAll(
            button("view.smaller", "view.zoom-out", () -> sheet.zoom(1 / ZOOM)),
            button("view.fit", "view.fit-hint", sheet::fit),
            button("view.larger", "view.zoom-in", () -> sheet.zoom(ZOOM)));
  }

  /** All in one row, where there is room for it. */
  @Override
  protected double computePrefWidth(double height) {
    double width =
        snappedLeftInset() + snappedRightInset() + getHgap() * (getChildren().size() - 1);
    for (Node n : getChildren()) {
      width += snapSizeX(n.prefWidth(-1));
    }
    return width;
  }

  private static Button button(String text, String hint, Runnable action) {
    Button b = new Button(Words.of(text));
    b.getStyleClass().add("tool");
    String words = Words.of(hint).replace("_", "");
    b.setTooltip(new Tooltip(words));
    b.setAccessibleText(words);
    b.setOnAction(e -> action.run());
    return b;
  }
}
