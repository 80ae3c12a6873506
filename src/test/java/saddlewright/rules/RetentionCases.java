package saddlewright.rules;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import saddlewright.dentition.End;
import saddlewright.dentition.RestSite;
import saddlewright.dentition.Tooth;
import saddlewright.dentition.Zone;
import saddlewright.design.Clasp;
import saddlewright.design.ClaspForm;
import saddlewright.design.Rest;
import saddlewright.layout.Measure;
import saddlewright.rules.retention.BarArmsAvoidTissueUndercuts;
import saddlewright.rules.retention.BarArmsClearTheGingivalMargin;
import saddlewright.rules.retention.BarArmsCrossTheMarginSquarely;
import saddlewright.rules.retention.BarArmsHaveRoomInTheSulcus;
import saddlewright.rules.retention.CastArmsAreLongEnough;
import saddlewright.rules.retention.ClaspsHoldBothSides;
import saddlewright.rules.retention.EveryClaspedToothIsRested;
import saddlewright.rules.retention.FreeEndAbutmentsAreNotLevered;
import saddlewright.rules.retention.TeethBearOneRetentiveArm;
import saddlewright.rules.retention.TerminalAbutmentsAreClasped;
import saddlewright.rules.retention.TipsEndInChartedUndercuts;
import saddlewright.rules.retention.UndercutsSuitTheMaterial;

/** Cases for the rules of retention. */
final class RetentionCases {
  private RetentionCases() {}

