package saddlewright.desktop.findings;

import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import saddlewright.desktop.Words;
import saddlewright.rules.Rule;
import saddlewright.rules.RulePage;

/** The page of a rule in words, with its weight and source. */
public final class RuleText extends VBox {

  public RuleText(Rule rule) {
    getStyleClass().add("rule-text");
    add(rule.claim(), "panel-title");
    add(
        Words.of("page.weight", Words.of("severity." + rule.severity().code()), rule.id()),
        "form-words");
    for (RulePage.Section s : RulePage.of(rule).sections()) {
      add(s.title(), "form-heading");
      s.paragraphs().forEach(p -> add(p, "page-words"));
    }
    add(Words.of("page.source"), "form-heading");
    add(
        Words.of("finding.source-only", rule.source().citation(), rule.source().evidence().words()),
        "page-words");
  }

  private void add(String words, String style) {
    Label l = ReportCard.words(words);
    l.getStyleClass().add(style);
    getChildren().add(l);
  }
}
