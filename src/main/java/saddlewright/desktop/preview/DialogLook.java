package saddlewright.desktop.preview;

import java.util.List;
import javafx.css.PseudoClass;
import javafx.scene.Parent;
import javafx.scene.control.DialogPane;
import javafx.stage.Window;

/** Gives a dialogue the look of the window that it belongs to. */
public final class DialogLook {
  private static final List<PseudoClass> LOOKS =
      List.of(PseudoClass.getPseudoClass("dark"), PseudoClass.getPseudoClass("large"));

  private DialogLook() {}

  public static void wear(DialogPane pane, Window owner) {
    Parent root = owner.getScene().getRoot();
    pane.getStyleClass().add("editor");
    pane.getStylesheets().setAll(owner.getScene().getStylesheets());
    pane.setStyle(root.getStyle());
    for (PseudoClass look : LOOKS) {
      pane.pseudoClassStateChanged(look, root.getPseudoClassStates().contains(look));
    }
  }
}
