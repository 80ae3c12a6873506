package saddlewright.design;

import java.util.List;
import saddlewright.dentition.Tooth;

/**
 * A raised line on the fitting surface along the border of the upper major connector.
 *
 * @param extent the borders that bear it
 */
public record PostDam(ComponentId id, Extent extent) implements Component {
  /** The borders that bear the line. */
  public enum Extent {
    /** Across the palate at the rear border. */
    POSTERIOR_BORDER,
    /** All borders (beading), faded over the midline and near the gingivae. */
    ALL_BORDERS
  }

  @Override
  public PostDam withId(ComponentId other) {
    return new PostDam(other, extent);
  }

  @Override
  public <R> R accept(ComponentVisitor<R> visitor) {
    return visitor.postDam(this);
  }

  @Override
  public PostDam mirrored(ComponentId other) {
    return new PostDam(other, extent);
  }

  @Override
  public List<Tooth> teeth() {
    return List.of();
  }
}
