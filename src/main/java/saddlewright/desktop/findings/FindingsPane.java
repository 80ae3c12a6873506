package saddlewright.desktop.findings;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import javafx.beans.InvalidationListener;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.control.TextInputControl;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.Tooltip;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import saddlewright.desktop.AfterTheSheet;
import saddlewright.desktop.InWords;
import saddlewright.desktop.Words;
import saddlewright.desktop.Worktable;
import saddlewright.desktop.views.FdiNote;
import saddlewright.rules.OpenQuestion;
import saddlewright.rules.Report;
import saddlewright.rules.Severity;
import saddlewright.rules.Tally;
import saddlewright.rules.Waiver;

/** What the rule book says of the case: findings, questions and waivers, grouped and filtered. */
public final class FindingsPane extends VBox {
  private final Worktable table;
  private final FindingFilter filter = new FindingFilter();
  private final Label title = new Label(Words.of("findings.title"));
  private final ComboBox<Grouping> grouping = new ComboBox<>();
  private final Map<FindingFilter.Kind, ToggleButton> chips =
      new EnumMap<>(FindingFilter.Kind.class);
  private final Label count = ReportCard.words("");
  private final VBox list = new VBox();
  private final ScrollPane scroll = new ScrollPane(list);
  private final VBox work = new VBox();
  private final RulePagePane page;
  private final AfterTheSheet pause = new AfterTheSheet(this::rebuild);
  private Map<Object, ReportCard> made = new HashMap<>();
  private List<ReportCard> shown = List.of();
  private boolean commanded;

  public FindingsPane(Worktable table) {
    this.table = table;
    this.page = new RulePagePane(table);
    setId("findings");
    getStyleClass().add("panel");
    work.getStyleClass().add("findings-work");
    title.getStyleClass().add("panel-title");
    count.setId("findings-count");
    count.getStyleClass().add("findings-count");
    list.getStyleClass().add("finding-list");
    scroll.setFitToWidth(true);
    scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
    VBox.setVgrow(scroll, Priority.ALWAYS);
    VBox.setVgrow(work, Priority.ALWAYS);
    VBox.setVgrow(page, Priority.ALWAYS);
    work.getChildren().addAll(heading(), chips(), count, new FdiNote(table), scroll);
    work.visibleProperty().bind(page.visibleProperty().not());
    work.managedProperty().bind(work.visibleProperty());
    getChildren().addAll(work, page);
    // The sheet is to change before the list of findings does.
    table
        .assessmentProperty()
        .addListener(
            (o, was, now) -> {
              if (!now.sharesDesignWith(was)) {
                pause.ask();
              }
            });
    table.findingProperty().addListener(o -> open());
    InvalidationListener related = o -> related();
    table.selectionProperty().addListener(related);
    work.addEventFilter(KeyEvent.KEY_PRESSED, this::typed);
    work.addEventFilter(
        KeyEvent.KEY_TYPED,
        e -> {
          // A letter that was a command must not be written into the field that it led to.
          if (commanded) {
            commanded = false;
            e.consume();
          }
        });
    rebuild();
  }

  /** Whether it shows the report of the case as it is now. */
  public boolean isSettled() {
    return pause.isSettled();
  }

  /** Opens the finding below the one that is open, or the first. */
  public void next() {
    step(1);
  }

  /** Opens the finding above the one that is open, or the last. */
  public void previous() {
    step(-1);
  }

  private FlowPane heading() {
    grouping.setId("findings-grouping");
    grouping.getItems().setAll(Grouping.values());
    grouping.setConverter(new InWords<>(g -> Words.of("grouping." + g.name())));
    grouping.setValue(Grouping.WEIGHT);
    grouping.setAccessibleText(Words.of("grouping.name"));
    grouping.setOnAction(e -> arrange());
    TextField words = new TextField();
    words.setId("findings-search");
    words.setPromptText(Words.of("findings.search"));
    words.setAccessibleText(Words.of("findings.search"));
    words.setPrefColumnCount(9);
    words
        .textProperty()
        .addListener(
            o -> {
              filter.setText(words.getText());
              arrange();
            });
    title.setMinWidth(USE_PREF_SIZE);
    words.setMinWidth(USE_PREF_SIZE);
    grouping.setMinWidth(USE_PREF_SIZE);
    FlowPane row = new FlowPane(6, 5, title, words, grouping);
    row.setAlignment(javafx.geometry.Pos.CENTER_LEFT);
    row.getStyleClass().add("findings-heading");
    return row;
  }

