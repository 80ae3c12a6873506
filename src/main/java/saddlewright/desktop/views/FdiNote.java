package saddlewright.desktop.views;

import javafx.beans.binding.Bindings;
import javafx.scene.control.Label;
import javafx.scene.layout.Region;
import saddlewright.dentition.Notation;
import saddlewright.desktop.Words;
import saddlewright.desktop.Worktable;

/**
 * Says that teeth are numbered by FDI in words that stay so while the sheet is numbered otherwise.
 */
public final class FdiNote extends Label {
  public FdiNote(Worktable table) {
    super(Words.of("notation.here-fdi"));
    getStyleClass().addAll("fdi-note", "empty");
    setWrapText(true);
    setMinHeight(Region.USE_PREF_SIZE);
    visibleProperty().bind(Bindings.notEqual(table.notationProperty(), (Object) Notation.FDI));
    managedProperty().bind(visibleProperty());
  }
}
