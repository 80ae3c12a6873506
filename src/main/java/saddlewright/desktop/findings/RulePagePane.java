package saddlewright.desktop.findings;

import java.util.Optional;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import saddlewright.desktop.Words;
import saddlewright.desktop.Worktable;
import saddlewright.rules.Rule;
import saddlewright.rules.RuleBook;
import saddlewright.rules.RulePage;

/** The page of one rule, in the place of the findings until it is left. */
final class RulePagePane extends VBox {
  private final Worktable table;
  private final VBox text = new VBox();
  private final ScrollPane scroll = new ScrollPane(text);
  private final Button back = new Button(Words.of("page.back"));

  RulePagePane(Worktable table) {
    this.table = table;
    setId("rule-page");
    getStyleClass().add("rule-page");
    text.getStyleClass().add("rule-text");
    back.setId("rule-page-back");
    back.setOnAction(e -> leave());
    scroll.setFitToWidth(true);
    scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
    VBox.setVgrow(scroll, Priority.ALWAYS);
    getChildren().addAll(back, scroll);
    managedProperty().bind(visibleProperty());
    setVisible(false);
    table.pageProperty().addListener(o -> show(table.pageProperty().get()));
    addEventHandler(
        KeyEvent.KEY_PRESSED,
        e -> {
          if (e.getCode() == KeyCode.ESCAPE) {
            leave();
            e.consume();
          }
        });
  }

  private void leave() {
    table.pageProperty().set(Optional.empty());
  }

  private void show(Optional<String> id) {
    Optional<Rule> rule = id.flatMap(RuleBook::find);
    setVisible(rule.isPresent());
    if (rule.isEmpty()) {
      return;
    }
    Rule r = rule.get();
    text.getChildren().clear();
    add(r.claim(), "panel-title");
    add(Words.of("page.weight", Words.of("severity." + r.severity().code()), r.id()), "form-words");
    for (RulePage.Section s : RulePage.of(r).sections()) {
      add(s.title(), "form-heading");
      s.paragraphs().forEach(p -> add(p, "page-words"));
    }
    add(Words.of("page.source"), "form-heading");
    add(
        Words.of("finding.source-only", r.source().citation(), r.source().evidence().words()),
        "page-words");
    scroll.setVvalue(0);
    back.requestFocus();
  }

  private void add(String words, String style) {
    Label l = ReportCard.words(words);
    l.getStyleClass().add(style);
    text.getChildren().add(l);
  }
}
