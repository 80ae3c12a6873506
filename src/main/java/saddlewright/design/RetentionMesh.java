package saddlewright.design;

import java.util.List;
import saddlewright.dentition.Span;
import saddlewright.dentition.Tooth;

/**
 * The open metalwork over a ridge that holds the acrylic of a saddle.
 *
 * @param span the tooth positions over which it runs
 * @param form its pattern
 */
public record RetentionMesh(ComponentId id, Span span, Form form) implements Component {

  /** Pattern of the metalwork. */
  public enum Form {
    LATTICE,
    MESH,
    POSTS
  }

  @Override
  public RetentionMesh withId(ComponentId other) {
    return new RetentionMesh(other, span, form);
  }

  @Override
  public <R> R accept(ComponentVisitor<R> visitor) {
    return visitor.retentionMesh(this);
  }

  @Override
  public RetentionMesh mirrored(ComponentId other) {
    return new RetentionMesh(other, span.mirrored(), form);
  }

  @Override
  public List<Tooth> teeth() {
    return span.teeth();
  }
}
