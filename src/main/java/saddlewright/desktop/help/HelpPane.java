package saddlewright.desktop.help;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import javafx.beans.InvalidationListener;
import javafx.scene.control.Button;
import javafx.scene.control.Hyperlink;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import saddlewright.design.Component;
import saddlewright.design.Subject;
import saddlewright.desktop.Step;
import saddlewright.desktop.Words;
import saddlewright.desktop.Worktable;
import saddlewright.desktop.findings.RuleText;
import saddlewright.desktop.subject.ComponentWords;
import saddlewright.rules.Finding;
import saddlewright.rules.Rule;
import saddlewright.rules.RuleBook;
import saddlewright.rules.RulePage;

/**
 * Help for what is being done: the step that is chosen, the component that is selected and the
 * rules that judge it; or, while something is looked for, all that speaks of it.
 */
public final class HelpPane extends BorderPane {
  /** No more rules than one would read are listed as found. */
  private static final int MOST = 40;

  private final Worktable table;
  private final TextField search = new TextField();
  private final Button back = new Button(Words.of("help.back"));
  private final VBox text = new VBox();
  private final ScrollPane scroll = new ScrollPane(text);

  /** The rule that is read; empty for the help of the step. */
  private Optional<Rule> page = Optional.empty();

  private Optional<Step> asked = Optional.empty();

  public HelpPane(Worktable table) {
    this.table = table;
    setId("help");
    getStyleClass().add("help");
    search.setId("help-search");
    search.setPromptText(Words.of("help.search"));
    search.setAccessibleText(Words.of("help.search"));
    search.textProperty().addListener(o -> home());
    back.setId("help-back");
    back.setOnAction(e -> home());
    back.managedProperty().bind(back.visibleProperty());
    text.getStyleClass().add("help-text");
    scroll.setFitToWidth(true);
    scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
    scroll.setId("help-words");
    VBox head = new VBox(8, search, back);
    head.getStyleClass().add("help-head");
    setTop(head);
    setCenter(scroll);
    InvalidationListener follow = o -> follow();
    table.stepProperty().addListener(follow);
    table.selectionProperty().addListener(follow);
    home();
  }

  /**
   * Another step or subject is worked at: its help takes the place of what was read, unless that is
   * being looked for.
   */
  private void follow() {
    asked = Optional.empty();
    if (search.getText().isBlank() && page.isEmpty()) {
      home();
    }
  }

  /** Shows the help of the step that is worked at. */
  public void here() {
    page = Optional.empty();
    asked = Optional.empty();
    search.clear();
    home();
    search.requestFocus();
  }

  private void home() {
    page = Optional.empty();
    back.setVisible(asked.isPresent());
    text.getChildren().clear();
    List<String> words = Sought.words(search.getText());
    if (words.isEmpty()) {
      step(asked.orElse(table.stepProperty().get()));
    } else {
      found(words);
    }
    scroll.setVvalue(0);
  }

  private void step(Step step) {
    StepHelp help = StepHelp.of(step);
    add(Words.of("help.step-n", step.ordinal() + 1, Words.of(step)), "panel-title");
    List<Component> selected =
        table.selected().flatMap(table::component).map(List::of).orElse(List.of());
    selected.forEach(this::component);
    for (RulePage.Section s : help.sections()) {
      add(s.title(), "form-heading");
      s.paragraphs().forEach(p -> add(p, "page-words"));
    }
    add(Words.of("help.rules"), "form-heading");
    if (help.rules().isEmpty()) {
      add(Words.of("help.no-rules." + step.name()), "page-words");
    }
    help.rules().forEach(this::link);
    add(Words.of("help.other-steps"), "form-heading");
    FlowPane steps = new FlowPane(12, 2);
    for (Step other : Step.values()) {
      if (other != step) {
        Hyperlink link = new Hyperlink(Words.of(other));
        link.setOnAction(e -> go(other));
        steps.getChildren().add(link);
      }
    }
    text.getChildren().add(steps);
  }

  private void go(Step other) {
    search.clear();
    asked = Optional.of(other).filter(s -> s != table.stepProperty().get());
    home();
  }

  /** What the selected component is, and which rules have spoken of it. */
  private void component(Component c) {
    add(Words.of("help.selected", ComponentWords.full(c)), "form-heading");
    Term.of(c.getClass()).ifPresent(t -> add(t.meaning(), "page-words"));
    Subject subject = table.selected().orElseThrow();
    var report = table.assessment().report();
    List<Rule> rules =
        Stream.concat(
                report.standing().stream()
                    .filter(f -> f.subjects().contains(subject))
                    .map(Finding::ruleId),
                report.creditsOf(subject).stream().map(credit -> credit.ruleId()))
            .distinct()
            .flatMap(id -> RuleBook.find(id).stream())
            .toList();
    if (!rules.isEmpty()) {
      add(Words.of("help.judged"), "page-words");
      rules.forEach(this::link);
    }
  }

  private void found(List<String> words) {
    add(Words.of("help.found", search.getText().strip()), "panel-title");
    List<Region> steps = new ArrayList<>();
    for (Step s : Step.values()) {
      if (StepHelp.of(s).matches(words) || matches(Words.of(s), words)) {
        steps.add(link(Words.of("help.step-n", s.ordinal() + 1, Words.of(s)), () -> go(s)));
      }
    }
    section("help.found-steps", steps);
    List<Region> terms = new ArrayList<>();
    Term.ALL.stream().filter(t -> t.matches(words)).forEach(t -> terms.add(card(t)));
    section("help.found-terms", terms);
    List<Region> rules = new ArrayList<>();
    RuleBook.rules().stream()
        .filter(r -> matches(r.claim() + " " + r.id(), words))
        .limit(MOST)
        .forEach(r -> rules.add(link(Words.capital(r.claim()), () -> read(r))));
    section("help.found-rules", rules);
    if (text.getChildren().size() == 1) {
      add(Words.of("help.nothing"), "page-words");
    }
  }

  private static boolean matches(String in, List<String> words) {
    String all = in.toLowerCase(Locale.ROOT);
    return words.stream().allMatch(all::contains);
  }

  private void section(String key, List<Region> lines) {
    if (!lines.isEmpty()) {
      add(Words.of(key), "form-heading");
      text.getChildren().addAll(lines);
    }
  }

  private static Region card(Term t) {
    return new TermCard(t);
  }

  private void link(Rule r) {
    text.getChildren().add(link(Words.capital(r.claim()), () -> read(r)));
  }

  private static Hyperlink link(String words, Runnable action) {
    Hyperlink link = new Hyperlink(words);
    link.setWrapText(true);
    link.setMinHeight(USE_PREF_SIZE);
    link.getStyleClass().add("help-link");
    link.setOnAction(e -> action.run());
    return link;
  }

  /** Shows the page of a rule until one goes back. */
  private void read(Rule rule) {
    page = Optional.of(rule);
    back.setVisible(true);
    text.getChildren().setAll(new RuleText(rule));
    scroll.setVvalue(0);
    back.requestFocus();
  }

  private void add(String words, String style) {
    Label l = new Label(words);
    l.setWrapText(true);
    l.setMinHeight(USE_PREF_SIZE);
    l.getStyleClass().add(style);
    text.getChildren().add(l);
  }
}
