package saddlewright.desktop.survey.card;

import java.util.Optional;
import saddlewright.chart.ArchChart;
import saddlewright.chart.Tilt;
import saddlewright.chart.ToothFindings;
import saddlewright.dentition.Tooth;
import saddlewright.desktop.Words;
import saddlewright.desktop.survey.Item;
import saddlewright.desktop.survey.Items;
import saddlewright.desktop.survey.TiltItem;
import saddlewright.desktop.survey.picture.Touch;
import saddlewright.geometry.Point;

/**
 * Leans a tooth by turning it in a picture. A tooth leans one way only: turning it in one plane
 * takes the place of what was charted in another.
 *
 * @param id stable name
 * @param rightwards the way in which it leans when its crown goes to the right on the screen
 * @param leftwards the other way
 * @param crownUp whether the crown points up the screen
 * @param pivot about which it turns, millimetres of the picture, y up the screen
 */
record TiltTouch(String id, Tilt rightwards, Tilt leftwards, boolean crownUp, Point pivot)
    implements Touch {
  private static final double STEP = 1;
  private static final double BIG_STEP = 5;
  private static final double MOST = 60;

  @Override
  public Item item() {
    return Items.TILT;
  }

  @Override
  public String words(ArchChart chart, Tooth tooth) {
    ToothFindings f = chart.tooth(tooth);
    return f.tilt()
        .map(
            t ->
                f.tiltDegrees()
                    .map(d -> Words.of("card.tilt", TiltItem.word(t), Words.number(d)))
                    .orElseGet(() -> TiltItem.word(t)))
        .orElseGet(() -> Words.of("card.upright"));
  }

  /** What is seen of it in this plane, in words. */
  String inThisView(ArchChart chart, Tooth tooth) {
    Optional<Tilt> way = chart.tooth(tooth).tilt();
    return way.filter(t -> t != rightwards && t != leftwards).isPresent()
        ? Words.of("card.upright-here")
        : words(chart, tooth);
  }

  /** Degrees by which the crown leans to the right of the screen in this plane. */
  double rightDegrees(ArchChart chart, Tooth tooth) {
    ToothFindings f = chart.tooth(tooth);
    double degrees = f.tiltDegrees().orElse(f.tilt().isPresent() ? 10.0 : 0.0);
    return f.tilt()
        .map(t -> t == rightwards ? degrees : t == leftwards ? -degrees : 0.0)
        .orElse(0.0);
  }

  @Override
  public Optional<ArchChart> click(ArchChart chart, Tooth tooth) {
    return Optional.empty();
  }

  @Override
  public ArchChart step(ArchChart chart, Tooth tooth, int right, int up, boolean fine) {
    int way = right != 0 ? right : up;
    double now = rightDegrees(chart, tooth);
    double grid = fine ? STEP : BIG_STEP;
    double next =
        way > 0
            ? (Math.floor(now / grid + 1e-6) + 1) * grid
            : (Math.ceil(now / grid - 1e-6) - 1) * grid;
    return put(chart, tooth, next);
  }

  @Override
  public ArchChart drag(ArchChart chart, Tooth tooth, Point from, Point to, boolean fine) {
    double turned = angle(to) - angle(from);
    double grid = fine ? 0.5 : STEP;
    return put(chart, tooth, Math.round((rightDegrees(chart, tooth) + turned) / grid) * grid);
  }

  /** Degrees off the vertical, to the right positive. */
  private double angle(Point p) {
    double y = crownUp ? p.y() - pivot.y() : pivot.y() - p.y();
    return Math.toDegrees(Math.atan2(p.x() - pivot.x(), Math.max(0.1, y)));
  }

  private ArchChart put(ArchChart chart, Tooth tooth, double degrees) {
    double d = Math.max(-MOST, Math.min(MOST, degrees));
    return d == 0
        ? clear(chart, tooth)
        : TiltItem.put(
            chart, tooth, Optional.of(d > 0 ? rightwards : leftwards), Optional.of(Math.abs(d)));
  }

  @Override
  public ArchChart clear(ArchChart chart, Tooth tooth) {
    return TiltItem.put(chart, tooth, Optional.empty(), Optional.empty());
  }
}
