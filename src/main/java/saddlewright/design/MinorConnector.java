package saddlewright.design;

import java.util.List;
import saddlewright.dentition.End;
import saddlewright.dentition.Tooth;

/**
 * A strut that joins a rest, an arm or a bar to the major connector.
 *
 * @param tooth the tooth beside or behind which it runs
 * @param place where it meets that tooth
 */
public record MinorConnector(ComponentId id, Tooth tooth, Place place) implements Component {

  /** Where a minor connector meets its tooth. */
  public enum Place {
    MESIAL_EMBRASURE,
    DISTAL_EMBRASURE,
    /** Up the middle of the lingual face. */
    LINGUAL_FACE
  }

  public static Place embrasure(End end) {
    return end == End.MESIAL ? Place.MESIAL_EMBRASURE : Place.DISTAL_EMBRASURE;
  }

  @Override
  public MinorConnector withId(ComponentId other) {
    return new MinorConnector(other, tooth, place);
  }

  @Override
  public <R> R accept(ComponentVisitor<R> visitor) {
    return visitor.minorConnector(this);
  }

  @Override
  public MinorConnector mirrored(ComponentId other) {
    return new MinorConnector(other, tooth.mirrored(), place);
  }

  @Override
  public List<Tooth> teeth() {
    return List.of(tooth);
  }
}
