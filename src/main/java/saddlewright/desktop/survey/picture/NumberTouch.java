package saddlewright.desktop.survey.picture;

import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import saddlewright.chart.ArchChart;
import saddlewright.dentition.Tooth;
import saddlewright.desktop.survey.NumberItem;
import saddlewright.geometry.Point;
import saddlewright.geometry.Vector;

/**
 * Sets a number: by clicks through the usual values, by steps, and by dragging.
 *
 * @param id stable name
 * @param item the number
 * @param usual values that clicks go through; none where a click does nothing
 * @param step an ordinary step
 * @param fine a small step
 * @param start where it begins when nothing is charted
 * @param towards the direction in the picture, y up the screen, in which dragging makes it larger
 *     by one for each millimetre
 */
public record NumberTouch(
    String id,
    NumberItem item,
    List<Double> usual,
    double step,
    double fine,
    ToDoubleFunction<Tooth> start,
    Vector towards)
    implements Touch {

  /** The gauges of a surveyor, and that an undercut was looked for and not found. */
  public static final List<Double> GAUGES = List.of(0.25, 0.5, 0.75, 0.0);

  public NumberTouch {
    usual = List.copyOf(usual);
  }

  @Override
  public String words(ArchChart chart, Tooth tooth) {
    return item.amount(chart, tooth);
  }

  @Override
  public Optional<ArchChart> click(ArchChart chart, Tooth tooth) {
    if (usual.isEmpty()) {
      return Optional.empty();
    }
    Optional<Double> now = item.value(chart, tooth);
    int at = now.map(usual::indexOf).orElse(-1);
    if (now.isPresent() && at < 0) {
      // From a value between, on to the next larger one.
      double v = now.get();
      double next = usual.stream().filter(u -> u > v).min(Double::compare).orElse(usual.get(0));
      return Optional.of(put(chart, tooth, next));
    }
    return Optional.of(put(chart, tooth, usual.get((at + 1) % usual.size())));
  }

  @Override
  public ArchChart step(ArchChart chart, Tooth tooth, int right, int up, boolean small) {
    double grid = small ? fine : step;
    Optional<Double> now = item.value(chart, tooth);
    if (now.isEmpty()) {
      return put(chart, tooth, start.applyAsDouble(tooth));
    }
    double way = towards.dot(new Vector(right, up));
    int sign = (int) Math.signum(Math.abs(way) > 1e-6 ? way : right + up);
    double v = now.get() / grid;
    double next = sign > 0 ? (Math.floor(v + 1e-6) + 1) * grid : (Math.ceil(v - 1e-6) - 1) * grid;
    return put(chart, tooth, next);
  }

  @Override
  public ArchChart drag(ArchChart chart, Tooth tooth, Point from, Point to, boolean small) {
    double now = item.value(chart, tooth).orElseGet(() -> start.applyAsDouble(tooth));
    double grid = small ? fine / 2 : fine;
    double moved = now + from.to(to).dot(towards);
    return put(chart, tooth, Math.round(moved / grid) * grid);
  }

  @Override
  public ArchChart clear(ArchChart chart, Tooth tooth) {
    return item.put(chart, tooth, Optional.empty());
  }

  private ArchChart put(ArchChart chart, Tooth tooth, double value) {
    // A tenth has no exact binary form: what was worked out is rounded again to be one to the eye.
    double round = Math.round(value * 1000) / 1000.0;
    double within = Math.max(item.least(), Math.min(item.most(), round));
    return item.put(chart, tooth, Optional.of(within));
  }
}
