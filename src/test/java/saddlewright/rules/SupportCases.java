package saddlewright.rules;

import java.util.List;
import saddlewright.chart.Tilt;
import saddlewright.dentition.End;
import saddlewright.dentition.RestSite;
import saddlewright.dentition.Zone;
import saddlewright.design.Clasp;
import saddlewright.design.ClaspForm;
import saddlewright.design.Rest;
import saddlewright.rules.support.BoundedSaddlesAreRestedAtBothEnds;
import saddlewright.rules.support.DenturesHaveThreeRests;
import saddlewright.rules.support.EmbrasureRestsComeInPairs;
import saddlewright.rules.support.FreeEndRestsLieAwayFromTheSaddle;
import saddlewright.rules.support.FreeEndSaddlesAreRested;
import saddlewright.rules.support.RestsStandOnBothSides;
import saddlewright.rules.support.RingClaspsHaveTwoRests;
import saddlewright.rules.support.TiltedMolarsAreNotRestedMesiallyAlone;

/** Cases for the rules of support. */
final class SupportCases {
  private SupportCases() {}

  static List<RuleCase> all() {
    return List.of(
        RuleCase.of(new BoundedSaddlesAreRestedAtBothEnds())
            .fires(
                "no rest at the distal end",
                Designs.upperClassThree().without(Rest.class, 16),
                "Saddle 15–14: no rest on 16 beside it (1 of 2 ends rested against a rest facing it"
                    + " at each end)")
            .fires(
                "no rest at all",
                Designs.upperClassThree().without(Rest.class),
                "Saddle 15–14: no rest on 16 and 13 beside it (0 of 2 ends rested against a rest"
                    + " facing it at each end)")
            .fires(
                "the rest lies at the far end of the abutment",
                Designs.upperClassThree()
                    .without(Rest.class, 16)
                    .rest(16, RestSite.DISTAL_OCCLUSAL),
                Severity.SHOULD,
                "Saddle 15–14: the rest on 16 lies away from it (1 of 2 ends rested against a rest"
                    + " facing it at each end)")
            .quiet("a rest at each end", Designs.upperClassThree())
            .quiet(
                "a mesially tilted molar rested distally",
                Designs.upperClassThree()
                    .tilted(16, Tilt.MESIAL)
                    .without(Rest.class, 16)
                    .rest(16, RestSite.DISTAL_OCCLUSAL))
            .quiet(
                "no room, so the next tooth carries it",
                Designs.upperClassThree()
                    .room(16, RestSite.MESIAL_OCCLUSAL, 0.4)
                    .without(Rest.class, 16)
                    .rest(17, RestSite.MESIAL_OCCLUSAL))
            .quiet("a free-end saddle is another rule's", Designs.lowerClassOne()),
        RuleCase.of(new DenturesHaveThreeRests())
            .fires(
                "two rests",
                Designs.lowerClassOne().without(Rest.class, 33).without(Rest.class, 43),
                "Lower denture: few rests to stand on (2 rests against at least 3 rests)")
            .quiet("four rests", Designs.lowerClassOne())
            .quiet("nothing designed yet", Designs.lower().missing(36)),
        RuleCase.of(new EmbrasureRestsComeInPairs())
            .fires(
                "an embrasure clasp without the neighbour's rest",
                Designs.lowerClassTwo()
                    .rest(47, RestSite.MESIAL_OCCLUSAL)
                    .clasp(46, ClaspForm.EMBRASURE, Zone.MESIOBUCCAL, End.DISTAL)
                    .without(Rest.class, 47),
                "47: no rest beside the embrasure clasp on 46 (1 of 2 ridges rested against both"
                    + " rested)")
            .fires(
                "an embrasure rest alone",
                Designs.lowerClassTwo()
                    .rest(
                        45,
                        RestSite.DISTAL_OCCLUSAL,
                        Rest.Form.EMBRASURE,
                        Rest.Seat.PREPARED_ENAMEL)
                    .without(Rest.class, 46),
                "46: no rest beside the distal rest on 45 (1 of 2 ridges rested against both"
                    + " rested)")
            .quiet(
                "both ridges rested",
                Designs.lowerClassTwo()
                    .rest(47, RestSite.MESIAL_OCCLUSAL)
                    .clasp(46, ClaspForm.EMBRASURE, Zone.MESIOBUCCAL, End.DISTAL)),
        RuleCase.of(new FreeEndRestsLieAwayFromTheSaddle())
            .fires(
                "distal rest on the terminal abutment",
                Designs.lowerClassOne().without(Rest.class, 35).rest(35, RestSite.DISTAL_OCCLUSAL),
                "35: the only rest on this abutment lies next to the free-end saddle 36–37 (distal"
                    + " rest against mesial rest)")
            .quiet("mesial rests", Designs.lowerClassOne())
            .quiet(
                "a canine's cingulum has no side",
                Designs.lower().missing(34, 35, 36, 37).saddle(34, 37).rest(33, RestSite.CINGULUM))
            .quiet(
                "no room mesially",
                Designs.lowerClassOne()
                    .room(35, RestSite.MESIAL_OCCLUSAL, 0.3)
                    .without(Rest.class, 35)
                    .rest(35, RestSite.DISTAL_OCCLUSAL))
            .quiet(
                "a wrought arm yields",
                Designs.lowerClassOne()
                    .without(Rest.class, 35)
                    .without(Clasp.class, 35)
                    .clasp(35, ClaspForm.COMBINATION, Zone.MESIOBUCCAL, End.DISTAL)
                    .rest(35, RestSite.DISTAL_OCCLUSAL)),
        RuleCase.of(new FreeEndSaddlesAreRested())
            .fires(
                "no rest on the last tooth",
                Designs.lowerClassOne().without(Rest.class, 35),
                "Saddle 36–37: no rest on its terminal abutment 35 (0 rests against 1 rest)")
            .fires(
                "a third molar that serves nothing does not bound the saddle",
                Designs.lower()
                    .standing(38)
                    .missing(36, 37)
                    .saddle(36, 37)
                    .rest(45, RestSite.MESIAL_OCCLUSAL),
                "Saddle 36–37: no rest on its terminal abutment 35 (0 rests against 1 rest)")
            .quiet("rests on both", Designs.lowerClassOne())
            .quiet("bounded saddles are another rule's", Designs.upperClassThree()),
        RuleCase.of(new RestsStandOnBothSides())
            .fires(
                "rests on the left only",
                Designs.lowerClassOne().without(Rest.class, 45).without(Rest.class, 43),
                "Lower denture: no rest on the patient's right (rests on 1 side against rests on"
                    + " both sides)")
            .quiet("rests on both sides", Designs.lowerClassOne())
            .quiet(
                "no tooth stands on that side",
                Designs.lower()
                    .missing(41, 42, 43, 44, 45, 46, 47)
                    .saddle(47, 41)
                    .rest(33, RestSite.CINGULUM)),
        RuleCase.of(new RingClaspsHaveTwoRests())
            .fires(
                "one rest under a ring clasp",
                Designs.upperClassThree()
                    .without(Clasp.class, 16)
                    .clasp(16, ClaspForm.RING, Zone.MESIOBUCCAL, End.MESIAL),
                "16: ring clasp without a rest at each end of the tooth (1 rest against 2 rests)")
            .quiet(
                "two rests",
                Designs.upperClassThree()
                    .without(Clasp.class, 16)
                    .clasp(16, ClaspForm.RING, Zone.MESIOBUCCAL, End.MESIAL)
                    .rest(16, RestSite.DISTAL_OCCLUSAL))
            .quiet("no ring clasp", Designs.upperClassThree()),
        RuleCase.of(new TiltedMolarsAreNotRestedMesiallyAlone())
            .fires(
                "mesial rest on a mesially tilted molar",
                Designs.upperClassThree().tilted(16, Tilt.MESIAL),
                "16: tilted mesially and rested on its mesial end alone (mesial rest against distal"
                    + " rest or rests at both ends)")
            .quiet(
                "rested at both ends",
                Designs.upperClassThree()
                    .tilted(16, Tilt.MESIAL)
                    .rest(16, RestSite.DISTAL_OCCLUSAL))
            .quiet("tilted distally", Designs.upperClassThree().tilted(16, Tilt.DISTAL)));
  }
}
