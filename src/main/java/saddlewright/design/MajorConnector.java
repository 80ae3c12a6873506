package saddlewright.design;

import java.util.List;
import saddlewright.dentition.Span;
import saddlewright.dentition.Tooth;

/**
 * The part that joins the two sides of the denture.
 *
 * @param form its kind; decides the arch
 * @param span the tooth positions beside which it runs, from one side to the other. Where an end of
 *     the span lies in or beside a saddle the connector runs into that saddle.
 * @param shape sizes set by hand
 */
public record MajorConnector(ComponentId id, ConnectorForm form, Span span, ConnectorShape shape)
    implements Component {

  public MajorConnector {
    if (form.arch() != span.arch()) {
      throw new IllegalArgumentException(
          "a " + form + " belongs to the " + form.arch().code() + " arch, not to " + span);
    }
  }

  public static MajorConnector of(ComponentId id, ConnectorForm form, Span span) {
    return new MajorConnector(id, form, span, ConnectorShape.DEFAULT);
  }

  @Override
  public MajorConnector withId(ComponentId other) {
    return new MajorConnector(other, form, span, shape);
  }

  public MajorConnector withShape(ConnectorShape other) {
    return new MajorConnector(id, form, span, other);
  }

  @Override
  public <R> R accept(ComponentVisitor<R> visitor) {
    return visitor.majorConnector(this);
  }

  @Override
  public MajorConnector mirrored(ComponentId other) {
    return new MajorConnector(other, form, span.mirrored(), shape);
  }

  @Override
  public List<Tooth> teeth() {
    return span.teeth();
  }
}
