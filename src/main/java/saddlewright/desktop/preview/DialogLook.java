package saddlewright.desktop.preview;

import javafx.css.PseudoClass;
import javafx.scene.Parent;
import javafx.scene.control.DialogPane;
import javafx.stage.Window;

/** Gives a dialogue the look of the window that it belongs to. */
final class DialogLook {
  private static final PseudoClass DARK = PseudoClass.getPseudoClass("dark");

  private DialogLook() {}

  static void wear(DialogPane pane, Window owner) {
    Parent root = owner.getScene().getRoot();
    pane.getStyleClass().add("editor");
    pane.getStylesheets().setAll(owner.getScene().getStylesheets());
    pane.setStyle(root.getStyle());
    pane.pseudoClassStateChanged(DARK, root.getPseudoClassStates().contains(DARK));
  }
}