  private FlowPane chips() {
    FlowPane row = new FlowPane(5, 5);
    row.getStyleClass().add("chips");
    for (FindingFilter.Kind kind : FindingFilter.Kind.values()) {
      ToggleButton chip = new ToggleButton();
      chip.setId("chip-" + kind.name());
      chip.getStyleClass().add("chip");
      chip.setSelected(true);
      chip.setTooltip(new Tooltip(Words.of("chip.hint." + kind.name())));
      chip.setOnAction(
          e -> {
            filter.show(kind, chip.isSelected());
            arrange();
          });
      chips.put(kind, chip);
      row.getChildren().add(chip);
    }
    return row;
  }

  private void rebuild() {
    Report report = table.assessment().report();
    Map<Object, ReportCard> next = new HashMap<>();
    List<ReportCard> cards = new ArrayList<>();
    for (Report.Entry e : report.entries()) {
      ReportCard known = made.get(e);
      cards.add(known == null ? new FindingCard(table, e) : known);
      next.put(e, cards.get(cards.size() - 1));
    }
    for (OpenQuestion q : report.questions()) {
      ReportCard known = made.get(q);
      cards.add(known == null ? new QuestionCard(table, q) : known);
      next.put(q, cards.get(cards.size() - 1));
    }
    made = next;
    shown = cards;
    count(report);
    arrange();
  }

  /** Puts the cards that the filter keeps under the headings of the grouping. */
  private void arrange() {
    double at = scroll.getVvalue();
    Optional<String> focus = focused().map(ReportCard::key);
    TreeMap<Grouping.Group, List<ReportCard>> groups = new TreeMap<>();
    List<ReportCard> cards = all();
    for (ReportCard c : cards) {
      if (filter.keeps(c)) {
        groups.computeIfAbsent(grouping.getValue().of(c, table), g -> new ArrayList<>()).add(c);
      }
    }
    List<Node> wanted = new ArrayList<>();
    List<ReportCard> order = new ArrayList<>();
    groups.forEach(
        (g, of) -> {
          Label heading = new Label(Words.of("findings.group", g.title(), of.size()));
          heading.getStyleClass().addAll("finding-heading", g.style());
          wanted.add(heading);
          wanted.addAll(of);
          order.addAll(of);
        });
    shown = order;
    if (order.isEmpty()) {
      wanted.add(empty(cards.isEmpty()));
    }
    unneeded(wanted);
    list.getChildren().setAll(wanted);
    open();
    related();
    scroll.setVvalue(at);
    focus
        .flatMap(this::card)
        .ifPresent(
            c -> {
              c.head().requestFocus();
              bringIntoView(c);
            });
  }

  /** Every card, shown or not, in the order of the report. */
  private List<ReportCard> all() {
    Report report = table.assessment().report();
    return Stream.concat(report.entries().stream(), report.questions().stream())
        .map(made::get)
        .filter(java.util.Objects::nonNull)
        .toList();
  }

  private Label empty(boolean nothing) {
    Label none = ReportCard.words(Words.of(nothing ? "findings.none" : "findings.none-kept"));
    none.setId("no-findings");
    none.getStyleClass().add("empty");
    return none;
  }

  private void unneeded(List<Node> wanted) {
    List<Waiver> waivers = table.assessment().report().unneededWaivers();
    if (!waivers.isEmpty()) {
      Label heading =
          new Label(Words.of("findings.group", Words.of("unneeded.title"), waivers.size()));
      heading.getStyleClass().addAll("finding-heading", "plain");
      wanted.add(heading);
      waivers.forEach(w -> wanted.add(new UnneededWaiverCard(table, w)));
    }
  }

  private void count(Report report) {
    Tally t = report.tally();
    long standing = report.standing().size();
    title.setText(
        standing == 0 ? Words.of("findings.title") : Words.of("findings.title-count", standing));
    String first =
        standing == 0 ? Words.of("findings.none-brief") : Words.of("findings.some", standing);
    count.setText(
        Words.of(
            "findings.tally", first, t.judged(), t.unanswered(), t.notApplicable(), t.notTaught()));
    for (Severity s : Severity.values()) {
      chip(FindingFilter.Kind.valueOf(s.name()), Badge.of(s, false), report.count(s));
    }
    chip(FindingFilter.Kind.QUESTION, Badge.question(), report.questions().size());
    chip(
        FindingFilter.Kind.WAIVED,
        Badge.of(Severity.CONSIDER, true),
        report.entries().stream().filter(e -> !e.stands()).count());
  }

