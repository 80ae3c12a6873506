package saddlewright.desktop.help;

import java.util.List;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.VBox;
import saddlewright.desktop.Words;

/** The words of the trade in British and North American usage. */
public final class GlossaryPane extends BorderPane {
  private final TextField search = new TextField();
  private final Label count = new Label();
  private final VBox cards = new VBox();
  private final ScrollPane scroll = new ScrollPane(cards);

  public GlossaryPane() {
    setId("glossary");
    getStyleClass().add("help");
    search.setId("glossary-search");
    search.setPromptText(Words.of("glossary.search"));
    search.setAccessibleText(Words.of("glossary.search"));
    search.textProperty().addListener(o -> list());
    count.setId("glossary-count");
    count.getStyleClass().add("form-words");
    cards.getStyleClass().add("help-text");
    cards.setId("glossary-terms");
    scroll.setFitToWidth(true);
    scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
    VBox head = new VBox(6, search, count);
    head.getStyleClass().add("help-head");
    setTop(head);
    setCenter(scroll);
    list();
  }

  private void list() {
    List<String> words = Sought.words(search.getText());
    List<Term> found = Term.ALL.stream().filter(t -> t.matches(words)).toList();
    cards.getChildren().setAll(found.stream().map(TermCard::new).toList());
    count.setText(Words.of("glossary.count", found.size()));
    scroll.setVvalue(0);
  }
}
