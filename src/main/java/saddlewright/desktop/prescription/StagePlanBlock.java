package saddlewright.desktop.prescription;

import java.time.LocalDate;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import saddlewright.casefile.Case;
import saddlewright.casefile.order.PlannedStage;
import saddlewright.casefile.order.PrescriptionDetails;
import saddlewright.casefile.order.StagePlan;
import saddlewright.casefile.order.TreatmentStage;
import saddlewright.desktop.Words;
import saddlewright.desktop.Worktable;
import saddlewright.prescription.FormField;
import saddlewright.prescription.Timetable;

/**
 * The stages of the treatment one below the other, with the days that are counted back from the
 * fitting and with what stands in the way of each.
 */
final class StagePlanBlock extends FieldBlock {
  private final Worktable table;
  private final LastDays last;
  private final DayField fitting;
  private final CheckBox everyDay = new CheckBox(Words.of("stage.every-day"));
  private final Button visits = new Button(Words.of("stage.visits-zero"));
  private final Button lastDays = new Button(Words.of("stage.last-days"));
  private final Label wanting = small("field-error");
  private final Label remarks = small("field-error");
  private final Map<TreatmentStage, StageRow> rows = new EnumMap<>(TreatmentStage.class);
  private final Typing typing;
  private Object derivedFrom = List.of();

  StagePlanBlock(Worktable table, LastDays last) {
    super(FormField.of("stage-plan"));
    this.table = table;
    this.last = last;
    typing = new Typing(table, Words.of("edit.field", field().title()));
    fitting =
        new DayField(
            "rx-stage-plan",
            Words.of("stage.fitting"),
            d -> apply(Words.of("edit.field", field().title()), p -> p.withFitting(d)));
    everyDay.setId("stage-every-day");
    everyDay.setOnAction(
        e ->
            apply(
                Words.of("edit.field", field().title()),
                p -> p.withEveryDay(everyDay.isSelected())));
    visits.setId("stage-visits-zero");
    visits.setOnAction(e -> apply(Words.of("edit.stage-days"), StagePlanBlock::visitsTakeNone));
    lastDays.setId("stage-last-days");
    lastDays.setOnAction(e -> apply(Words.of("edit.stage-days"), last::into));
    FlowPane head = new FlowPane(10, 6);
    head.getStyleClass().add("list-row");
    head.getChildren()
        .addAll(
            new Captioned(Words.of("stage.fitting"), fitting, fitting.focus()),
            everyDay,
            visits,
            lastDays);
    wanting.setId("stage-wanting");
    remarks.setId("stage-remarks");
    VBox list = new VBox();
    list.setId("stages");
    for (TreatmentStage s : TreatmentStage.values()) {
      StageRow row = new StageRow(s, change -> write(s, change), this::left, () -> doneToday(s));
      rows.put(s, row);
      list.getChildren().add(row);
    }
    hint(Words.of("stage.hint"));
    controls(head, wanting, list, remarks);
  }

  /** Visits on which nothing waits: only those are set for which nothing was said. */
  private static StagePlan visitsTakeNone(StagePlan plan) {
    StagePlan out = plan;
    for (TreatmentStage s : TreatmentStage.values()) {
      boolean visit = s.place() == TreatmentStage.Place.CLINIC;
      if (visit && s.compareTo(TreatmentStage.DELIVERY) < 0 && out.at(s).days().isEmpty()) {
        out = out.with(s, out.at(s).withDays(Optional.of(0)));
      }
    }
    return out;
  }

  private StagePlan plan() {
    return table.current().prescription().stages();
  }

  private void apply(String name, UnaryOperator<StagePlan> change) {
    typing.end();
    Case now = table.current();
    table.apply(name, now.with(now.prescription().with(change.apply(plan()))));
  }

  /** An edit that goes on while one types. */
  private void write(TreatmentStage s, UnaryOperator<PlannedStage> change) {
    typing.write(p -> p.with(p.stages().with(s, change.apply(p.stages().at(s)))));
  }

  private void left() {
    typing.end();
    last.keep(plan());
  }

  private void doneToday(TreatmentStage s) {
    apply(
        Words.of("edit.stage-done", s.title()),
        p -> p.with(s, p.at(s).withDone(Optional.of(LocalDate.now()), p.at(s).by())));
  }

  @Override
  boolean isWide() {
    return true;
  }

  @Override
  Node focus() {
    return fitting.focus();
  }

  @Override
  boolean isBlank() {
    return plan().fitting().isEmpty();
  }

  /** All that the timetable depends on: it is made anew only when some of it has changed. */
  private Object sources() {
    PrescriptionDetails p = table.current().prescription();
    return List.of(PreparationsBlock.sources(table), p.stages(), p.signature(), LocalDate.now());
  }

  @Override
  void refresh() {
    Object sources = sources();
    if (sources.equals(derivedFrom)) {
      return;
    }
    derivedFrom = sources;
    Timetable times =
        Timetable.of(table.assessment(), table.notationProperty().get(), LocalDate.now());
    fitting.show(plan().fitting());
    everyDay.setSelected(plan().everyDay());
    visits.setDisable(visitsTakeNone(plan()).equals(plan()));
    lastDays.setDisable(last.into(plan()).equals(plan()));
    rows.forEach((s, row) -> row.show(times.at(s)));
    say(wanting, times.wanting().orElse(""));
    say(remarks, String.join("\n", times.remarks()));
  }

  private static void say(Label label, String sentence) {
    label.setText(sentence);
    label.setVisible(!sentence.isEmpty());
    label.setManaged(!sentence.isEmpty());
  }
}