  static List<RuleCase> all() {
    return List.of(
        RuleCase.of(new BarArmsAvoidTissueUndercuts())
            .fires(
                "1.5 mm below the margin of 35",
                Designs.lowerClassOne()
                    .tissues(t -> t.withTissueUndercut(Tooth.T35, Optional.of(1.5))),
                "35: the I-bar on 35 crosses a tissue undercut (1.5 mm against at most 1 mm)")
            .quiet(
                "1 mm",
                Designs.lowerClassOne()
                    .tissues(t -> t.withTissueUndercut(Tooth.T35, Optional.of(1.0))))
            .quiet(
                "an arm from above",
                Designs.upperClassThree()
                    .tissues(t -> t.withTissueUndercut(Tooth.T16, Optional.of(2.0)))),
        RuleCase.of(new BarArmsClearTheGingivalMargin())
            .fires(
                "2.4 mm from the margin",
                Designs.lowerClassOne().measuring(Clasp.class, 35, Measure.MARGIN_CLEARANCE, 2.4),
                "35: the I-bar on 35 runs close to the gingival margin (2.4 mm against at least 3"
                    + " mm)")
            .quiet(
                "3 mm",
                Designs.lowerClassOne()
                    .measuring(Clasp.class, 35, Measure.MARGIN_CLEARANCE, 3.0)
                    .measuring(Clasp.class, 45, Measure.MARGIN_CLEARANCE, 3.0))
            .quiet("arms from above", Designs.upperClassThree()),
        RuleCase.of(new BarArmsCrossTheMarginSquarely())
            .fires(
                "a slanting bar",
                Designs.lowerClassOne().measuring(Clasp.class, 35, Measure.CROSSING_DEGREES, 50),
                "35: I-bar on 35 crosses the gingival margin on a slant (50 degrees against at"
                    + " least 70 degrees)")
            .upholds(
                "a bar laid out squarely",
                Designs.lowerClassOne(),
                "crosses the gingival margin at 90 degrees")
            .quiet("laid out squarely", Designs.lowerClassOne())
            .quiet("an arm from above crosses no margin", Designs.upperClassThree()),
        RuleCase.of(new BarArmsHaveRoomInTheSulcus())
            .fires(
                "3 mm of sulcus",
                Designs.lowerClassOne()
                    .tissues(t -> t.withBuccalDepth(Tooth.T35, Optional.of(3.0))),
                "35: shallow buccal sulcus for the I-bar on 35 (3 mm against at least 4 mm)")
            .fires(
                "a frenum in the way",
                Designs.lowerClassOne().tissues(t -> t.withFrena(Set.of(Tooth.T35))),
                "35: a frenum lies in the path of the I-bar on 35 (frenum against no frenum)")
            .quiet("not measured", Designs.lowerClassOne())
            .quiet(
                "4 mm",
                Designs.lowerClassOne()
                    .tissues(t -> t.withBuccalDepth(Tooth.T35, Optional.of(4.0)))),
        RuleCase.of(new CastArmsAreLongEnough())
            .fires(
                "12 mm on a molar",
                Designs.upperClassThree().measuring(Clasp.class, 16, Measure.ARM_LENGTH, 12),
                "16: short cast arm of the clasp arm on 16 (12 mm against at least 13 mm)")
            .fires(
                "14 mm on a molar",
                Designs.upperClassThree().measuring(Clasp.class, 16, Measure.ARM_LENGTH, 14),
                Severity.SHOULD,
                "16: short cast arm of the clasp arm on 16 (14 mm against at least 15 mm)")
            .fires(
                "a cast arm on a lower premolar, as laid out",
                Designs.lowerClassOne()
                    .without(Clasp.class, 35)
                    .clasp(35, ClaspForm.CIRCUMFERENTIAL, Zone.MESIOBUCCAL, End.DISTAL),
                "35: short cast arm of the clasp arm on 35 (# mm against at least 13 mm)")
            .quiet(
                "15 mm",
                Designs.upperClassThree()
                    .measuring(Clasp.class, 16, Measure.ARM_LENGTH, 15)
                    .measuring(Clasp.class, 26, Measure.ARM_LENGTH, 15))
            .quiet(
                "a wrought arm on a lower premolar",
                Designs.lowerClassOne()
                    .without(Clasp.class, 35)
                    .clasp(35, ClaspForm.COMBINATION, Zone.MESIOBUCCAL, End.DISTAL))
            .quiet("a bar arm is not measured by it", Designs.lowerClassOne()),
        RuleCase.of(new ClaspsHoldBothSides())
            .fires(
                "clasps on the left only",
                Designs.lowerClassOne().without(Clasp.class, 45),
                "Lower denture: no clasp on the patient's right (clasps on 1 side against clasps on"
                    + " both sides)")
            .quiet("one on each side", Designs.lowerClassOne())
            .quiet("no clasp yet", Designs.lowerClassOne().without(Clasp.class)),
        RuleCase.of(new EveryClaspedToothIsRested())
            .fires(
                "the rest was taken away",
                Designs.lowerClassTwo().without(Rest.class, 46),
                "46: clasp arm on 46 without a rest on the same tooth (0 rests against 1 rest)")
            .quiet("every clasp with its rest", Designs.lowerClassTwo()),
        RuleCase.of(new FreeEndAbutmentsAreNotLevered())
            .fires(
                "cast arm with a distal rest",
                Designs.lowerClassOne()
                    .without(Rest.class, 35)
                    .without(Clasp.class, 35)
                    .rest(35, RestSite.DISTAL_OCCLUSAL)
                    .clasp(35, ClaspForm.CIRCUMFERENTIAL, Zone.MESIOBUCCAL, End.DISTAL),
                "35: stiff arm and near rest lever the abutment as the base sinks (cast arm with a"
                    + " rest beside the saddle against a rest away or a wrought arm)")
            .quiet("RPI", Designs.lowerClassOne())
            .quiet("bounded saddles do not sink", Designs.upperClassThree()),
        RuleCase.of(new TeethBearOneRetentiveArm())
            .fires(
                "a second arm on 35",
                Designs.lowerClassOne()
                    .clasp(35, ClaspForm.CIRCUMFERENTIAL, Zone.MESIOLINGUAL, End.DISTAL),
                "35: more than one retentive arm on the tooth (2 arms against 1 arm)")
            .quiet("one arm each", Designs.lowerClassOne()),
        RuleCase.of(new TerminalAbutmentsAreClasped())
            .fires(
                "no clasp on the left",
                Designs.lowerClassOne().without(Clasp.class, 35),
                "Saddle 36–37: no clasp on its terminal abutment 35 (0 clasps against 1 clasp)")
            .quiet("clasped", Designs.lowerClassOne())
            .quiet(
                "the next tooth is clasped instead",
                Designs.lowerClassOne()
                    .without(Clasp.class, 35)
                    .clasp(34, ClaspForm.I_BAR, Zone.MID_BUCCAL, End.DISTAL)),
        RuleCase.of(new TipsEndInChartedUndercuts())
            .fires(
                "nothing charted",
                Designs.lowerClassOne().withoutUndercut(35, Zone.MID_BUCCAL),
                "35: no undercut is charted for the I-bar on 35 (none charted against an undercut"
                    + " at the tip)")
            .fires(
                "charted elsewhere",
                Designs.upperClassThree()
                    .withoutUndercut(16, Zone.DISTOBUCCAL)
                    .undercut(16, Zone.MESIOBUCCAL, 0.25),
                "16: the clasp arm on 16 ends where no undercut is charted (none charted against an"
                    + " undercut at the tip)")
            .quiet("charted at the tips", Designs.lowerClassOne()),
        RuleCase.of(new UndercutsSuitTheMaterial())
            .fires(
                "0.5 mm under a cast arm",
                Designs.upperClassThree().undercut(16, Zone.DISTOBUCCAL, 0.5),
                "16: undercut too deep for the clasp arm on 16 (0.50 mm against 0.25 mm)"
                    .replace("0.50", "0.5"))
            .fires(
                "0.25 mm under a wrought steel arm",
                Designs.upperClassThree()
                    .without(Clasp.class, 16)
                    .clasp(16, ClaspForm.COMBINATION, Zone.DISTOBUCCAL, End.MESIAL),
                "16: undercut too shallow for the clasp arm on 16 (0.25 mm against 0.75 mm)")
            .quiet("0.25 mm under cast arms", Designs.upperClassThree())
            .quiet(
                "half a gauge step off",
                Designs.upperClassThree().undercut(16, Zone.DISTOBUCCAL, 0.35)));
  }
}
