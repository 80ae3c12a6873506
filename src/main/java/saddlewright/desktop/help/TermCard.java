package saddlewright.desktop.help;

import javafx.scene.AccessibleRole;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import saddlewright.desktop.Words;

/** A word of the trade in both usages, with its meaning and source. */
final class TermCard extends VBox {

  TermCard(Term term) {
    getStyleClass().add("term");
    FlowPane names = new FlowPane(18, 2);
    if (term.uk().equalsIgnoreCase(term.us())) {
      names.getChildren().add(name("glossary.same", term.uk()));
    } else {
      names.getChildren().addAll(name("glossary.uk", term.uk()), name("glossary.us", term.us()));
    }
    getChildren()
        .addAll(
            names,
            words(term.meaning(), "page-words"),
            words(Words.capital(term.source()), "term-source"));
    setAccessibleRole(AccessibleRole.TEXT);
    setAccessibleText(term.both() + ": " + term.meaning());
  }

  private static Label name(String usage, String word) {
    Label l = words(Words.of(usage, word), "term-name");
    l.setMaxWidth(Double.MAX_VALUE);
    return l;
  }

  private static Label words(String text, String style) {
    Label l = new Label(text);
    l.setWrapText(true);
    l.setMinHeight(USE_PREF_SIZE);
    l.getStyleClass().add(style);
    return l;
  }
}
