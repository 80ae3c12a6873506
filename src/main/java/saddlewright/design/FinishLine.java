package saddlewright.design;

import java.util.List;
import saddlewright.dentition.Span;
import saddlewright.dentition.Tooth;

/**
 * The step at which acrylic meets polished metal along the lingual side of a saddle.
 *
 * @param span the saddle positions along which it runs
 * @param level outer, inner or both surfaces of the metal
 */
public record FinishLine(ComponentId id, Span span, Level level) implements Component {

  /** The surface of the metal that bears the step. */
  public enum Level {
    EXTERNAL,
    INTERNAL,
    BOTH
  }

  @Override
  public FinishLine withId(ComponentId other) {
    return new FinishLine(other, span, level);
  }

  @Override
  public <R> R accept(ComponentVisitor<R> visitor) {
    return visitor.finishLine(this);
  }

  @Override
  public FinishLine mirrored(ComponentId other) {
    return new FinishLine(other, span.mirrored(), level);
  }

  @Override
  public List<Tooth> teeth() {
    return span.teeth();
  }
}
