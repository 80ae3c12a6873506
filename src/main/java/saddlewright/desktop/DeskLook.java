package saddlewright.desktop;

import javafx.css.PseudoClass;
import javafx.geometry.Rectangle2D;
import javafx.scene.Parent;
import javafx.stage.Screen;
import saddlewright.desktop.focus.TabLeaves;
import saddlewright.desktop.sheet.SheetType;

/**
 * The look and feel of a window: the type of the desk in its size, light or dark as the desk is.
 */
final class DeskLook {
  /** Text so large that words take a line of their own. */
  private static final PseudoClass LARGE = PseudoClass.getPseudoClass("large");

  private static final PseudoClass DARK = PseudoClass.getPseudoClass("dark");

  /** The usual size of type in the style sheet, pixels. */
  private static final double TYPE = 13;

  private static final double AT_EDGES = 60;

  private DeskLook() {}

  static void wear(Parent root, Worktable table) {
    root.getStyleClass().add("editor");
    TabLeaves.within(root);
    type(root, table);
    table.textSizeProperty().addListener(o -> type(root, table));
    root.pseudoClassStateChanged(DARK, table.darkDeskProperty().get());
    table
        .darkDeskProperty()
        .addListener((o, old, dark) -> root.pseudoClassStateChanged(DARK, dark));
  }

  /** The size of a window that holds text of the preferred size, no larger than the screen. */
  static double[] room(Worktable table, double width, double height) {
    double size = Math.sqrt(table.textSizeProperty().get());
    Rectangle2D screen = Screen.getPrimary().getVisualBounds();
    return new double[] {
      Math.min(screen.getWidth() - AT_EDGES, width * size),
      Math.min(screen.getHeight() - AT_EDGES, height * size)
    };
  }

  /**
   * Sets the type of a window, where the style sheet's is not the one. A style of the root needs
   * the parser of style sheets, which the first frame is spared where it can be.
   */
  private static void type(Parent root, Worktable table) {
    double size = table.textSizeProperty().get();
    String family = SheetType.isOwn() ? "" : "-fx-font-family: \"" + SheetType.family() + "\"; ";
    String large = size == 1 ? "" : "-fx-font-size: " + Math.round(size * TYPE) + "px;";
    root.setStyle(family + large);
    root.pseudoClassStateChanged(LARGE, table.isTextLarge());
  }
}
