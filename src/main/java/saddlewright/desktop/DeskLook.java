package saddlewright.desktop;

import javafx.css.PseudoClass;
import javafx.scene.Parent;
import saddlewright.desktop.sheet.SheetType;

/** The look of a window: the type of the desk in its size, light or dark as the desk is. */
final class DeskLook {
  private static final PseudoClass DARK = PseudoClass.getPseudoClass("dark");

  /** The usual size of type in the style sheet, pixels. */
  private static final double TYPE = 13;

  private DeskLook() {}

  static void wear(Parent root, Worktable table) {
    root.getStyleClass().add("editor");
    type(root, table.textSizeProperty().get());
    table.textSizeProperty().addListener((o, was, size) -> type(root, size.doubleValue()));
    root.pseudoClassStateChanged(DARK, table.darkDeskProperty().get());
    table
        .darkDeskProperty()
        .addListener((o, old, dark) -> root.pseudoClassStateChanged(DARK, dark));
  }

  /**
   * Sets the type of a window, where the style sheet's is not the one. A style of the root needs
   * the parser of style sheets, which the first frame is spared where it can be.
   */
  private static void type(Parent root, double size) {
    String family =
        SheetType.isOwn() ? "" : "-fx-font-family: \"" + SheetType.family() + "\"; ";
    String large = size == 1 ? "" : "-fx-font-size: " + Math.round(size * TYPE) + "px;";
    root.setStyle(family + large);
  }
}
