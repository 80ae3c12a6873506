package saddlewright.rules;

import java.util.List;
import java.util.Optional;
import saddlewright.dentition.End;
import saddlewright.dentition.RestSite;
import saddlewright.dentition.Tooth;
import saddlewright.design.Rest;

/**
 * What rests carry one end of a saddle.
 *
 * @param abutment the standing tooth at that end
 * @param facing the end of that tooth that faces the saddle
 * @param facingRests rests of the abutment that carry the saddle directly: on the surface facing
 *     it, through the whole fissure, or on the cingulum
 * @param otherRests rests elsewhere on the abutment
 * @param nextRests rests on the standing tooth beyond
 */
public record EndSupport(
    Tooth abutment,
    End facing,
    List<Rest> facingRests,
    List<Rest> otherRests,
    List<Rest> nextRests) {

  static EndSupport of(Situation s, Tooth abutment, End facing) {
    List<Rest> all = s.design().stream(Rest.class).filter(r -> r.tooth() == abutment).toList();
    List<Rest> facingRests = all.stream().filter(r -> faces(r, facing)).toList();
    List<Rest> others = all.stream().filter(r -> !faces(r, facing)).toList();
    List<Rest> next =
        abutment
            .neighbour(facing.opposite())
            .filter(s.chart()::stands)
            .map(t -> s.design().stream(Rest.class).filter(r -> r.tooth() == t).toList())
            .orElse(List.of());
    return new EndSupport(abutment, facing, facingRests, others, next);
  }

  private static boolean faces(Rest rest, End facing) {
    return rest.site() == RestSite.CINGULUM
        || rest.form() == Rest.Form.DOUBLE
        || rest.site().end().equals(Optional.of(facing));
  }

  /** Whether the abutment bears any rest. */
  public boolean isRested() {
    return !facingRests.isEmpty() || !otherRests.isEmpty();
  }

  /** The lawful site for a rest that faces the saddle. */
  public RestSite facingSite() {
    return abutment.isAnterior() ? RestSite.CINGULUM : RestSite.occlusal(facing);
  }

  /** The lawful site for a rest away from the saddle; a cingulum has no side. */
  public RestSite farSite() {
    return abutment.isAnterior() ? RestSite.CINGULUM : RestSite.occlusal(facing.opposite());
  }
}
