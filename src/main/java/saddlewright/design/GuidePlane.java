package saddlewright.design;

import java.util.List;
import saddlewright.dentition.Tooth;

/**
 * A prepared flat surface of a tooth, parallel to the path of insertion.
 *
 * @param tooth the tooth
 * @param surface the surface that is prepared
 */
public record GuidePlane(ComponentId id, Tooth tooth, Surface surface) implements Component {

  /** The surface that bears the plane. */
  public enum Surface {
    MESIAL,
    DISTAL,
    LINGUAL
  }

  @Override
  public GuidePlane withId(ComponentId other) {
    return new GuidePlane(other, tooth, surface);
  }

  @Override
  public <R> R accept(ComponentVisitor<R> visitor) {
    return visitor.guidePlane(this);
  }

  @Override
  public GuidePlane mirrored(ComponentId other) {
    return new GuidePlane(other, tooth.mirrored(), surface);
  }

  @Override
  public List<Tooth> teeth() {
    return List.of(tooth);
  }
}
