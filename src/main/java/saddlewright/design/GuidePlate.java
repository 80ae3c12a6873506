package saddlewright.design;

import java.util.List;
import saddlewright.dentition.End;
import saddlewright.dentition.Tooth;

/**
 * A plate of metal that slides along the guide plane of a tooth beside a saddle.
 *
 * @param tooth the tooth it touches
 * @param end the surface it lies on
 */
public record GuidePlate(ComponentId id, Tooth tooth, End end) implements Component {

  @Override
  public GuidePlate withId(ComponentId other) {
    return new GuidePlate(other, tooth, end);
  }

  @Override
  public <R> R accept(ComponentVisitor<R> visitor) {
    return visitor.guidePlate(this);
  }

  @Override
  public GuidePlate mirrored(ComponentId other) {
    return new GuidePlate(other, tooth.mirrored(), end);
  }

  @Override
  public List<Tooth> teeth() {
    return List.of(tooth);
  }
}
