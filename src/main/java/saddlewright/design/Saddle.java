package saddlewright.design;

import java.util.List;
import saddlewright.dentition.Span;
import saddlewright.dentition.Tooth;

/**
 * The part of the denture that carries artificial teeth over an edentulous ridge.
 *
 * @param span the tooth positions it replaces
 * @param base what its fitting surface is made of
 * @param flange how far it reaches into the buccal or labial sulcus
 * @param lingualFinish what the tongue feels
 */
public record Saddle(ComponentId id, Span span, Base base, Flange flange, Finish lingualFinish)
    implements Component {

  /** Material of the fitting surface. */
  public enum Base {
    ACRYLIC_ON_MESH,
    METAL
  }

  /** Extent towards the buccal or labial sulcus. */
  public enum Flange {
    FULL,
    PART,
    GUM_FITTED
  }

  /** Finish of the lingual or palatal surface. */
  public enum Finish {
    ACRYLIC,
    METAL
  }

  public static Saddle of(ComponentId id, Span span) {
    return new Saddle(id, span, Base.ACRYLIC_ON_MESH, Flange.FULL, Finish.ACRYLIC);
  }

  public Saddle withSpan(Span other) {
    return new Saddle(id, other, base, flange, lingualFinish);
  }

  public Saddle withBase(Base other) {
    return new Saddle(id, span, other, flange, lingualFinish);
  }

  public Saddle withFlange(Flange other) {
    return new Saddle(id, span, base, other, lingualFinish);
  }

  public Saddle withLingualFinish(Finish other) {
    return new Saddle(id, span, base, flange, other);
  }

  @Override
  public Saddle withId(ComponentId other) {
    return new Saddle(other, span, base, flange, lingualFinish);
  }

  @Override
  public <R> R accept(ComponentVisitor<R> visitor) {
    return visitor.saddle(this);
  }

  @Override
  public Saddle mirrored(ComponentId other) {
    return new Saddle(other, span.mirrored(), base, flange, lingualFinish);
  }

  @Override
  public List<Tooth> teeth() {
    return span.teeth();
  }
}
