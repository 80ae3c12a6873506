package saddlewright.rules;

import java.util.List;
import saddlewright.dentition.End;
import saddlewright.dentition.Face;
import saddlewright.dentition.Zone;
import saddlewright.design.Clasp;
import saddlewright.design.ClaspForm;
import saddlewright.design.ConnectorForm;
import saddlewright.design.MajorConnector;
import saddlewright.design.MinorConnector;
import saddlewright.design.ReciprocalArm;
import saddlewright.rules.bracing.EveryClaspIsReciprocated;

/** Cases for the rules of bracing and reciprocation. */
final class BracingCases {
  private BracingCases() {}

  static List<RuleCase> all() {
    return List.of(
        RuleCase.of(new EveryClaspIsReciprocated())
            .fires(
                "the reciprocal arm was taken away",
                Designs.upperClassThree().without(ReciprocalArm.class, 16),
                "16: nothing opposes the clasp arm on 16 on the palatal face (0 reciprocal parts"
                    + " against 1 reciprocal part)")
            .fires(
                "an arm on the clasp's own face opposes nothing",
                Designs.upperClassThree()
                    .without(ReciprocalArm.class, 16)
                    .reciprocal(16, Face.BUCCAL, End.MESIAL),
                "16: nothing opposes the clasp arm on 16 on the palatal face (0 reciprocal parts"
                    + " against 1 reciprocal part)")
            .fires(
                "an RPI without its strut",
                Designs.lowerClassOne().without(MinorConnector.class, 35),
                "35: nothing opposes the I-bar on 35 on the lingual face (0 reciprocal parts"
                    + " against 1 reciprocal part)")
            .quiet("reciprocal arms", Designs.upperClassThree())
            .quiet("RPI: plate and strut", Designs.lowerClassOne())
            .quiet(
                "plating on the other face",
                Designs.upperClassThree().clasp(13, ClaspForm.I_BAR, Zone.DISTOBUCCAL, End.DISTAL))
            .quiet(
                "a lingual plate over it",
                Designs.lowerClassOne()
                    .without(MinorConnector.class)
                    .without(MajorConnector.class)
                    .connector(ConnectorForm.LINGUAL_PLATE, 45, 35))
            .quiet(
                "a ring clasp holds its own tooth",
                Designs.upperClassThree()
                    .without(ReciprocalArm.class, 16)
                    .without(Clasp.class, 16)
                    .clasp(16, ClaspForm.RING, Zone.MESIOBUCCAL, End.MESIAL)));
  }
}
