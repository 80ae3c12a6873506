package saddlewright.layout;

import saddlewright.chart.Undercut;
import saddlewright.dentition.CrownSize;
import saddlewright.dentition.Tooth;
import saddlewright.dentition.Zone;

/**
 * The heights on a crown at which an arm begins and ends, in mm above the gingival margin, from
 * which its length in space follows: √(plan² + drop²).
 *
 * <p>The shoulder of an occlusally approaching arm lies at the junction of the occlusal and the
 * middle third, its tip in the gingival third, at the charted height or else in the middle of that
 * third; a reciprocal arm ends in the middle of the crown (common practice). The height of the
 * crown is the charted one or else the published mean.
 */
final class ArmHeight {
  private static final double SHOULDER_SHARE = 2.0 / 3;
  private static final double TIP_SHARE = 1.0 / 6;
  private static final double BRACE_SHARE = 1.0 / 2;
  private static final double BULGE_SHARE = 1.0 / 2;

  private final Ground ground;
  private final Tooth tooth;

  ArmHeight(Ground ground, Tooth tooth) {
    this.ground = ground;
    this.tooth = tooth;
  }

  double crown() {
    return ground.chart().tooth(tooth).crownHeight().orElse(CrownSize.mean(tooth).height());
  }

  double tip(Zone zone) {
    Undercut found = ground.chart().tooth(tooth).undercuts().get(zone);
    double usual = TIP_SHARE * crown();
    return found == null ? usual : found.height().orElse(usual);
  }

  /**
   * Way of a tip from the bulge down to its seat, mm. The bulge is taken at the middle of the crown
   * (common practice), since only the place of the tip is charted.
   */
  double travel(Zone zone) {
    return Math.max(0, BULGE_SHARE * crown() - tip(zone));
  }

  /** Length of a retentive arm in space, mm. */
  double retentive(double plan, Zone zone) {
    return Math.hypot(plan, SHOULDER_SHARE * crown() - tip(zone));
  }

  /** Length of a reciprocal arm in space, mm. */
  double bracing(double plan) {
    return Math.hypot(plan, (SHOULDER_SHARE - BRACE_SHARE) * crown());
  }
}
