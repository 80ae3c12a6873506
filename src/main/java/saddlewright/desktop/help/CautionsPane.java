package saddlewright.desktop.help;

import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import saddlewright.casefile.Cautions;
import saddlewright.desktop.Words;

/** What must be borne in mind by whoever relies on the program. */
public final class CautionsPane extends StackPane {

  public CautionsPane() {
    setId("cautions");
    getStyleClass().add("help");
    VBox text = new VBox();
    text.getStyleClass().add("help-text");
    text.getChildren().add(words(Words.of("cautions.title"), "page-title"));
    Cautions.FULL.forEach(s -> text.getChildren().add(words("•  " + s, "page-words")));
    ScrollPane scroll = new ScrollPane(text);
    scroll.setFitToWidth(true);
    // Nothing else in it takes the keyboard, by which it must be read to its end all the same.
    scroll.setFocusTraversable(true);
    scroll.setAccessibleText(Words.of("cautions.title"));
    scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
    getChildren().add(scroll);
  }

  private static Label words(String words, String style) {
    Label l = new Label(words);
    l.setWrapText(true);
    l.setMinHeight(USE_PREF_SIZE);
    l.getStyleClass().add(style);
    return l;
  }
}
