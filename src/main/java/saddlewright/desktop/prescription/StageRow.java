package saddlewright.desktop.prescription;

import java.time.LocalTime;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import javafx.css.PseudoClass;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Label;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import saddlewright.casefile.order.PlannedStage;
import saddlewright.casefile.order.TreatmentStage;
import saddlewright.desktop.Words;
import saddlewright.prescription.Dates;
import saddlewright.prescription.Gate;
import saddlewright.prescription.Timetable;

/** One stage: how far it is, the days it takes, when it is due, when it was done. */
final class StageRow extends VBox {
  private static final List<Timetable.State> MARKED =
      List.of(Timetable.State.OVERDUE, Timetable.State.CLOSED, Timetable.State.NEXT);
  private static final PseudoClass WAITS = PseudoClass.getPseudoClass("waits");

  private final String where;
  private final Label state = new Label();
  private final Label when = FieldBlock.small("stage-when");
  private final RowText days;
  private final DayField done;
  private final DayField byHand;
  private final RowText time;
  private final RowText by;
  private final CheckBox leftOut = new CheckBox(Words.of("stage.left-out"));
  private final Button today = new Button(Words.of("stage.today"));
  private final VBox gates = new VBox(1);
  private final FlowPane extras = new FlowPane(10, 6);
  private final ToggleButton more = new ToggleButton(Words.of("stage.more"));

  /**
   * @param change takes a change that goes on while one types
   * @param left is told when a field is left
   * @param doneToday notes that the stage was done today
   */
  StageRow(
      TreatmentStage stage,
      Consumer<UnaryOperator<PlannedStage>> change,
      Runnable left,
      Runnable doneToday) {
    this.where = Words.of("stage.place." + stage.place());
    String id = "stage-" + stage;
    getStyleClass().add("stage-row");
    setId(id);
    Label title = FieldBlock.small("stage-title");
    title.setText(stage.title());
    VBox name = new VBox(title, when);
    name.setMinWidth(100);
    name.setPrefWidth(170);
    HBox.setHgrow(name, Priority.ALWAYS);
    state.getStyleClass().add("stage-state");
    days =
        new RowText(
                id + "-days",
                Words.of("stage.days.heard", stage.title()),
                3,
                s -> s.isEmpty() || Integer.parseInt(s) <= 999,
                s ->
                    change.accept(
                        p ->
                            p.withDays(
                                s.isEmpty() ? Optional.empty() : Optional.of(Integer.valueOf(s)))),
                left)
            .digits(3);
    width(days, 40);
    days.setPromptText("–");
    done =
        new DayField(
            id + "-done",
            Words.of("stage.done.heard", stage.title()),
            d -> change.accept(p -> p.withDone(d, p.by())));
    width(done, 134);
    today.setId(id + "-today");
    today.setAccessibleText(Words.of("stage.today.heard", stage.title()));
    today.setMinWidth(USE_PREF_SIZE);
    today.setOnAction(e -> doneToday.run());
    more.setId(id + "-more");
    more.setAccessibleText(Words.of("stage.more.heard", stage.title()));
    more.setMinWidth(USE_PREF_SIZE);
    byHand =
        new DayField(
            id + "-due",
            Words.of("stage.due-by-hand.heard", stage.title()),
            d -> change.accept(p -> p.withDue(d)));
    time =
        new RowText(
            id + "-time",
            Words.of("stage.time.heard", stage.title()),
            5,
            s -> s.isEmpty() || time(s).isPresent(),
            s -> change.accept(p -> p.withTime(time(s))),
            left);
    time.setPromptText("14:30");
    by =
        new RowText(
            id + "-by",
            Words.of("stage.by.heard", stage.title()),
            14,
            s -> true,
            s -> change.accept(p -> p.withDone(p.done(), s)),
            left);
    leftOut.setId(id + "-left-out");
    leftOut.setAccessibleText(Words.of("stage.left-out.heard", stage.title()));
    leftOut.setOnAction(
        e -> {
          change.accept(p -> p.withLeftOut(leftOut.isSelected()));
          left.run();
        });
    HBox fields =
        new HBox(
            6,
            new Captioned(Words.of("stage.days"), days, days),
            new Captioned(Words.of("stage.done"), done, done.focus()),
            today,
            more);
    fields.setAlignment(Pos.BOTTOM_LEFT);
    HBox line = new HBox(6, state, name, fields);
    line.setAlignment(Pos.CENTER_LEFT);
    line.setFillHeight(false);
    extras.getStyleClass().add("list-row");
    extras
        .getChildren()
        .addAll(
            new Captioned(Words.of("stage.due-by-hand"), byHand, byHand.focus()),
            new Captioned(Words.of("stage.time"), time, time),
            new Captioned(Words.of("stage.by"), by, by),
            leftOut);
    more.setOnAction(e -> place(extras, more.isSelected()));
    place(extras, false);
    getChildren().addAll(line, gates, extras);
  }

  private static void width(javafx.scene.layout.Region r, double width) {
    r.setMinWidth(width);
    r.setPrefWidth(width);
    r.setMaxWidth(width);
  }

  private static Optional<LocalTime> time(String text) {
    try {
      return text.isEmpty()
          ? Optional.empty()
          : Optional.of(LocalTime.parse(text.length() == 4 ? "0" + text : text));
    } catch (DateTimeParseException e) {
      return Optional.empty();
    }
  }

  private static void place(Node n, boolean on) {
    n.setVisible(on);
    n.setManaged(on);
  }

  void show(Timetable.Row r) {
    PlannedStage p = r.planned();
    state.setText(Words.capital(r.state().words()));
    for (Timetable.State s : MARKED) {
      state.pseudoClassStateChanged(PseudoClass.getPseudoClass(s.words()), s == r.state());
    }
    String due =
        r.due()
            .map(
                d ->
                    p.time()
                        .map(t -> Words.of("stage.due.time", Dates.brief(d), t))
                        .orElse(Words.of("stage.due", Dates.brief(d))))
            .orElse(r.isActive() && !r.isDone() ? Words.of("stage.due.none") : "");
    when.setText(due.isEmpty() ? where : Words.of("stage.when", where, due));
    days.show(p.days().map(n -> Integer.toString(n)).orElse(""));
    done.show(p.done());
    byHand.show(p.due());
    time.show(p.time().map(LocalTime::toString).orElse(""));
    by.show(p.by());
    leftOut.setSelected(p.leftOut());
    today.setDisable(r.isDone() || !r.isActive());
    gates.getChildren().setAll(r.gates().stream().map(StageRow::words).toList());
    place(gates, !r.gates().isEmpty());
  }

  private static Label words(Gate g) {
    Label l = FieldBlock.small("stage-gate");
    l.setText(Words.of(g.closed() ? "stage.gate.closed" : "stage.gate.note", g.words()));
    l.pseudoClassStateChanged(WAITS, g.closed());
    l.setTooltip(new javafx.scene.control.Tooltip(g.source().words()));
    return l;
  }
}
