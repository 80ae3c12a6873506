package saddlewright.rules;

import java.util.Optional;
import saddlewright.chart.Undercut;
import saddlewright.design.Clasp;
import saddlewright.design.ClaspMaterial;
import saddlewright.design.DesignEdit;

/**
 * A wrought arm in the place of a stiff one.
 *
 * @param arm the arm, in the wire that suits the charted undercut, or in steel when none does
 * @param deepened the depth in mm to which its undercut must be brought first, if any
 */
public record WroughtArm(Clasp arm, Optional<Double> deepened) {

  public static WroughtArm of(Situation s, Clasp stiff) {
    return of(s, stiff, ReshapedClasp.wrought(stiff));
  }

  /** The same from above, in the place of a bar. */
  public static WroughtArm fromAbove(Situation s, Clasp bar) {
    return of(s, bar, ReshapedClasp.wroughtFromAbove(bar));
  }

  private static WroughtArm of(Situation s, Clasp stiff, Clasp steel) {
    Optional<Double> depth =
        SurveyedTooth.of(s, stiff.tooth()).at(steel.tip()).map(Undercut::depth).filter(d -> d > 0);
    double asked = s.profile().limit(Quantity.UNDERCUT_WROUGHT_STEEL);
    double gold = s.profile().limit(Quantity.UNDERCUT_WROUGHT_GOLD);
    if (depth.isEmpty() || suits(s, depth.get(), asked)) {
      return new WroughtArm(steel, Optional.empty());
    }
    return suits(s, depth.get(), gold)
        ? new WroughtArm(ReshapedClasp.of(steel, ClaspMaterial.WROUGHT_GOLD), Optional.empty())
        : new WroughtArm(steel, Optional.of(asked));
  }

  private static boolean suits(Situation s, double depth, double asked) {
    return Math.abs(depth - asked) <= s.profile().limit(Quantity.UNDERCUT_LATITUDE) + 1e-9;
  }

  /** Whether the undercut is charted as one in which no wire works. */
  public boolean needsAnotherUndercut() {
    return deepened.isPresent();
  }

  /** Says what the tooth needs as well, since the chart cannot be mended by an edit. */
  public String label() {
    return "Make the arm wrought" + preparation();
  }

  public String fromAboveLabel() {
    return "Approach from above, with a wrought arm" + preparation();
  }

  private String preparation() {
    return deepened.map(d -> ", and shape an undercut of " + Amount.mm(d) + " for it").orElse("");
  }

  public DesignEdit edit() {
    return new DesignEdit.Change(arm);
  }
}
