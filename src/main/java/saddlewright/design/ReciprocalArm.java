package saddlewright.design;

import java.util.List;
import saddlewright.dentition.End;
import saddlewright.dentition.Face;
import saddlewright.dentition.Tooth;

/**
 * A rigid, untapered arm that holds a tooth against the push of a clasp.
 *
 * @param tooth the tooth it braces
 * @param face the face on which it lies
 * @param origin the end of the tooth from which the arm comes
 */
public record ReciprocalArm(ComponentId id, Tooth tooth, Face face, End origin)
    implements Component {

  @Override
  public ReciprocalArm withId(ComponentId other) {
    return new ReciprocalArm(other, tooth, face, origin);
  }

  @Override
  public <R> R accept(ComponentVisitor<R> visitor) {
    return visitor.reciprocalArm(this);
  }

  @Override
  public ReciprocalArm mirrored(ComponentId other) {
    return new ReciprocalArm(other, tooth.mirrored(), face, origin);
  }

  @Override
  public List<Tooth> teeth() {
    return List.of(tooth);
  }
}
