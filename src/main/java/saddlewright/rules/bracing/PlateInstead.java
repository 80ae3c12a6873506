package saddlewright.rules.bracing;

import java.util.Optional;
import saddlewright.dentition.Face;
import saddlewright.dentition.Span;
import saddlewright.design.DesignEdit;
import saddlewright.design.Plating;
import saddlewright.design.ReciprocalArm;
import saddlewright.rules.Situation;

/** Plating in the place of a lingual reciprocal arm. */
final class PlateInstead {
  static final String LABEL = "Plate the lingual face instead of the arm";

  private PlateInstead() {}

  /** The edit; empty for a buccal arm, for which there is no plate. */
  static Optional<DesignEdit> of(Situation s, ReciprocalArm arm) {
    return arm.face() == Face.BUCCAL
        ? Optional.empty()
        : Optional.of(
            DesignEdit.several(
                new DesignEdit.Remove(arm.id()),
                new DesignEdit.Place(
                    new Plating(s.design().freshId("plating"), Span.of(arm.tooth())))));
  }
}
