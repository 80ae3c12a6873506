package saddlewright.rules;

import java.util.Optional;
import saddlewright.dentition.Tooth;
import saddlewright.dentition.Zone;
import saddlewright.design.ClaspUnit;
import saddlewright.design.DesignEdit;
import saddlewright.design.Rest;

/** The edits that give a tooth a clasp in an undercut that the survey found. */
public final class NewClasp {
  private NewClasp() {}

  /** Such as "Clasp 45". */
  public static String label(Tooth tooth) {
    return "Clasp " + tooth;
  }

  /**
   * The usual unit for the first undercut found on the tooth, buccal ones first; empty where none
   * was found, or where the tooth is clasped already.
   */
  public static Optional<DesignEdit> edit(Situation s, Tooth tooth) {
    if (!s.chart().stands(tooth) || !StandingClasps.on(s, tooth).isEmpty()) {
      return Optional.empty();
    }
    boolean rested = s.design().stream(Rest.class).anyMatch(r -> r.tooth() == tooth);
    for (Zone zone : SurveyedTooth.of(s, tooth).undercut()) {
      for (ClaspUnit unit : ClaspUnit.reaching(s.chart(), s.design(), tooth, zone)) {
        if (unit == ClaspUnit.EMBRASURE_PAIR && rested) {
          continue; // Its rest carries an arm already; no second tooth need be clasped.
        }
        return unit.on(s.chart(), s.design(), tooth, zone).edit();
      }
    }
    return Optional.empty();
  }
}
