package saddlewright.desktop.survey;

import java.util.Optional;
import saddlewright.chart.ArchChart;

/** What becomes of a text that is entered for an item. */
public sealed interface Entry {
  /**
   * It is understood.
   *
   * @param chart the chart with it
   * @param remark how it was understood, where that is not plain
   */
  record Taken(ArchChart chart, Optional<String> remark) implements Entry {}

  /**
   * It cannot be used.
   *
   * @param sentence what is wrong and what to do
   */
  record Refused(String sentence) implements Entry {}
}
