package saddlewright.desktop.prescription;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.TableColumn;
import javafx.scene.control.TableView;
import javafx.scene.control.Tooltip;
import javafx.scene.input.KeyEvent;
import saddlewright.casefile.Case;
import saddlewright.casefile.order.PreparationMark;
import saddlewright.casefile.order.Preparations;
import saddlewright.design.ComponentId;
import saddlewright.design.Subject;
import saddlewright.desktop.FullWords;
import saddlewright.desktop.Words;
import saddlewright.desktop.Worktable;
import saddlewright.prescription.FormField;
import saddlewright.prescription.PreparationPlan;
import saddlewright.prescription.PreparationPlan.Entry;

/**
 * The mouth preparations in the order in which they are done, with what has been noted of each. The
 * list is gone through by keys; what is chosen in it is noted below it and selected on the sheet.
 */
final class PreparationsBlock extends FieldBlock {
  private static final double ROW = 28;
  private static final int MOST_ROWS = 9;

  private final Worktable table;
  private final TableView<Entry> list = new TableView<>();
  private final Label count = small("fact");
  private final Label keys = small("hint-line");
  private final PreparationDetail detail;
  private final OwnPreparationRow adding;
  private Object derivedFrom = List.of();
  private PreparationPlan plan;
  private boolean showing;

  PreparationsBlock(Worktable table) {
    super(FormField.of("preparations"));
    this.table = table;
    this.plan = PreparationPlan.of(table.assessment(), table.notationProperty().get());
    this.detail = new PreparationDetail(table, this::note, this::remove);
    this.adding = new OwnPreparationRow(table, this::choose);
    list.setId("preparations");
    list.getStyleClass().add("plain-table");
    list.setAccessibleText(field().title());
    list.setFixedCellSize(ROW);
    list.setPlaceholder(new Label(Words.of("fact.preparations.none")));
    column("preparation.place", 135, Entry::place);
    column("preparation.target", 225, e -> Words.capital(e.target()));
    column("preparation.for", 165, Entry::purpose);
    column("preparation.state", 115, this::state);
    list.setColumnResizePolicy(TableView.CONSTRAINED_RESIZE_POLICY_ALL_COLUMNS);
    list.getSelectionModel().selectedItemProperty().addListener((o, was, now) -> chosen(now));
    list.addEventHandler(KeyEvent.KEY_PRESSED, this::pressed);
    keys.setText(Words.of("preparation.keys"));
    controls(count, list, keys, detail, adding);
  }

  private void column(String title, double width, Function<Entry, String> words) {
    TableColumn<Entry, String> c = new TableColumn<>();
    Label head = new Label(Words.of(title));
    head.setTooltip(new Tooltip(head.getText()));
    c.setGraphic(head);
    c.setPrefWidth(width);
    c.setSortable(false);
    c.setReorderable(false);
    FullWords.in(c);
    c.setCellValueFactory(v -> new ReadOnlyStringWrapper(words.apply(v.getValue())));
    list.getColumns().add(c);
  }

  /** In one word, with a sign where something is wanting in what was noted. */
  private String state(Entry e) {
    String word =
        e.origin() == PreparationPlan.Origin.FORMER
            ? Words.of("preparation.former", e.mark().state().words())
            : Words.capital(e.mark().state().words());
    return plan.gaps(e).isEmpty() ? word : Words.of("preparation.wanting", word);
  }

  private void chosen(Entry e) {
    if (showing || e == null) {
      return;
    }
    detail.show(Optional.of(e), plan.gaps(e));
    table.select(subjects(e));
  }

  /** What asks for it, or else its teeth. */
  private Subject[] subjects(Entry e) {
    List<Subject> out =
        e.components().stream()
            .filter(c -> stands(e, c))
            .map(c -> (Subject) new Subject.OfComponent(e.arch(), c))
            .toList();
    return (out.isEmpty() ? e.teeth().stream().map(Subject::of).toList() : out)
        .toArray(Subject[]::new);
  }

  private boolean stands(Entry e, ComponentId id) {
    return table.current().design(e.arch()).find(id).isPresent();
  }

