package saddlewright.desktop.survey.card;

import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import saddlewright.archform.ArchForm;
import saddlewright.chart.ArchChart;
import saddlewright.dentition.Tooth;
import saddlewright.desktop.Words;
import saddlewright.desktop.Worktable;
import saddlewright.desktop.history.Gesture;

/**
 * The tooth that the card shows, and its chart: as it is, or as it would be while something is
 * being dragged. The case changes when it is let go.
 */
final class OnCard {
  private final Worktable table;
  private final ReadOnlyObjectWrapper<Tooth> tooth = new ReadOnlyObjectWrapper<>(Tooth.T11);
  private final ReadOnlyObjectWrapper<ArchChart> chart = new ReadOnlyObjectWrapper<>();

  OnCard(Worktable table) {
    this.table = table;
    chart.set(current());
    table.currentProperty().addListener(o -> chart.set(current()));
  }

  private ArchChart current() {
    return table.current().chart(tooth.get().arch());
  }

  Worktable table() {
    return table;
  }

  ReadOnlyObjectProperty<Tooth> toothProperty() {
    return tooth.getReadOnlyProperty();
  }

  Tooth tooth() {
    return tooth.get();
  }

  /** The chart that is shown. */
  ReadOnlyObjectProperty<ArchChart> chartProperty() {
    return chart.getReadOnlyProperty();
  }

  ArchChart chart() {
    return chart.get();
  }

  /** Where the teeth stand as the chart that is shown has them. */
  ArchForm form() {
    ArchForm usual = table.assessment().arch(tooth().arch()).form();
    return usual.chart().equals(chart()) ? usual : ArchForm.of(chart());
  }

  /** The chart as it is, whatever is shown. */
  ArchChart settled() {
    return current();
  }

  void turnTo(Tooth next) {
    tooth.set(next);
    chart.set(current());
  }

  /** Shows what would be. */
  void preview(ArchChart next) {
    chart.set(next);
  }

  /** Shows what is. */
  void cancel() {
    chart.set(current());
  }

  /** Makes an edit; those of one gesture are taken back together. */
  void commit(Touch touch, ArchChart next, Gesture gesture) {
    String name = Words.of("edit.survey", tooth(), touch.name(tooth()), touch.words(next, tooth()));
    table.apply(name, table.current().with(next), gesture);
    cancel();
  }
}
