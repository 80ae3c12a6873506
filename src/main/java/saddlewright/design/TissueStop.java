package saddlewright.design;

import java.util.List;
import saddlewright.dentition.Tooth;

/**
 * A foot of metal that carries the far end of a mesh on the ridge while acrylic is packed.
 *
 * @param tooth the tooth position under which it stands
 */
public record TissueStop(ComponentId id, Tooth tooth) implements Component {

  @Override
  public TissueStop withId(ComponentId other) {
    return new TissueStop(other, tooth);
  }

  @Override
  public <R> R accept(ComponentVisitor<R> visitor) {
    return visitor.tissueStop(this);
  }

  @Override
  public TissueStop mirrored(ComponentId other) {
    return new TissueStop(other, tooth.mirrored());
  }

  @Override
  public List<Tooth> teeth() {
    return List.of(tooth);
  }
}
