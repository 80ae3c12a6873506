package saddlewright.desktop.findings;

import java.util.List;
import javafx.css.PseudoClass;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import saddlewright.design.Subject;
import saddlewright.rules.Rule;

/** One entry of the report: a sentence with its sign, which is a button. */
abstract class ReportCard extends VBox {
  private static final PseudoClass RELATED = PseudoClass.getPseudoClass("related");

  private final List<Subject> subjects;
  private final Button head;

  ReportCard(List<Subject> subjects, Node sign, String sentence, String kind) {
    this.subjects = subjects;
    getStyleClass().add("finding");
    head = new Button(sentence, sign);
    head.getStyleClass().add("finding-head");
    head.setMnemonicParsing(false);
    head.setWrapText(true);
    head.setGraphicTextGap(9);
    head.setMinHeight(Region.USE_PREF_SIZE);
    head.setMaxWidth(Double.MAX_VALUE);
    head.setAccessibleText(kind + ": " + sentence);
    head.setOnAction(e -> act());
    getChildren().add(head);
  }

  /** What Enter and a click do. */
  abstract void act();

  /** What makes it the same entry after an edit. */
  abstract String key();

  /** The rules that have to do with it. */
  abstract List<Rule> rules();

  /** The words by which it is found. */
  String words() {
    StringBuilder out = new StringBuilder(head.getText());
    for (Rule r : rules()) {
      out.append('\n').append(r.id().replace('-', ' ')).append('\n').append(r.claim());
    }
    return out.toString();
  }

  Button head() {
    return head;
  }

  /** What it is about, the chief subject first. */
  List<Subject> subjects() {
    return subjects;
  }

  /** Marks it when it is about what is selected; whether it is. */
  boolean markRelated(List<Subject> selected) {
    boolean related = selected.stream().anyMatch(subjects::contains);
    pseudoClassStateChanged(RELATED, related);
    return related;
  }

  static Label words(String text) {
    Label l = new Label(text);
    l.setWrapText(true);
    l.setMinHeight(Region.USE_PREF_SIZE);
    return l;
  }
}
