package saddlewright.rules;

import java.util.List;
import saddlewright.dentition.End;
import saddlewright.dentition.RestSite;
import saddlewright.dentition.Zone;
import saddlewright.design.ClaspForm;
import saddlewright.design.Rest;
import saddlewright.design.Saddle;
import saddlewright.rules.placing.ComponentsStandOnStandingTeeth;
import saddlewright.rules.placing.EveryReplacedToothHasASaddle;
import saddlewright.rules.placing.RestsHaveRoomAboveThem;
import saddlewright.rules.placing.RestsSitOnPreparedSeats;
import saddlewright.rules.placing.RestsSuitTheKindOfTooth;
import saddlewright.rules.placing.SaddlesDoNotOverlap;
import saddlewright.rules.placing.SaddlesLieOnGaps;

/** Cases for the rules of placing. */
final class PlacingCases {
  private PlacingCases() {}

  static List<RuleCase> all() {
    return List.of(
        RuleCase.of(new ComponentsStandOnStandingTeeth())
            .fires(
                "a rest on a lost tooth",
                Designs.lowerClassOne().rest(36, RestSite.MESIAL_OCCLUSAL),
                "36: mesial rest on 36, but the tooth is missing (1 lost tooth against a standing"
                    + " tooth)")
            .fires(
                "a tooth that is to come out",
                Designs.lowerClassOne().toBeExtracted(33),
                "33: cingulum rest on 33, but the tooth is to be extracted (1 lost tooth against a"
                    + " standing tooth)")
            .fires(
                "a clasp where the space has closed",
                Designs.upperClassThree()
                    .closed(12)
                    .clasp(12, ClaspForm.I_BAR, Zone.MID_BUCCAL, End.DISTAL),
                "12: I-bar on 12, but its space is closed (1 lost tooth against a standing tooth)")
            .quiet("all on standing teeth", Designs.lowerClassOne())
            .quiet("plating past a closed space", Designs.lower().closed(31).plating(43, 33)),
        RuleCase.of(new EveryReplacedToothHasASaddle())
            .fires(
                "a saddle left out",
                Designs.lowerClassOne().without(Saddle.class, 36),
                "36–37: to be replaced, but no saddle lies there (0 of 2 on a saddle against all on"
                    + " a saddle)")
            .fires(
                "a saddle too short",
                Designs.lowerClassOne().without(Saddle.class, 36).saddle(36, 36),
                "37: to be replaced, but no saddle lies there (0 of 1 on a saddle against all on a"
                    + " saddle)")
            .quiet("both areas have saddles", Designs.lowerClassOne())
            .quiet("lost but not replaced", Designs.lower().notReplaced(37, 47)),
        RuleCase.of(new RestsHaveRoomAboveThem())
            .fires(
                "0.6 mm above a rest",
                Designs.upperClassThree().room(16, RestSite.MESIAL_OCCLUSAL, 0.6),
                "16: little room above the mesial rest on 16 (0.60 mm against at least 1 mm)"
                    .replace("0.60", "0.6"))
            .fires(
                "1.2 mm, and room at the other end",
                Designs.upperClassThree()
                    .room(16, RestSite.MESIAL_OCCLUSAL, 1.2)
                    .room(16, RestSite.DISTAL_OCCLUSAL, 2),
                Severity.SHOULD,
                "16: little room above the mesial rest on 16 (1.2 mm against at least 1.5 mm)")
            .quiet("not measured", Designs.upperClassThree())
            .quiet("1.5 mm", Designs.upperClassThree().room(16, RestSite.MESIAL_OCCLUSAL, 1.5)),
        RuleCase.of(new RestsSitOnPreparedSeats())
            .fires(
                "a rest on a slope",
                Designs.lowerClassOne()
                    .without(Rest.class, 33)
                    .rest(33, RestSite.CINGULUM, Rest.Form.STANDARD, Rest.Seat.UNPREPARED),
                "33: cingulum rest on 33 sits on an unprepared surface (no seat against a prepared"
                    + " seat)")
            .quiet("seats in enamel", Designs.lowerClassOne()),
        RuleCase.of(new RestsSuitTheKindOfTooth())
            .fires(
                "an occlusal rest on a canine",
                Designs.lowerClassOne().rest(33, RestSite.MESIAL_OCCLUSAL),
                "33: mesial rest on 33, but this tooth has no such place (occlusal surface against"
                    + " cingulum or incisal edge)")
            .fires(
                "a cingulum rest on a molar",
                Designs.upperClassThree().rest(17, RestSite.CINGULUM),
                "17: cingulum rest on 17, but this tooth has no such place (cingulum against"
                    + " occlusal surface)")
            .quiet("each on its own kind of tooth", Designs.lowerClassOne()),
        RuleCase.of(new SaddlesDoNotOverlap())
            .fires(
                "two saddles share a place",
                Designs.lowerClassOne().saddle(37, 37),
                "Saddle 36–37: overlaps saddle 37 (1 shared place against no shared place)")
            .quiet("one on each side", Designs.lowerClassOne()),
        RuleCase.of(new SaddlesLieOnGaps())
            .fires(
                "a saddle over a standing tooth",
                Designs.lowerClassOne().without(Saddle.class, 36).saddle(35, 37),
                "35: saddle 35–37 covers a standing tooth (1 standing against gaps only)")
            .fires(
                "a saddle in a closed space",
                Designs.upperClassThree().closed(12).saddle(12, 12),
                "12: saddle 12 covers a space that is closed (no space against gaps only)")
            .quiet("saddles on gaps", Designs.lowerClassOne())
            .quiet(
                "a closed place within a saddle",
                Designs.upper().missing(14, 16).closed(15).saddle(14, 16)));
  }
}
