package saddlewright.desktop;

import javafx.css.PseudoClass;
import javafx.scene.Parent;
import saddlewright.desktop.sheet.SheetType;

/** The look of a window: the type of the desk, light or dark as the desk is. */
final class DeskLook {
  private static final PseudoClass DARK = PseudoClass.getPseudoClass("dark");

  private DeskLook() {}

  static void wear(Parent root, Worktable table) {
    root.getStyleClass().add("editor");
    if (!SheetType.isOwn()) {
      // The style sheet names our own face. A style of the root needs the parser of style sheets,
      // which the first frame is spared.
      root.setStyle("-fx-font-family: \"" + SheetType.family() + "\"");
    }
    root.pseudoClassStateChanged(DARK, table.darkDeskProperty().get());
    table
        .darkDeskProperty()
        .addListener((o, old, dark) -> root.pseudoClassStateChanged(DARK, dark));
  }
}
