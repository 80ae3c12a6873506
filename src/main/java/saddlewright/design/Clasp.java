package saddlewright.design;

import java.util.List;
import saddlewright.dentition.End;
import saddlewright.dentition.Tooth;
import saddlewright.dentition.Zone;

/**
 * A retentive arm whose tip springs into an undercut.
 *
 * @param tooth the tooth it holds
 * @param form shape and approach of the arm
 * @param tip the zone in which its tip ends
 * @param origin the end of the tooth from which the arm comes
 * @param material alloy or polymer and how it was worked
 */
public record Clasp(
    ComponentId id, Tooth tooth, ClaspForm form, Zone tip, End origin, ClaspMaterial material)
    implements Component {

  public static Clasp of(ComponentId id, Tooth tooth, ClaspForm form, Zone tip, End origin) {
    return new Clasp(id, tooth, form, tip, origin, form.usualMaterial());
  }

  @Override
  public Clasp withId(ComponentId other) {
    return new Clasp(other, tooth, form, tip, origin, material);
  }

  @Override
  public <R> R accept(ComponentVisitor<R> visitor) {
    return visitor.clasp(this);
  }

  @Override
  public Clasp mirrored(ComponentId other) {
    return new Clasp(other, tooth.mirrored(), form, tip, origin, material);
  }

  @Override
  public List<Tooth> teeth() {
    return List.of(tooth);
  }
}
