package saddlewright.desktop.survey.picture;

import java.util.Optional;
import saddlewright.chart.ArchChart;
import saddlewright.dentition.Tooth;
import saddlewright.desktop.survey.Item;
import saddlewright.geometry.Point;

/** What handling something in a picture does to the chart. */
public interface Touch {
  /** Stable name, in kebab case. */
  String id();

  /** The item whose number it sets. */
  Item item();

  /** What it is, in the middle of a sentence. */
  default String name(Tooth tooth) {
    return item().name(tooth);
  }

  /** The value in words. */
  String words(ArchChart chart, Tooth tooth);

  /** What a click does; empty where it does nothing. */
  Optional<ArchChart> click(ArchChart chart, Tooth tooth);

  /**
   * What an arrow key or a notch of the wheel does.
   *
   * @param right one to the right on the screen, minus one to the left
   * @param up one up on the screen, minus one down
   * @param fine whether the step is to be small
   */
  ArchChart step(ArchChart chart, Tooth tooth, int right, int up, boolean fine);

  /**
   * What dragging does.
   *
   * @param from where it was taken hold of, millimetres of the picture, y up the screen
   * @param to where it is now
   */
  ArchChart drag(ArchChart chart, Tooth tooth, Point from, Point to, boolean fine);

  /** The chart without the value. */
  ArchChart clear(ArchChart chart, Tooth tooth);
}