  private void pressed(KeyEvent e) {
    Entry chosen = list.getSelectionModel().getSelectedItem();
    if (chosen == null || e.isShortcutDown() || e.isAltDown()) {
      return;
    }
    switch (e.getCode()) {
      case D -> mark(chosen, PreparationMark.State.DONE);
      case C -> mark(chosen, PreparationMark.State.CHECKED);
      case P -> mark(chosen, PreparationMark.State.PLANNED);
      case X -> {
        mark(chosen, PreparationMark.State.DECLINED);
        detail.askForReason();
      }
      case ENTER -> detail.begin();
      default -> {
        return;
      }
    }
    e.consume();
  }

  private void mark(Entry e, PreparationMark.State state) {
    detail.leave();
    note(e, at(e.mark(), state));
  }

  /** The mark in another state; a day that nobody has given is that of today. */
  static PreparationMark at(PreparationMark mark, PreparationMark.State state) {
    PreparationMark next = mark.withState(state);
    if (state == PreparationMark.State.PLANNED) {
      return next.withOn(Optional.empty());
    }
    return next.on().isPresent() ? next : next.withOn(Optional.of(LocalDate.now()));
  }

  private void note(Entry e, PreparationMark mark) {
    Case now = table.current();
    Preparations next = now.prescription().preparations().with(mark);
    table.apply(Words.of("edit.preparation", e.place()), now.with(now.prescription().with(next)));
  }

  /** Takes away an own preparation, or the note on a former one; never one that has been cut. */
  private void remove(Entry e) {
    Case now = table.current();
    Preparations p = now.prescription().preparations();
    Preparations next =
        p.with(PreparationMark.planned(e.key()))
            .withOwn(
                p.own().stream()
                    .filter(o -> !(PreparationPlan.OWN + o.id()).equals(e.key()))
                    .toList());
    table.apply(
        Words.of("edit.preparation-removed", e.place()), now.with(now.prescription().with(next)));
    list.requestFocus();
  }

  private void choose(String key) {
    plan.find(key)
        .ifPresent(
            e -> {
              list.getSelectionModel().select(e);
              list.scrollTo(e);
              list.requestFocus();
            });
  }

  @Override
  boolean isWide() {
    return true;
  }

  @Override
  Node focus() {
    return list;
  }

  @Override
  boolean isBlank() {
    return plan.entries().isEmpty();
  }

  /** All that the list depends on: it is made anew only when some of it has changed. */
  static List<Object> sources(Worktable table) {
    Case c = table.current();
    return List.of(
        c.upperChart(),
        c.lowerChart(),
        c.upperDesign(),
        c.lowerDesign(),
        c.profile(),
        c.prescription().preparations(),
        table.notationProperty().get());
  }

  @Override
  void refresh() {
    Object sources = sources(table);
    if (sources.equals(derivedFrom)) {
      return;
    }
    derivedFrom = sources;
    plan = PreparationPlan.of(table.assessment(), table.notationProperty().get());
    Optional<String> kept =
        Optional.ofNullable(list.getSelectionModel().getSelectedItem()).map(Entry::key);
    showing = true;
    list.getItems().setAll(plan.entries());
    Optional<Entry> again = kept.flatMap(plan::find);
    again.ifPresentOrElse(
        list.getSelectionModel()::select, list.getSelectionModel()::clearSelection);
    showing = false;
    int rows = Math.max(1, Math.min(MOST_ROWS, plan.entries().size()));
    double height = ROW * rows + ROW + 4;
    list.setMinHeight(height);
    list.setPrefHeight(height);
    list.setMaxHeight(height);
    long settled =
        plan.entries().stream().filter(e -> e.isBeforeMasterImpression() && e.isSettled()).count();
    count.setText(
        plan.entries().isEmpty()
            ? Words.of("fact.preparations.none")
            : Words.of(
                "preparation.count",
                plan.entries().size(),
                settled + plan.unsettled().size(),
                settled));
    keys.setVisible(!plan.entries().isEmpty());
    keys.setManaged(!plan.entries().isEmpty());
    detail.show(again, again.map(plan::gaps).orElse(List.of()));
    adding.refresh();
  }
}
