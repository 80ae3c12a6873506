package saddlewright.rules;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import saddlewright.dentition.End;
import saddlewright.dentition.Tooth;
import saddlewright.design.GuidePlate;
import saddlewright.design.Rest;
import saddlewright.design.Saddle;

/**
 * The tooth at which a free-end saddle begins.
 *
 * @param saddle the saddle
 * @param end its only bounded end
 */
public record TerminalAbutment(Saddle saddle, EndSupport end) {

  /** One for every tooth at which free-end saddles of a design begin. */
  public static List<TerminalAbutment> all(Situation s) {
    List<TerminalAbutment> out = new ArrayList<>(2);
    for (AreaSupport a : AreaSupport.all(s)) {
      if (a.isFreeEnd() && out.stream().noneMatch(x -> x.tooth() == a.ends().get(0).abutment())) {
        out.add(new TerminalAbutment(a.saddle(), a.ends().get(0)));
      }
    }
    return out;
  }

  /** The tooth as a terminal abutment, if it is one. */
  public static Optional<TerminalAbutment> at(Situation s, Tooth tooth) {
    return all(s).stream().filter(t -> t.tooth() == tooth).findFirst();
  }

  public Tooth tooth() {
    return end.abutment();
  }

  /** The end of the tooth that faces the saddle. */
  public End facing() {
    return end.facing();
  }

  /** Whether its only rests lie beside the saddle on its occlusal surface. */
  public boolean isRestedNearOnly() {
    return end.otherRests().isEmpty()
        && end.facingRests().stream().anyMatch(r -> r.site().isOcclusal());
  }

  /** Whether it is rested away from the saddle, or on a cingulum, which has no side. */
  public boolean isRestedAway() {
    return !end.otherRests().isEmpty()
        || end.facingRests().stream()
            .anyMatch(r -> !r.site().isOcclusal() || r.form() == Rest.Form.DOUBLE);
  }

  /** Whether a guide plate lies on the surface that faces the saddle. */
  public boolean hasGuidePlate(Situation s) {
    return s.design().stream(GuidePlate.class)
        .anyMatch(p -> p.tooth() == tooth() && p.end() == facing());
  }
}
