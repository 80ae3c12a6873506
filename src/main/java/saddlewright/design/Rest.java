package saddlewright.design;

import java.util.List;
import saddlewright.dentition.RestSite;
import saddlewright.dentition.Tooth;

/**
 * A rigid stop that seats on a prepared place of a tooth and passes load to it.
 *
 * @param tooth the tooth it stands on
 * @param site where on the crown
 * @param form its extent
 * @param seat what it seats on
 * @param indirectRetainer meant to keep the saddle on the other side of the clasp axis from lifting
 */
public record Rest(
    ComponentId id, Tooth tooth, RestSite site, Form form, Seat seat, boolean indirectRetainer)
    implements Component {

  /** Extent of a rest. */
  public enum Form {
    STANDARD,
    /** Reaches past the centre of the tooth. */
    EXTENDED,
    /** Runs through the fissure from one marginal ridge to the other. */
    DOUBLE,
    /** Runs through the embrasure on to the ridge of the neighbour, which has a rest of its own. */
    EMBRASURE
  }

  /** What a rest seats on. */
  public enum Seat {
    PREPARED_ENAMEL,
    COMPOSITE,
    RESTORATION,
    UNPREPARED
  }

  public static Rest of(ComponentId id, Tooth tooth, RestSite site) {
    return new Rest(id, tooth, site, Form.STANDARD, Seat.PREPARED_ENAMEL, false);
  }

  /** The same rest, meant to keep a saddle from lifting. */
  public Rest asIndirectRetainer() {
    return new Rest(id, tooth, site, form, seat, true);
  }

  /** The same rest, meant for support only. */
  public Rest asPlain() {
    return new Rest(id, tooth, site, form, seat, false);
  }

  @Override
  public Rest withId(ComponentId other) {
    return new Rest(other, tooth, site, form, seat, indirectRetainer);
  }

  /** The same rest at another place of its tooth. */
  public Rest withSite(RestSite other) {
    return new Rest(id, tooth, other, form, seat, indirectRetainer);
  }

  public Rest withForm(Form other) {
    return new Rest(id, tooth, site, other, seat, indirectRetainer);
  }

  public Rest withSeat(Seat other) {
    return new Rest(id, tooth, site, form, other, indirectRetainer);
  }

  @Override
  public <R> R accept(ComponentVisitor<R> visitor) {
    return visitor.rest(this);
  }

  @Override
  public Rest mirrored(ComponentId other) {
    return new Rest(other, tooth.mirrored(), site, form, seat, indirectRetainer);
  }

  @Override
  public List<Tooth> teeth() {
    return List.of(tooth);
  }
}
