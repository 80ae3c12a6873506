package saddlewright.rules;

import saddlewright.dentition.End;
import saddlewright.dentition.Zone;
import saddlewright.design.Clasp;
import saddlewright.design.ClaspForm;
import saddlewright.design.ClaspMaterial;

/** A clasp made otherwise in its place, with the same name in the design. */
public final class ReshapedClasp {
  private ReshapedClasp() {}

  /** The same arm in wrought steel. */
  public static Clasp wrought(Clasp c) {
    return c.form().isGingivallyApproaching()
        ? wroughtFromAbove(c)
        : new Clasp(
            c.id(),
            c.tooth(),
            c.form() == ClaspForm.CIRCUMFERENTIAL ? ClaspForm.COMBINATION : c.form(),
            c.tip(),
            c.origin(),
            ClaspMaterial.WROUGHT_STAINLESS_STEEL);
  }

  /** A wrought arm from above: bar clasps mostly hold teeth too small for a long cast arm. */
  public static Clasp wroughtFromAbove(Clasp c) {
    return Clasp.of(c.id(), c.tooth(), ClaspForm.COMBINATION, c.tip(), farOrigin(c));
  }

  /** A cast three-arm clasp's arm, from the end away from the tip. */
  public static Clasp castFromAbove(Clasp c) {
    return Clasp.of(c.id(), c.tooth(), ClaspForm.CIRCUMFERENTIAL, c.tip(), farOrigin(c));
  }

  /** A ring that comes back to the end at which it begins. */
  public static Clasp ring(Clasp c, Zone tip) {
    return Clasp.of(c.id(), c.tooth(), ClaspForm.RING, tip, tip.end().orElse(c.origin()));
  }

  /** A bar from below: an I-bar, or half a T for an undercut at the end of the tooth behind. */
  public static Clasp fromBelow(Clasp c, End origin) {
    ClaspForm form = c.tip() == Zone.DISTOBUCCAL ? ClaspForm.HALF_T : ClaspForm.I_BAR;
    return Clasp.of(c.id(), c.tooth(), form, c.tip(), origin);
  }

  /** The same arm with its tip elsewhere; an arm from above then starts at the far end. */
  public static Clasp tipped(Clasp c, Zone tip) {
    End origin =
        c.form().isGingivallyApproaching()
            ? c.origin()
            : tip.end().map(e -> c.form() == ClaspForm.RING ? e : e.opposite()).orElse(c.origin());
    return new Clasp(c.id(), c.tooth(), c.form(), tip, origin, c.material());
  }

  /** The same arm in another material, and in the form that goes with it. */
  public static Clasp of(Clasp c, ClaspMaterial material) {
    ClaspForm form =
        c.form() == ClaspForm.CIRCUMFERENTIAL && material.isWrought()
            ? ClaspForm.COMBINATION
            : c.form() == ClaspForm.COMBINATION && material.isCast()
                ? ClaspForm.CIRCUMFERENTIAL
                : c.form();
    return new Clasp(c.id(), c.tooth(), form, c.tip(), c.origin(), material);
  }

  private static End farOrigin(Clasp c) {
    return c.tip().end().map(End::opposite).orElse(c.origin());
  }
}
