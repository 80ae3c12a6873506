package saddlewright.desktop.prescription;

import javafx.scene.Node;
import saddlewright.desktop.Words;
import saddlewright.desktop.Worktable;
import saddlewright.prescription.FormField;

/** The day of the fitting, from which the days of all other stages are counted back. */
final class StagePlanBlock extends FieldBlock {
  private final Worktable table;
  private final DayField fitting;

  StagePlanBlock(Worktable table) {
    super(FormField.of("stage-plan"));
    this.table = table;
    fitting =
        new DayField(
            "rx-stage-plan",
            Words.of("stage.fitting"),
            d ->
                table.apply(
                    Words.of("edit.field", field().title()),
                    table
                        .current()
                        .with(
                            table
                                .current()
                                .prescription()
                                .with(table.current().prescription().stages().withFitting(d)))));
    controls(new Captioned(Words.of("stage.fitting"), fitting, fitting.focus()));
  }

  @Override
  Node focus() {
    return fitting.focus();
  }

  @Override
  boolean isBlank() {
    return table.current().prescription().stages().fitting().isEmpty();
  }

  @Override
  void refresh() {
    fitting.show(table.current().prescription().stages().fitting());
  }
}
