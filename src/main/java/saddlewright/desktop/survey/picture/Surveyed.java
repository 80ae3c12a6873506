package saddlewright.desktop.survey.picture;

import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import saddlewright.archform.ArchForm;
import saddlewright.chart.ArchChart;
import saddlewright.dentition.Tooth;
import saddlewright.desktop.Words;
import saddlewright.desktop.Worktable;
import saddlewright.desktop.history.Gesture;

/**
 * The tooth that pictures show, and the chart of its arch: as it is, or as it would be while
 * something is being dragged. The case changes when it is let go.
 */
public final class Surveyed {
  private final Worktable table;
  private final ReadOnlyObjectWrapper<Tooth> tooth = new ReadOnlyObjectWrapper<>(Tooth.T11);
  private final ReadOnlyObjectWrapper<ArchChart> chart = new ReadOnlyObjectWrapper<>();

  public Surveyed(Worktable table) {
    this.table = table;
    chart.set(current());
    table.currentProperty().addListener(o -> chart.set(current()));
  }

  private ArchChart current() {
    return table.current().chart(tooth.get().arch());
  }

  public Worktable table() {
    return table;
  }

  public ReadOnlyObjectProperty<Tooth> toothProperty() {
    return tooth.getReadOnlyProperty();
  }

  public Tooth tooth() {
    return tooth.get();
  }

  /** The chart that is shown. */
  public ReadOnlyObjectProperty<ArchChart> chartProperty() {
    return chart.getReadOnlyProperty();
  }

  public ArchChart chart() {
    return chart.get();
  }

  /** Where the teeth stand as the chart that is shown has them. */
  public ArchForm form() {
    ArchForm usual = table.assessment().arch(tooth().arch()).form();
    return usual.chart().equals(chart()) ? usual : ArchForm.of(chart());
  }

  /** The chart as it is, whatever is shown. */
  public ArchChart settled() {
    return current();
  }

  public void turnTo(Tooth next) {
    tooth.set(next);
    chart.set(current());
  }

  /** Shows what would be. */
  public void preview(ArchChart next) {
    chart.set(next);
  }

  /** Shows what is. */
  public void cancel() {
    chart.set(current());
  }

  /** Makes an edit; those of one gesture are taken back together. */
  public void commit(Touch touch, Tooth of, ArchChart next, Gesture gesture) {
    String name = Words.of("edit.survey", of, touch.name(of), touch.words(next, of));
    table.apply(name, table.current().with(next), gesture);
    cancel();
  }
}
