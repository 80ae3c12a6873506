package saddlewright.desktop.prescription;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javafx.scene.Node;
import javafx.scene.control.ComboBox;
import saddlewright.casefile.order.StagePlan;
import saddlewright.casefile.order.TreatmentStage;
import saddlewright.desktop.Words;
import saddlewright.desktop.Worktable;
import saddlewright.prescription.FormField;

/** The stage that the laboratory is asked for now. */
final class StageRequestedBlock extends FieldBlock {
  private static final List<Optional<TreatmentStage>> OPTIONS =
      Stream.concat(
              Stream.of(Optional.<TreatmentStage>empty()),
              Stream.of(TreatmentStage.values())
                  .filter(s -> s.place() == TreatmentStage.Place.LABORATORY)
                  .map(Optional::of))
          .toList();

  private final Worktable table;
  private final ComboBox<Optional<TreatmentStage>> stage;

  StageRequestedBlock(Worktable table) {
    super(FormField.of("stage-requested"));
    this.table = table;
    stage =
        Choices.of(
            "rx-stage-requested",
            field().title(),
            OPTIONS,
            s -> s.map(TreatmentStage::title).orElse(Words.of("stage.none")),
            s ->
                table.apply(
                    Words.of("edit.field", field().title()),
                    table.current().with(table.current().prescription().with(plan(s)))));
    stage.setMaxWidth(Double.MAX_VALUE);
    controls(stage);
  }

  private StagePlan plan(Optional<TreatmentStage> requested) {
    return table.current().prescription().stages().withRequested(requested);
  }

  @Override
  Node focus() {
    return stage;
  }

  @Override
  boolean isBlank() {
    return table.current().prescription().stages().requested().isEmpty();
  }

  @Override
  void refresh() {
    stage.setValue(table.current().prescription().stages().requested());
  }
}
