package saddlewright.desktop.findings;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.css.PseudoClass;
import javafx.scene.control.Button;
import javafx.scene.control.Hyperlink;
import javafx.scene.control.Label;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import saddlewright.desktop.Words;
import saddlewright.desktop.Worktable;
import saddlewright.rules.Finding;
import saddlewright.rules.Remedy;
import saddlewright.rules.Report;
import saddlewright.rules.Rule;
import saddlewright.rules.RuleBook;
import saddlewright.rules.RulePage;
import saddlewright.rules.Waiver;

/** One finding: a sentence that opens to why, the values, the source, remedies and the waiver. */
final class FindingCard extends ReportCard {
  private static final PseudoClass OPEN = PseudoClass.getPseudoClass("open");

  private final Worktable table;
  private final Finding finding;
  private final Report.Entry entry;
  private Optional<VBox> body = Optional.empty();
  private Optional<WaiverForm> form = Optional.empty();

  FindingCard(Worktable table, Report.Entry entry) {
    super(
        entry.finding().subjects(),
        Badge.of(entry.finding().severity(), !entry.stands()),
        entry.finding().sentence(),
        Words.of(entry.stands() ? "severity." + entry.finding().severity().code() : "waived"));
    this.table = table;
    this.entry = entry;
    this.finding = entry.finding();
    if (entry.state() == Report.State.STALE) {
      Label stale = words(Words.of("finding.stale-brief"));
      stale.getStyleClass().add("finding-note");
      getChildren().add(stale);
    }
  }

  Report.Entry entry() {
    return entry;
  }

  @Override
  String key() {
    return finding.key();
  }

  @Override
  List<Rule> rules() {
    return RuleBook.find(finding.ruleId()).stream().toList();
  }

  boolean isOpen() {
    return body.isPresent();
  }

  void setOpen(boolean open) {
    if (open == isOpen()) {
      return;
    }
    body.ifPresent(getChildren()::remove);
    form = Optional.empty();
    body = open ? Optional.of(body()) : Optional.empty();
    body.ifPresent(getChildren()::add);
    pseudoClassStateChanged(OPEN, open);
  }

  @Override
  void act() {
    if (isOpen()) {
      table.findingProperty().set(Optional.empty());
    } else {
      table.look(finding);
    }
  }

  /** Goes to the reason of a waiver; nothing where none can be given. */
  void waive() {
    if (!isOpen()) {
      table.look(finding);
    }
    form.ifPresent(WaiverForm::begin);
  }

  /** Takes the remedy that is offered first. */
  void takeBest() {
    finding.remedies().stream().findFirst().ifPresent(table::take);
  }

  private VBox body() {
    VBox out = new VBox();
    out.getStyleClass().add("finding-body");
    Optional<Rule> rule = RuleBook.find(finding.ruleId());
    rule.ifPresent(r -> why(out, r));
    out.getChildren().add(values());
    rule.ifPresent(r -> source(out, r));
    remedies(out);
    if (entry.state() == Report.State.WAIVED) {
      waived(out);
    } else if (rule.map(Rule::isHardStop).orElse(false)) {
      Label stop =
          words(
              Words.of(
                  "finding.hard-stop", RulePage.of(rule.orElseThrow()).whenToWaive().orElse("")));
      stop.getStyleClass().add("hard-stop");
      out.getChildren().add(stop);
    } else {
      waiver(out);
    }
    return out;
  }

  private void why(VBox out, Rule rule) {
    Label claim = words(rule.claim());
    claim.getStyleClass().add("claim");
    out.getChildren().add(claim);
    RulePage.of(rule).why().ifPresent(w -> out.getChildren().add(words(w)));
  }

  private GridPane values() {
    GridPane grid = new GridPane();
    grid.getStyleClass().add("values");
    ColumnConstraints names = new ColumnConstraints();
    names.setMinWidth(USE_PREF_SIZE);
    ColumnConstraints values = new ColumnConstraints();
    values.setHgrow(Priority.ALWAYS);
    grid.getColumnConstraints().addAll(names, values);
    value(grid, 0, "finding.measured", finding.comparison().actual());
    value(grid, 1, "finding.required", finding.comparison().required());
    return grid;
  }

