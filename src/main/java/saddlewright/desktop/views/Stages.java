package saddlewright.desktop.views;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import saddlewright.dentition.Arch;
import saddlewright.desktop.Step;
import saddlewright.desktop.Worktable;
import saddlewright.prescription.growth.GrowthCaption;
import saddlewright.prescription.growth.GrowthStage;

/** Walks through the stages of the design that lies on the desk. */
public final class Stages {
  private final Worktable table;

  public Stages(Worktable table) {
    this.table = table;
  }

  /** Shows a stage; the sheet is brought up where another page hides it. */
  public void show(GrowthStage stage) {
    if (!table.openProperty().get()) {
      return;
    }
    if (table.stepProperty().get() == Step.PRESCRIPTION) {
      table.stepProperty().set(Step.REVIEW);
    }
    table.stageProperty().set(Optional.of(stage));
  }

  /** Shows the whole design again. */
  public void leave() {
    table.stageProperty().set(Optional.empty());
  }

  public boolean isShown() {
    return table.stageProperty().get().isPresent();
  }

  /** Goes to the next stage; from the whole design to the first. */
  public void onwards() {
    Optional<GrowthStage> now = table.stageProperty().get();
    show(now.isEmpty() ? GrowthStage.CHART : now.get().next().orElse(now.get()));
  }

  /** Goes to the stage before; from the whole design to the last. */
  public void back() {
    Optional<GrowthStage> now = table.stageProperty().get();
    show(now.isEmpty() ? GrowthStage.COMPLETE : now.get().previous().orElse(now.get()));
  }

  /** What was decided at the stage that is shown, in the arches that are seen. */
  Optional<GrowthCaption> caption() {
    List<Arch> seen =
        Arrays.stream(Arch.values()).filter(table.shownProperty().get()::shows).toList();
    return table
        .stageProperty()
        .get()
        .map(s -> GrowthCaption.of(s, table.assessment(), table.notationProperty().get(), seen));
  }
}
