package saddlewright.design;

import java.util.List;
import saddlewright.dentition.Tooth;

/**
 * A component of a kind that this version does not know, kept word for word so that saving loses
 * nothing.
 *
 * @param kind the kind as the file names it
 * @param source its JSON text
 */
public record UnknownComponent(ComponentId id, String kind, String source) implements Component {
  @Override
  public UnknownComponent withId(ComponentId other) {
    return new UnknownComponent(other, kind, source);
  }

  @Override
  public <R> R accept(ComponentVisitor<R> visitor) {
    return visitor.unknown(this);
  }

  @Override
  public UnknownComponent mirrored(ComponentId other) {
    return new UnknownComponent(other, kind, source);
  }

  @Override
  public List<Tooth> teeth() {
    return List.of();
  }
}
