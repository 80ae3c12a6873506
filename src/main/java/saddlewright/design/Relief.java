package saddlewright.design;

import java.util.List;
import saddlewright.dentition.Tooth;

/**
 * A space left between metal and tissue.
 *
 * @param area the tissue that is spared
 * @param thickness of the spacer in millimetres
 */
public record Relief(ComponentId id, Area area, double thickness) implements Component {
  /** The tissue that is spared. */
  public enum Area {
    PALATAL_TORUS,
    MIDLINE_RAPHE,
    INCISIVE_PAPILLA,
    /** All along a lower major connector. */
    UNDER_LOWER_CONNECTOR,
    /** Where metal crosses gingival margins. */
    GINGIVAL_MARGINS
  }

  public Relief {
    if (!(thickness >= 0 && thickness <= 5)) {
      throw new IllegalArgumentException(
          "relief is " + thickness + " mm thick; it must be a number from 0 to 5");
    }
  }

  @Override
  public Relief withId(ComponentId other) {
    return new Relief(other, area, thickness);
  }

  @Override
  public <R> R accept(ComponentVisitor<R> visitor) {
    return visitor.relief(this);
  }

  @Override
  public Relief mirrored(ComponentId other) {
    return new Relief(other, area, thickness);
  }

  @Override
  public List<Tooth> teeth() {
    return List.of();
  }
}
