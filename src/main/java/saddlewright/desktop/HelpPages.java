package saddlewright.desktop;

import java.util.List;
import javafx.scene.control.Alert;
import javafx.scene.control.Label;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.stage.Window;
import saddlewright.casefile.Cautions;

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
    page.setTitle(title);
    page.setHeaderText(title);
    page.setGraphic(null);
    page.getDialogPane()
        .getStylesheets()
        .setAll(owner.getScene() == null ? List.of() : owner.getScene().getStylesheets());
    content.setPrefWidth(560);
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
