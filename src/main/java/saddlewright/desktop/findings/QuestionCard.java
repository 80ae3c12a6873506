package saddlewright.desktop.findings;

import java.util.List;
import java.util.stream.Stream;
import javafx.scene.control.Hyperlink;
import javafx.scene.layout.VBox;
import saddlewright.design.Subject;
import saddlewright.desktop.Words;
import saddlewright.desktop.Worktable;
import saddlewright.rules.OpenQuestion;
import saddlewright.rules.Rule;
import saddlewright.rules.RuleBook;

/** A value that is wanting: choosing it goes to its field; the rules that wait unfold below. */
final class QuestionCard extends ReportCard {
  private final Worktable table;
  private final OpenQuestion question;
  private final VBox waiting = new VBox(3);

  QuestionCard(Worktable table, OpenQuestion question) {
    super(
        subjects(question),
        Badge.question(),
        Words.of("question.sentence", Words.capital(question.field().words())),
        Words.of("question.kind"));
    this.table = table;
    this.question = question;
    getStyleClass().add("question");
    waiting.getStyleClass().add("question-rules");
    waiting.setVisible(false);
    waiting.setManaged(false);
    for (Rule r : rules()) {
      Hyperlink page = new Hyperlink(r.claim());
      page.setWrapText(true);
      page.setOnAction(e -> table.pageProperty().set(java.util.Optional.of(r.id())));
      waiting.getChildren().add(page);
    }
    Hyperlink unfold = new Hyperlink(Words.of("question.waiting", question.ruleIds().size()));
    unfold.getStyleClass().add("unfold");
    unfold.setOnAction(
        e -> {
          waiting.setVisible(!waiting.isVisible());
          waiting.setManaged(waiting.isVisible());
        });
    getChildren().addAll(unfold, waiting);
  }

  OpenQuestion question() {
    return question;
  }

  private static List<Subject> subjects(OpenQuestion q) {
    List<Subject> where =
        q.field().teeth().isEmpty()
            ? List.of(Subject.of(q.field().arch()))
            : q.field().teeth().stream().map(Subject::of).toList();
    return Stream.concat(where.stream(), q.subjects().stream()).distinct().toList();
  }

  @Override
  void act() {
    table.goTo(question.field());
  }

  @Override
  String key() {
    return question.field().key();
  }

  @Override
  List<Rule> rules() {
    return question.ruleIds().stream().flatMap(id -> RuleBook.find(id).stream()).toList();
  }
}
