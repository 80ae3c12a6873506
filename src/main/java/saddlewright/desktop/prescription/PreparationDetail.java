package saddlewright.desktop.prescription;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import saddlewright.casefile.order.PreparationMark;
import saddlewright.casefile.order.Preparations;
import saddlewright.desktop.Words;
import saddlewright.desktop.Worktable;
import saddlewright.prescription.PreparationPlan;
import saddlewright.prescription.PreparationPlan.Entry;

/** What is noted of one preparation: how far it is, when, by whom, and in whose words. */
final class PreparationDetail extends VBox {
  private final Worktable table;
  private final BiConsumer<Entry, PreparationMark> note;
  private final Label title = FieldBlock.small("form-heading");
  private final Label target = FieldBlock.small("fact");
  private final ComboBox<PreparationMark.State> state;
  private final DayField on;
  private final RowText by;
  private final RowText checkedBy;
  private final RowText words;
  private final RowText remark;
  private final Button back = new Button(Words.of("preparation.back"));
  private final Button remove = new Button(Words.of("row.remove"));
  private final Label whyNot = FieldBlock.small("hint-line");
  private final Label gaps = FieldBlock.small("field-error");
  private final Label cautions = FieldBlock.small("hint-line");
  private final Typing typing;
  private Optional<Entry> shown = Optional.empty();
  private boolean showing;

  PreparationDetail(
      Worktable table, BiConsumer<Entry, PreparationMark> note, Consumer<Entry> remove) {
    this.table = table;
    this.note = note;
    typing = new Typing(table, Words.of("edit.preparation-note"));
    setId("preparation-detail");
    getStyleClass().add("preparation-detail");
    state =
        Choices.of(
            "preparation-state",
            Words.of("preparation.state"),
            List.of(PreparationMark.State.values()),
            s -> Words.capital(s.words()),
            this::take);
    on = new DayField("preparation-on", Words.of("preparation.on"), d -> change(m -> m.withOn(d)));
    by = text("by", 11, t -> m -> m.withBy(t));
    checkedBy = text("checked-by", 11, t -> m -> m.withCheckedBy(t));
    words = text("words", 20, t -> m -> m.withTarget(t));
    words.setPromptText(Words.of("preparation.words.prompt"));
    remark = text("note", 20, t -> m -> m.withNote(t));
    remark.setPromptText(Words.of("preparation.note.prompt"));
    back.setId("preparation-back");
    back.setMinWidth(USE_PREF_SIZE);
    this.remove.setMinWidth(USE_PREF_SIZE);
    back.setOnAction(
        e -> {
          typing.end();
          change(m -> m.withTarget(""));
          typing.end();
          words.requestFocus();
        });
    this.remove.setId("preparation-remove");
    this.remove.setOnAction(e -> shown.ifPresent(remove));
    FlowPane first = row();
    first
        .getChildren()
        .addAll(
            new Captioned(Words.of("preparation.state"), state, state),
            new Captioned(Words.of("preparation.on"), on, on.focus()),
            new Captioned(Words.of("preparation.by"), by, by),
            new Captioned(Words.of("preparation.checked-by"), checkedBy, checkedBy));
    HBox own = new HBox(8, new Captioned(Words.of("preparation.words"), words, words), back);
    own.setAlignment(javafx.geometry.Pos.BOTTOM_LEFT);
    grow(own, words);
    HBox said =
        new HBox(8, new Captioned(Words.of("preparation.note"), remark, remark), this.remove);
    said.setAlignment(javafx.geometry.Pos.BOTTOM_LEFT);
    grow(said, remark);
    getChildren().addAll(title, target, gaps, first, own, said, whyNot, cautions);
    show(Optional.empty(), List.of());
  }

  private static void grow(HBox box, RowText field) {
    field.setMaxWidth(Double.MAX_VALUE);
    Captioned captioned = (Captioned) box.getChildren().get(0);
    captioned.setMinWidth(120);
    HBox.setHgrow(captioned, Priority.ALWAYS);
  }

  private static FlowPane row() {
    FlowPane f = new FlowPane();
    f.setHgap(10);
    f.setVgap(6);
    f.setRowValignment(javafx.geometry.VPos.BOTTOM);
    return f;
  }

  private RowText text(
      String part,
      int columns,
      java.util.function.Function<String, UnaryOperator<PreparationMark>> with) {
    return new RowText(
        "preparation-" + part,
        Words.of("preparation." + part),
        columns,
        s -> true,
        s -> change(with.apply(s)),
        typing::end);
  }

  private void take(PreparationMark.State s) {
    if (showing || shown.isEmpty() || shown.get().mark().state() == s) {
      return;
    }
    typing.end();
    Entry e = shown.get();
    note.accept(e, PreparationsBlock.at(e.mark(), s));
    if (s == PreparationMark.State.DECLINED) {
      askForReason();
    }
  }

  /** An edit that goes on while one types. */
  private void change(UnaryOperator<PreparationMark> with) {
    if (showing || shown.isEmpty()) {
      return;
    }
    String key = shown.get().key();
    typing.write(
        p -> {
          Preparations now = p.preparations();
          return p.with(now.with(with.apply(now.mark(key))));
        });
  }

  /** What is typed from now on is another edit. */
  void leave() {
    typing.end();
  }

  /** Goes to the first control. */
  void begin() {
    state.requestFocus();
  }

  /** What is declined has a reason. */
  void askForReason() {
    remark.requestFocus();
  }

  void show(Optional<Entry> entry, List<String> wanting) {
    boolean other = !entry.map(Entry::key).equals(shown.map(Entry::key));
    if (other) {
      typing.end();
    }
    shown = entry;
    setVisible(entry.isPresent());
    setManaged(entry.isPresent());
    if (entry.isEmpty()) {
      return;
    }
    Entry e = entry.get();
    PreparationMark m = e.mark();
    showing = true;
    title.setText(e.purpose().isBlank() ? e.place() : e.place() + " – " + e.purpose());
    target.setText(Words.capital(e.derived()) + ".");
    state.setValue(m.state());
    on.show(m.on());
    by.show(m.by());
    checkedBy.show(m.checkedBy());
    words.show(m.target());
    remark.show(m.note());
    showing = false;
    back.setDisable(!e.isReworded());
    boolean mayGo = e.origin() != PreparationPlan.Origin.DESIGN;
    place(remove, mayGo);
    remove.setDisable(e.isDone());
    say(whyNot, mayGo && e.isDone() ? Words.of("preparation.stays") : "");
    List<String> wrong = new ArrayList<>(wanting);
    if (e.origin() == PreparationPlan.Origin.FORMER) {
      wrong.add(0, Words.of("preparation.former.said"));
    }
    say(gaps, String.join(" ", wrong));
    say(
        cautions,
        String.join(
            "\n",
            e.warnings().stream()
                .map(w -> Words.of("preparation.caution", w.sentence(), w.source().words()))
                .toList()));
  }

  private static void say(Label label, String sentence) {
    label.setText(sentence);
    place(label, !sentence.isEmpty());
  }

  private static void place(javafx.scene.Node n, boolean on) {
    n.setVisible(on);
    n.setManaged(on);
  }
}