  private static void value(GridPane grid, int row, String key, String value) {
    Label name = new Label(Words.of(key));
    name.setMinWidth(USE_PREF_SIZE);
    name.getStyleClass().add("value-name");
    Label shown = words(value);
    shown.getStyleClass().add("value");
    GridPane.setValignment(name, javafx.geometry.VPos.TOP);
    grid.addRow(row, name, shown);
  }

  private void source(VBox out, Rule rule) {
    Label source =
        words(
            Words.of("finding.source", rule.source().citation(), rule.source().evidence().words()));
    source.getStyleClass().add("source");
    Hyperlink page = new Hyperlink(Words.of("finding.page"));
    page.setOnAction(e -> table.pageProperty().set(Optional.of(rule.id())));
    out.getChildren().addAll(source, page);
  }

  private void remedies(VBox out) {
    if (finding.remedies().isEmpty()) {
      return;
    }
    VBox list = new VBox(5);
    for (Remedy r : finding.remedies()) {
      Button apply = new Button(r.label());
      apply.getStyleClass().add("remedy");
      apply.setMnemonicParsing(false);
      apply.setWrapText(true);
      apply.setMinHeight(USE_PREF_SIZE);
      apply.setMaxWidth(Double.MAX_VALUE);
      apply.setOnAction(e -> table.take(r));
      // What it would do is seen on the sheet while the pointer or the focus is on it.
      apply.hoverProperty().addListener((o, was, is) -> preview(r, is || apply.isFocused()));
      apply.focusedProperty().addListener((o, was, is) -> preview(r, is || apply.isHover()));
      list.getChildren().add(apply);
    }
    out.getChildren().addAll(words(Words.of("finding.remedies")), list);
  }

  private void preview(Remedy remedy, boolean wanted) {
    if (wanted) {
      table.previewProperty().set(Optional.of(remedy));
    } else if (table.previewProperty().get().equals(Optional.of(remedy))) {
      table.previewProperty().set(Optional.empty());
    }
  }

  private void waived(VBox out) {
    Waiver w = entry.waiver().orElseThrow();
    out.getChildren()
        .add(words(Words.of("finding.waived-by", w.role(), w.date().toString(), w.reason())));
    Button withdraw = new Button(Words.of("finding.withdraw"));
    withdraw.getStyleClass().add("withdraw");
    withdraw.setOnAction(
        e -> table.apply(Words.of("edit.withdraw"), table.current().withWaivers(others())));
    out.getChildren().add(withdraw);
  }

  private void waiver(VBox out) {
    entry
        .waiver()
        .ifPresent(
            w -> {
              Label then =
                  words(
                      Words.of(
                          "finding.stale",
                          w.role(),
                          w.date().toString(),
                          w.reason(),
                          w.facts(),
                          finding.facts()));
              then.getStyleClass().add("stale");
              Button withdraw = new Button(Words.of("finding.withdraw"));
              withdraw.getStyleClass().add("withdraw");
              withdraw.setOnAction(
                  e ->
                      table.apply(
                          Words.of("edit.withdraw"), table.current().withWaivers(others())));
              out.getChildren().addAll(then, withdraw);
            });
    WaiverForm f = new WaiverForm(entry.waiver(), usualRole(), this::sign);
    form = Optional.of(f);
    out.getChildren().add(f);
  }

  /** The role that signed last in this case, or else the one in which the user signs. */
  private String usualRole() {
    List<Waiver> all = table.current().waivers();
    return all.isEmpty()
        ? table.preferences().roleProperty().get().words()
        : all.get(all.size() - 1).role();
  }

  private void sign(WaiverForm.Signed s) {
    List<Waiver> all = new ArrayList<>(others());
    all.add(new Waiver(finding.key(), s.reason(), s.role(), s.date(), finding.facts()));
    table.apply(Words.of("edit.waive"), table.current().withWaivers(all));
  }

  /** All waivers but the one given for this finding. */
  private List<Waiver> others() {
    return table.current().waivers().stream()
        .filter(w -> !entry.waiver().equals(Optional.of(w)))
        .toList();
  }
}
