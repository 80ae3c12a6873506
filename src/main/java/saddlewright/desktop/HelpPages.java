package saddlewright.desktop;

import javafx.scene.control.Alert;
import javafx.scene.control.Label;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.stage.Window;
import saddlewright.casefile.Cautions;
import saddlewright.desktop.preview.DialogLook;

/** The pages of the Help menu. */
final class HelpPages {
  private final Window owner;

  HelpPages(Window owner) {
    this.owner = owner;
  }

  void cautions() {
    VBox box = new VBox(8);
    Cautions.FULL.forEach(s -> box.getChildren().add(words(s)));
    show(Words.of("help.cautions"), box);
  }

  void about() {
    VBox box = new VBox(8, words(Words.of("about.text")), words(Cautions.LINE));
    show(Words.of("help.about"), box);
  }

  private void show(String title, Region content) {
    Alert page = new Alert(Alert.AlertType.INFORMATION);
    page.initOwner(owner);
    String plain = title.replace("_", "");
    page.setTitle(plain);
    page.setHeaderText(plain);
    page.setGraphic(null);
    DialogLook.wear(page.getDialogPane(), owner);
    content.getStyleClass().add("help-words");
    page.getDialogPane().setContent(content);
    page.show();
  }

  private static Label words(String text) {
    Label l = new Label(text);
    l.setWrapText(true);
    l.setMinHeight(Region.USE_PREF_SIZE);
    return l;
  }
}
