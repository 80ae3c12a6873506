package saddlewright.design;

import java.util.List;
import saddlewright.dentition.Span;
import saddlewright.dentition.Tooth;

/**
 * A thin plate of metal up the lingual surfaces of teeth, with a scalloped upper edge.
 *
 * @param span the teeth it covers
 */
public record Plating(ComponentId id, Span span) implements Component {

  @Override
  public Plating withId(ComponentId other) {
    return new Plating(other, span);
  }

  @Override
  public <R> R accept(ComponentVisitor<R> visitor) {
    return visitor.plating(this);
  }

  @Override
  public Plating mirrored(ComponentId other) {
    return new Plating(other, span.mirrored());
  }

  @Override
  public List<Tooth> teeth() {
    return span.teeth();
  }
}
