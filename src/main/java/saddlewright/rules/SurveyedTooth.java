package saddlewright.rules;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import saddlewright.chart.Undercut;
import saddlewright.dentition.Face;
import saddlewright.dentition.Tooth;
import saddlewright.dentition.Zone;

/**
 * What the survey found on one tooth.
 *
 * @param tooth the tooth
 * @param charted by zone; one of depth 0 was looked for and not found
 */
public record SurveyedTooth(Tooth tooth, Map<Zone, Undercut> charted) {

  public static SurveyedTooth of(Situation s, Tooth tooth) {
    return new SurveyedTooth(tooth, s.chart().tooth(tooth).undercuts());
  }

  public boolean isCharted(Zone zone) {
    return charted.containsKey(zone);
  }

  /** Whether an undercut was found there. */
  public boolean holds(Zone zone) {
    Undercut u = charted.get(zone);
    return u != null && u.depth() > 0;
  }

  public Optional<Undercut> at(Zone zone) {
    return Optional.ofNullable(charted.get(zone));
  }

  /** The zones in which an undercut was found. */
  public List<Zone> undercut() {
    return charted.keySet().stream().filter(this::holds).toList();
  }

  /** The same on one face. */
  public List<Zone> undercut(Face face) {
    return undercut().stream().filter(z -> z.face() == face).toList();
  }
}
