package saddlewright.design;

import java.util.List;
import saddlewright.dentition.Tooth;

/**
 * A metal back for one artificial tooth where there is no room for acrylic.
 *
 * @param tooth the tooth position
 */
public record Backing(ComponentId id, Tooth tooth) implements Component {

  @Override
  public Backing withId(ComponentId other) {
    return new Backing(other, tooth);
  }

  @Override
  public <R> R accept(ComponentVisitor<R> visitor) {
    return visitor.backing(this);
  }

  @Override
  public Backing mirrored(ComponentId other) {
    return new Backing(other, tooth.mirrored());
  }

  @Override
  public List<Tooth> teeth() {
    return List.of(tooth);
  }
}
