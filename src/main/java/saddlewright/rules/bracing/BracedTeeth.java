package saddlewright.rules.bracing;

import java.util.List;
import saddlewright.dentition.Side;
import saddlewright.dentition.Tooth;
import saddlewright.design.Clasp;
import saddlewright.design.Component;
import saddlewright.design.GuidePlate;
import saddlewright.design.MajorConnector;
import saddlewright.design.MinorConnector;
import saddlewright.design.Plating;
import saddlewright.design.ReciprocalArm;
import saddlewright.rules.Situation;

/** The teeth that hold a denture against sideways push. */
final class BracedTeeth {
  /** The upper limb of a continuous bar runs from first premolar to first premolar. */
  private static final int LAST_UNDER_A_CONTINUOUS_BAR = 4;

  private BracedTeeth() {}

  /** Standing teeth of a side touched by a rigid upright part: arm, plate, strut or plating. */
  static List<Tooth> on(Situation s, Side side) {
    return s.chart().standing().stream().filter(t -> t.side() == side && isBraced(s, t)).toList();
  }

  private static boolean isBraced(Situation s, Tooth tooth) {
    return s.design().components().stream().anyMatch(c -> braces(c, tooth));
  }

  private static boolean braces(Component c, Tooth tooth) {
    if (!c.teeth().contains(tooth)) {
      return false;
    }
    if (c instanceof MajorConnector m) {
      return switch (m.form()) {
        case LINGUAL_PLATE, DENTAL_BAR -> true;
        case CONTINUOUS_BAR -> tooth.position() <= LAST_UNDER_A_CONTINUOUS_BAR;
        default -> false;
      };
    }
    if (c instanceof Clasp k) {
      return k.form().isSelfReciprocating();
    }
    return c instanceof ReciprocalArm
        || c instanceof GuidePlate
        || c instanceof Plating
        || c instanceof MinorConnector;
  }
}
