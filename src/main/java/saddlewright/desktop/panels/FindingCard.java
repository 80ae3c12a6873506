package saddlewright.desktop.panels;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.css.PseudoClass;
import javafx.scene.control.Button;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.DatePicker;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.util.converter.LocalDateStringConverter;
import saddlewright.design.Subject;
import saddlewright.desktop.Words;
import saddlewright.desktop.Worktable;
import saddlewright.rules.Finding;
import saddlewright.rules.Remedy;
import saddlewright.rules.Report;
import saddlewright.rules.Rule;
import saddlewright.rules.RuleBook;
import saddlewright.rules.Waiver;

/** One finding: a sentence that opens to why, the values, the source, remedies and the waiver. */
final class FindingCard extends VBox {
  private static final PseudoClass RELATED = PseudoClass.getPseudoClass("related");
  private static final PseudoClass OPEN = PseudoClass.getPseudoClass("open");

  private static final DateTimeFormatter ISO = DateTimeFormatter.ISO_LOCAL_DATE;

  private final Worktable table;
  private final Finding finding;
  private final Report.Entry entry;
  private final boolean isOpen;

  FindingCard(Worktable table, Report.Entry entry) {
    this.table = table;
    this.entry = entry;
    this.finding = entry.finding();
    getStyleClass().add("finding");
    boolean open = table.findingProperty().get().filter(finding.key()::equals).isPresent();
    this.isOpen = open;
    pseudoClassStateChanged(OPEN, open);
    getChildren().add(head(open));
    if (open) {
      getChildren().add(body());
    }
  }

  /** Whether the card looks as one for the entry would. */
  boolean shows(Report.Entry other, boolean open) {
    return open == isOpen && entry.equals(other);
  }

  void markRelated(List<Subject> selected) {
    pseudoClassStateChanged(RELATED, selected.stream().anyMatch(finding.subjects()::contains));
  }

  private Button head(boolean open) {
    Label badge = new Label(Words.of("severity.letter." + finding.severity().code()));
    badge.getStyleClass().addAll("badge", "severity-" + finding.severity().code());
    badge.setMinSize(Region.USE_PREF_SIZE, Region.USE_PREF_SIZE);
    Button head = new Button(finding.sentence(), badge);
    head.getStyleClass().add("finding-head");
    head.setMnemonicParsing(false);
    head.setWrapText(true);
    head.setGraphicTextGap(8);
    head.setMinHeight(Region.USE_PREF_SIZE);
    head.setMaxWidth(Double.MAX_VALUE);
    head.setAccessibleText(
        Words.of("severity." + finding.severity().code()) + ": " + finding.sentence());
    head.setOnAction(e -> toggle(open));
    return head;
  }

  private void toggle(boolean open) {
    if (open) {
      table.findingProperty().set(Optional.empty());
    } else {
      table.selectionProperty().set(finding.subjects());
      table.findingProperty().set(Optional.of(finding.key()));
    }
  }

  private VBox body() {
    VBox body = new VBox();
    body.getStyleClass().add("finding-body");
    Optional<Rule> rule = RuleBook.find(finding.ruleId());
    rule.ifPresent(r -> body.getChildren().add(words(Words.of("finding.why", r.claim()))));
    body.getChildren().add(words(Words.of("finding.measured", finding.comparison().actual())));
    body.getChildren().add(words(Words.of("finding.required", finding.comparison().required())));
    rule.ifPresent(
        r -> {
          Label source =
              words(
                  Words.of("finding.source", r.source().citation(), r.source().evidence().words()));
          source.getStyleClass().add("source");
          body.getChildren().add(source);
        });
    remedies(body);
    if (entry.state() == Report.State.WAIVED) {
      waived(body);
    } else if (rule.map(Rule::isHardStop).orElse(false)) {
      body.getChildren().add(words(Words.of("finding.hard-stop")));
    } else {
      waive(body);
    }
    return body;
  }

  private void remedies(VBox body) {
    FlowPane row = new FlowPane(6, 6);
    for (Remedy r : finding.remedies()) {
      Button apply = new Button(r.label());
      apply.getStyleClass().add("remedy");
      apply.setWrapText(true);
      apply.setOnAction(e -> table.apply(r.label(), r.arch(), r.edit()));
      row.getChildren().add(apply);
    }
    if (!row.getChildren().isEmpty()) {
      body.getChildren().addAll(words(Words.of("finding.remedies")), row);
    }
  }

  private void waived(VBox body) {
    Waiver w = entry.waiver().orElseThrow();
    body.getChildren()
        .add(words(Words.of("finding.waived-by", w.role(), w.date().toString(), w.reason())));
    Button undo = new Button(Words.of("finding.withdraw"));
    undo.setOnAction(
        e -> table.apply(Words.of("edit.withdraw"), table.current().withWaivers(without())));
    body.getChildren().add(undo);
  }

  private void waive(VBox body) {
    entry
        .waiver()
        .ifPresent(
            w ->
                body.getChildren()
                    .add(words(Words.of("finding.stale", w.date().toString(), w.facts()))));
    TextField reason = new TextField();
    reason.setPromptText(Words.of("finding.reason"));
    reason.setAccessibleText(Words.of("finding.reason"));
    HBox.setHgrow(reason, Priority.ALWAYS);
    ChoiceBox<String> role = new ChoiceBox<>();
    role.getItems()
        .setAll(
            Words.of("role.prescriber"),
            Words.of("role.tutor"),
            Words.of("role.student"),
            Words.of("role.technician"));
    role.getSelectionModel().selectFirst();
    role.setAccessibleText(Words.of("finding.role"));
    DatePicker date = new DatePicker(LocalDate.now());
    date.setPrefWidth(122);
    date.setConverter(new LocalDateStringConverter(ISO, ISO));
    date.setAccessibleText(Words.of("finding.date"));
    Button waive = new Button(Words.of("finding.waive"));
    Label error = words("");
    error.getStyleClass().add("field-error");
    error.setManaged(false);
    waive.setOnAction(
        e -> {
          if (reason.getText().isBlank() || date.getValue() == null) {
            error.setText(Words.of("finding.reason-needed"));
            error.setManaged(true);
            return;
          }
          List<Waiver> all = new ArrayList<>(without());
          all.add(
              new Waiver(
                  finding.key(),
                  reason.getText().strip(),
                  role.getValue(),
                  date.getValue(),
                  finding.facts()));
          table.apply(Words.of("edit.waive"), table.current().withWaivers(all));
        });
    body.getChildren()
        .addAll(
            words(Words.of("finding.waive-title")),
            reason,
            new FlowPane(6, 6, role, date, waive),
            error);
  }

  private List<Waiver> without() {
    return table.current().waivers().stream()
        .filter(w -> !w.findingKey().equals(finding.key()))
        .toList();
  }

  private static Label words(String text) {
    Label l = new Label(text);
    l.setWrapText(true);
    l.setMinHeight(Region.USE_PREF_SIZE);
    return l;
  }
}
