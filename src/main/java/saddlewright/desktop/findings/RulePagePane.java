package saddlewright.desktop.findings;

import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ScrollPane;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import saddlewright.desktop.Words;
import saddlewright.desktop.Worktable;
import saddlewright.rules.Rule;
import saddlewright.rules.RuleBook;

/** The page of one rule, in the place of the findings until it is left. */
final class RulePagePane extends VBox {
  private final Worktable table;
  private final VBox text = new VBox();
  private final ScrollPane scroll = new ScrollPane(text);
  private final Button back = new Button(Words.of("page.back"));

  /** What had the focus when the page was opened, to which it goes back. */
  private Optional<Node> cameFrom = Optional.empty();

  RulePagePane(Worktable table) {
    this.table = table;
    setId("rule-page");
    getStyleClass().add("rule-page");
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
    cameFrom.filter(n -> n.getScene() == getScene()).ifPresent(Node::requestFocus);
    cameFrom = Optional.empty();
  }

  private void show(Optional<String> id) {
    Optional<Rule> rule = id.flatMap(RuleBook::find);
    if (!isVisible() && getScene() != null) {
      cameFrom = Optional.ofNullable(getScene().getFocusOwner());
    }
    setVisible(rule.isPresent());
    if (rule.isEmpty()) {
      return;
    }
    text.getChildren().setAll(new RuleText(rule.get()));
    scroll.setVvalue(0);
    back.requestFocus();
  }
}
