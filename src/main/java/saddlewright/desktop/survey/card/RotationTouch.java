package saddlewright.desktop.survey.card;

import java.util.Optional;
import saddlewright.chart.ArchChart;
import saddlewright.dentition.Tooth;
import saddlewright.desktop.survey.Item;
import saddlewright.desktop.survey.Items;
import saddlewright.desktop.survey.picture.Touch;
import saddlewright.geometry.Point;

/**
 * Turns a tooth about its long axis in the view from above.
 *
 * @param clockwise whether turning clockwise on the screen brings mesial towards lingual
 */
record RotationTouch(boolean clockwise) implements Touch {
  private static final double STEP = 5;
  private static final double FINE = 1;
  private static final double HALF_TURN = 180;

  @Override
  public String id() {
    return item().id();
  }

  @Override
  public Item item() {
    return Items.ROTATION;
  }

  @Override
  public String words(ArchChart chart, Tooth tooth) {
    return Items.ROTATION.amount(chart, tooth);
  }

  @Override
  public Optional<ArchChart> click(ArchChart chart, Tooth tooth) {
    return Optional.empty();
  }

  @Override
  public ArchChart step(ArchChart chart, Tooth tooth, int right, int up, boolean fine) {
    double now = Items.ROTATION.value(chart, tooth).orElse(0.0);
    double grid = fine ? FINE : STEP;
    // To the right and down is clockwise, as on the dial of a clock at three.
    int way = (right != 0 ? right : -up) * (clockwise ? 1 : -1);
    double next =
        way > 0
            ? (Math.floor(now / grid + 1e-6) + 1) * grid
            : (Math.ceil(now / grid - 1e-6) - 1) * grid;
    return put(chart, tooth, next);
  }

  @Override
  public ArchChart drag(ArchChart chart, Tooth tooth, Point from, Point to, boolean fine) {
    double turned =
        Math.toDegrees(Math.atan2(from.y(), from.x()) - Math.atan2(to.y(), to.x()))
            * (clockwise ? 1 : -1);
    double now = Items.ROTATION.value(chart, tooth).orElse(0.0);
    double grid = fine ? 0.5 : FINE;
    return put(chart, tooth, Math.round((now + turned) / grid) * grid);
  }

  private static ArchChart put(ArchChart chart, Tooth tooth, double degrees) {
    double round = degrees - 2 * HALF_TURN * Math.floor((degrees + HALF_TURN) / (2 * HALF_TURN));
    return Items.ROTATION.put(chart, tooth, Optional.of(round == 0 ? 0 : round));
  }

  @Override
  public ArchChart clear(ArchChart chart, Tooth tooth) {
    return Items.ROTATION.put(chart, tooth, Optional.empty());
  }
}