  private void chip(FindingFilter.Kind kind, Badge sign, long number) {
    ToggleButton chip = chips.get(kind);
    if (chip.getGraphic() == null) {
      chip.setGraphic(sign);
    }
    chip.setText(Long.toString(number));
    chip.setAccessibleText(Words.of("chip.name." + kind.name(), number));
  }

  /** Opens the card of the finding that is looked at, and shuts the others. */
  private void open() {
    Optional<String> key = table.findingProperty().get();
    for (ReportCard c : all()) {
      if (c instanceof FindingCard f) {
        f.setOpen(key.filter(c.key()::equals).isPresent());
      }
    }
    key.flatMap(this::card).ifPresent(this::bringIntoView);
  }

  /** Marks the findings that are about what is selected, and brings the first of them into view. */
  private void related() {
    Optional<ReportCard> first = Optional.empty();
    for (ReportCard c : shown) {
      if (c.markRelated(table.selectionProperty().get()) && first.isEmpty()) {
        first = Optional.of(c);
      }
    }
    if (table.findingProperty().get().isEmpty() && focused().isEmpty()) {
      first.ifPresent(this::bringIntoView);
    }
  }

  private Optional<ReportCard> card(String key) {
    return shown.stream().filter(c -> c.key().equals(key)).findFirst();
  }

  private void bringIntoView(ReportCard card) {
    if (getScene() == null) {
      return;
    }
    applyCss();
    layout();
    double height = list.getHeight() - scroll.getViewportBounds().getHeight();
    double top = card.getBoundsInParent().getMinY();
    double bottom = card.getBoundsInParent().getMaxY();
    double from = scroll.getVvalue() * Math.max(0, height);
    double to = from + scroll.getViewportBounds().getHeight();
    if (height > 0 && (top < from || bottom > to)) {
      scroll.setVvalue(Math.max(0, Math.min(1, (top - 6) / height)));
    }
  }

  private void typed(KeyEvent e) {
    commanded = false;
    boolean writing = e.getTarget() instanceof TextInputControl;
    if (writing || e.isControlDown() || e.isAltDown() || e.isMetaDown()) {
      return;
    }
    Optional<ReportCard> at = focused();
    boolean done = true;
    if (e.getCode() == KeyCode.DOWN && !(e.getTarget() instanceof ComboBox)) {
      focus(at, 1);
    } else if (e.getCode() == KeyCode.UP && !(e.getTarget() instanceof ComboBox)) {
      focus(at, -1);
    } else if (e.getCode() == KeyCode.ENTER && e.getTarget() instanceof Button b) {
      b.fire();
    } else if (e.getCode() == KeyCode.F) {
      next();
    } else if (e.getCode() == KeyCode.W && at.orElse(null) instanceof FindingCard f) {
      f.waive();
    } else if (e.getCode() == KeyCode.R && at.orElse(null) instanceof FindingCard f) {
      f.takeBest();
    } else {
      done = false;
    }
    commanded = done && e.getCode().isLetterKey();
    if (done) {
      e.consume();
    }
  }

  private void focus(Optional<ReportCard> from, int by) {
    if (shown.isEmpty()) {
      return;
    }
    int i = from.map(shown::indexOf).map(n -> n + by).orElse(by > 0 ? 0 : shown.size() - 1);
    ReportCard to = shown.get(Math.max(0, Math.min(shown.size() - 1, i)));
    to.head().requestFocus();
    bringIntoView(to);
  }

  private void step(int by) {
    List<FindingCard> findings =
        shown.stream()
            .filter(FindingCard.class::isInstance)
            .map(FindingCard.class::cast)
            .filter(c -> c.entry().stands())
            .toList();
    if (findings.isEmpty()) {
      return;
    }
    int at = -1;
    for (int i = 0; i < findings.size(); i++) {
      if (findings.get(i).isOpen()) {
        at = i;
      }
    }
    int to = at < 0 ? (by > 0 ? 0 : findings.size() - 1) : Math.floorMod(at + by, findings.size());
    FindingCard card = findings.get(to);
    table.look(card.entry().finding());
    card.head().requestFocus();
  }

  /** The card in which the focus is. */
  private Optional<ReportCard> focused() {
    Node n = getScene() == null ? null : getScene().getFocusOwner();
    while (n != null && !(n instanceof ReportCard)) {
      n = n.getParent();
    }
    return Optional.ofNullable((ReportCard) n);
  }
}
