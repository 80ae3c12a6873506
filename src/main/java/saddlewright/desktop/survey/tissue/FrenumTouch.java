package saddlewright.desktop.survey.tissue;

import java.util.Optional;
import saddlewright.chart.ArchChart;
import saddlewright.dentition.Tooth;
import saddlewright.desktop.Words;
import saddlewright.desktop.survey.Item;
import saddlewright.desktop.survey.Items;
import saddlewright.desktop.survey.picture.Touch;
import saddlewright.geometry.Point;

/** Charts a frenum beside a tooth, or takes it away. */
record FrenumTouch() implements Touch {
  @Override
  public String id() {
    return "frenum";
  }

  @Override
  public Item item() {
    return Items.find("soft-frenum").orElseThrow();
  }

  private static boolean isThere(ArchChart chart, Tooth tooth) {
    return chart.softTissues().frena().contains(tooth);
  }

  @Override
  public String words(ArchChart chart, Tooth tooth) {
    return Words.of(isThere(chart, tooth) ? "survey.yes" : "card.none");
  }

  private static ArchChart with(ArchChart chart, Tooth tooth, boolean there) {
    return chart.with(Items.withFrenum(chart.softTissues(), tooth, there));
  }

  @Override
  public Optional<ArchChart> click(ArchChart chart, Tooth tooth) {
    return Optional.of(with(chart, tooth, !isThere(chart, tooth)));
  }

  @Override
  public ArchChart step(ArchChart chart, Tooth tooth, int right, int up, boolean fine) {
    return chart;
  }

  @Override
  public ArchChart drag(ArchChart chart, Tooth tooth, Point from, Point to, boolean fine) {
    return chart;
  }

  @Override
  public ArchChart clear(ArchChart chart, Tooth tooth) {
    return with(chart, tooth, false);
  }
}
