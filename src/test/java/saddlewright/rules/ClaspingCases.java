package saddlewright.rules;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import saddlewright.chart.Tilt;
import saddlewright.dentition.End;
import saddlewright.dentition.Face;
import saddlewright.dentition.RestSite;
import saddlewright.dentition.Tooth;
import saddlewright.dentition.Zone;
import saddlewright.design.Clasp;
import saddlewright.design.ClaspForm;
import saddlewright.design.GuidePlate;
import saddlewright.design.Rest;
import saddlewright.layout.Measure;
import saddlewright.rules.clasping.BackActionClaspsAreAvoided;
import saddlewright.rules.clasping.BarArmsAvoidFrena;
import saddlewright.rules.clasping.BarArmsAvoidLinguallyTiltedTeeth;
import saddlewright.rules.clasping.BarArmsAvoidTissueUndercuts;
import saddlewright.rules.clasping.BarArmsClearTheGingivalMargin;
import saddlewright.rules.clasping.BarArmsCrossTheMarginSquarely;
import saddlewright.rules.clasping.BarArmsHaveRoomInTheSulcus;
import saddlewright.rules.clasping.BarArmsInShortGapsAreAvoided;
import saddlewright.rules.clasping.EmbrasureClaspsAreSplitWhereTheyCan;
import saddlewright.rules.clasping.EmbrasureClaspsComeInPairs;
import saddlewright.rules.clasping.EmbrasureClaspsHaveRoom;
import saddlewright.rules.clasping.EmbrasureClaspsStandOnTheToothedSide;
import saddlewright.rules.clasping.FreeEndAbutmentsAreNotLevered;
import saddlewright.rules.clasping.FreeEndAbutmentsTakeReleasingClasps;
import saddlewright.rules.clasping.FullTBarsAreAvoided;
import saddlewright.rules.clasping.MolarsTakeArmsFromAbove;
import saddlewright.rules.clasping.RpiSetsAreComplete;
import saddlewright.rules.clasping.SingleRootedTeethTakeArmsFromBelow;

/** Cases for the rules of clasping: which form suits a tooth and the tissues beside it. */
final class ClaspingCases {
  private ClaspingCases() {}

  static List<RuleCase> all() {
    List<RuleCase> out = new ArrayList<>(bars());
    out.addAll(teeth());
    out.addAll(freeEnds());
    out.addAll(embrasures());
    return out;
  }

  private static Designs embrasure() {
    return Designs.lowerClassTwo()
        .without(Clasp.class, 46)
        .clasp(46, ClaspForm.EMBRASURE, Zone.MESIOBUCCAL, End.DISTAL)
        .clasp(47, ClaspForm.EMBRASURE, Zone.DISTOBUCCAL, End.MESIAL);
  }

  private static List<RuleCase> bars() {
    return List.of(
        RuleCase.of(new BarArmsAvoidTissueUndercuts())
            .fires(
                "1.5 mm below the margin of 35",
                Designs.lowerClassOne().tissueUndercut(1.5, 35),
                "35: the I-bar on 35 crosses a tissue undercut (1.5 mm against at most 1 mm)")
            .quiet("1 mm", Designs.lowerClassOne().tissueUndercut(1.0, 35))
            .quiet("an arm from above", Designs.upperClassThree().tissueUndercut(2.0, 16))
            .asks("not charted", Designs.lowerClassOne(), "tissue undercut at 45, 35")
            .upholds(
                "0.5 mm",
                Designs.lowerClassOne().tissueUndercut(0.5, 35),
                "lies on tissue without a deep undercut"),
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
            .quiet("arms from above", Designs.upperClassThree())
            .upholds(
                "3.4 mm",
                Designs.lowerClassOne().measuring(Clasp.class, 35, Measure.MARGIN_CLEARANCE, 3.4),
                "runs 3.4 mm below the gingival margin"),
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
                Designs.lowerClassOne().buccalDepth(3.0, 35),
                "35: shallow buccal sulcus for the I-bar on 35 (3 mm against at least 4 mm)")
            .fires(
                "5 mm of sulcus",
                Designs.lowerClassOne().buccalDepth(5.0, 35),
                Severity.CONSIDER,
                "35: little room to spare in the buccal sulcus for the I-bar on 35 (5 mm"
                    + " against 7 mm to run well clear of the margin)")
            .quiet("7 mm", Designs.lowerClassOne().buccalDepth(7.0, 35, 45))
            .asks("not measured", Designs.lowerClassOne(), "buccal sulcus depth at 45, 35")
            .upholds(
                "8 mm",
                Designs.lowerClassOne().buccalDepth(8.0, 35, 45),
                "has 8 mm of buccal sulcus to lie in"),
        RuleCase.of(new BarArmsAvoidFrena())
            .fires(
                "a frenum in the way",
                Designs.lowerClassOne().tissues(t -> t.withFrena(Set.of(Tooth.T35))),
                "35: a frenum lies in the path of the I-bar on 35 (frenum against no frenum)")
            .quiet(
                "beside another tooth",
                Designs.lowerClassOne().tissues(t -> t.withFrena(Set.of(Tooth.T33))))
            .quiet(
                "an arm from above",
                Designs.upperClassThree().tissues(t -> t.withFrena(Set.of(Tooth.T16)))),
        RuleCase.of(new BarArmsAvoidLinguallyTiltedTeeth())
            .fires(
                "by 20 degrees",
                Designs.lowerClassOne().leaning(35, Tilt.LINGUAL, 20),
                "35: the I-bar on 35 would stand off the tissue below a leaning crown"
                    + " (tilted lingually by 20° against at most 15°)")
            .quiet("by 10 degrees", Designs.lowerClassOne().leaning(35, Tilt.LINGUAL, 10))
            .quiet("mesially", Designs.lowerClassOne().leaning(35, Tilt.MESIAL, 20))
            .asks(
                "by how much is not charted",
                Designs.lowerClassOne().tilt(35, Tilt.LINGUAL),
                "degrees of tilt at 35"),
        RuleCase.of(new BarArmsInShortGapsAreAvoided())
            .fires(
                "in a gap of one premolar",
                Designs.upper()
                    .missing(14)
                    .saddle(14, 14)
                    .rest(13, RestSite.CINGULUM)
                    .clasp(13, ClaspForm.I_BAR, Zone.DISTOBUCCAL, End.DISTAL),
                "13: the I-bar on 13 is rooted in a short bounded gap (gap of 1 tooth"
                    + " against a gap longer than 1 tooth)")
            .quiet(
                "in a gap of two premolars",
                Designs.upperClassThree().clasp(13, ClaspForm.I_BAR, Zone.DISTOBUCCAL, End.DISTAL))
            .quiet("at a free end", Designs.lowerClassOne()));
  }

  private static List<RuleCase> teeth() {
    return List.of(
        RuleCase.of(new MolarsTakeArmsFromAbove())
            .fires(
                "an I-bar on a molar",
                Designs.lowerClassTwo()
                    .without(Clasp.class, 46)
                    .clasp(46, ClaspForm.I_BAR, Zone.DISTOBUCCAL, End.DISTAL),
                "46: the molar is clasped from below (I-bar on 46 against an arm from above)")
            .fires(
                "a bar to an undercut beside the saddle",
                Designs.upperClassThree()
                    .without(Clasp.class, 16)
                    .clasp(16, ClaspForm.I_BAR, Zone.MESIOBUCCAL, End.MESIAL),
                "16: the molar is clasped from below (I-bar on 16 against an arm from"
                    + " above, such as a ring)")
            .quiet("from above", Designs.lowerClassTwo())
            .quiet("premolars", Designs.lowerClassOne())
            .quiet(
                "a molar where a free end begins",
                Designs.lower().missing(37).saddle(37, 37).rpi(36))
            .upholds(
                "from above",
                Designs.lowerClassTwo(),
                "comes from above, since a molar is long enough for that"),
        RuleCase.of(new SingleRootedTeethTakeArmsFromBelow())
            .fires(
                "a cast arm on a premolar",
                Designs.lowerClassOne()
                    .without(Clasp.class, 35)
                    .clasp(35, ClaspForm.CIRCUMFERENTIAL, Zone.MESIOBUCCAL, End.DISTAL),
                "35: a cast arm from above on a second premolar (cast clasp arm on 35"
                    + " against a bar from below or a wrought arm)")
            .quiet("I-bars", Designs.lowerClassOne())
            .quiet("cast arms on molars", Designs.upperClassThree())
            .quiet(
                "a cast arm that is long enough after all",
                Designs.lowerClassOne()
                    .without(Clasp.class, 35)
                    .clasp(35, ClaspForm.CIRCUMFERENTIAL, Zone.MESIOBUCCAL, End.DISTAL)
                    .measuring(Clasp.class, 35, Measure.ARM_LENGTH, 15.2))
            .upholds(
                "I-bars",
                Designs.lowerClassOne(),
                "comes from below, on a longer arm than the crown would give")
            .upholds(
                "a wrought arm",
                Designs.lowerClassOne()
                    .without(Clasp.class, 35)
                    .clasp(35, ClaspForm.COMBINATION, Zone.MESIOBUCCAL, End.DISTAL),
                "springs on a crown that is too small for a cast arm"),
        RuleCase.of(new BackActionClaspsAreAvoided())
            .fires(
                "on a molar",
                Designs.lowerClassTwo()
                    .without(Clasp.class, 46)
                    .clasp(46, ClaspForm.BACK_ACTION, Zone.DISTOBUCCAL, End.MESIAL),
                "46: a back-action clasp covers much of its tooth and braces it little"
                    + " (back-action clasp against a plainer clasp)")
            .fires(
                "on a premolar",
                Designs.lowerClassTwo()
                    .clasp(45, ClaspForm.BACK_ACTION, Zone.DISTOBUCCAL, End.MESIAL),
                "45: a back-action clasp covers much of its tooth and braces it little"
                    + " (back-action clasp against a plainer clasp)")
            .quiet("a three-arm clasp", Designs.lowerClassTwo()),
        RuleCase.of(new FullTBarsAreAvoided())
            .fires(
                "a T at a free end",
                Designs.lowerClassOne()
                    .without(Clasp.class, 35)
                    .clasp(35, ClaspForm.T_BAR, Zone.DISTOBUCCAL, End.DISTAL),
                "35: a full T covers more of the tooth than it holds (2 feet against 1 foot"
                    + " in the undercut)")
            .quiet("an I-bar", Designs.lowerClassOne())
            .upholds(
                "half a T",
                Designs.lowerClassOne()
                    .without(Clasp.class, 35)
                    .clasp(35, ClaspForm.HALF_T, Zone.DISTOBUCCAL, End.DISTAL),
                "keeps to the foot that lies in the undercut"));
  }

  private static List<RuleCase> freeEnds() {
    return List.of(
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
        RuleCase.of(new FreeEndAbutmentsTakeReleasingClasps())
            .fires(
                "a cast arm without a guide plate",
                Designs.lowerClassOne()
                    .without(GuidePlate.class, 35)
                    .without(Clasp.class, 35)
                    .clasp(35, ClaspForm.CIRCUMFERENTIAL, Zone.MESIOBUCCAL, End.DISTAL),
                "35: a stiff clasp beside a free-end saddle twists its tooth as the saddle"
                    + " sinks (cast clasp arm on 35 against an RPI or RPA set, a wrought arm or a"
                    + " T-bar)")
            .fires(
                "a ring on the last molar",
                Designs.lower()
                    .missing(37)
                    .saddle(37, 37)
                    .rest(36, RestSite.MESIAL_OCCLUSAL)
                    .clasp(36, ClaspForm.RING, Zone.MESIOLINGUAL, End.MESIAL),
                "36: a stiff clasp beside a free-end saddle twists its tooth as the saddle"
                    + " sinks (cast ring clasp on 36 against an RPI or RPA set, a wrought arm or"
                    + " a T-bar)")
            .quiet("RPI", Designs.lowerClassOne())
            .quiet(
                "RPA",
                Designs.lowerClassOne()
                    .without(Clasp.class, 35)
                    .clasp(35, ClaspForm.CIRCUMFERENTIAL, Zone.MESIOBUCCAL, End.DISTAL))
            .quiet(
                "a wrought arm with a distal rest",
                Designs.lowerClassOne()
                    .without(Rest.class, 35)
                    .without(Clasp.class, 35)
                    .rest(35, RestSite.DISTAL_OCCLUSAL)
                    .clasp(35, ClaspForm.COMBINATION, Zone.MESIOBUCCAL, End.DISTAL))
            .upholds(
                "RPI",
                Designs.lowerClassOne(),
                "moves down and off the tooth as saddle 36–37 sinks"),
        RuleCase.of(new RpiSetsAreComplete())
            .fires(
                "no guide plate",
                Designs.lowerClassOne().without(GuidePlate.class, 35),
                "35: the set of the I-bar on 35 is not complete (no distal guide plate"
                    + " against rest away, plate and I-bar)")
            .fires(
                "a distal rest in place of the mesial one",
                Designs.lowerClassOne().without(Rest.class, 35).rest(35, RestSite.DISTAL_OCCLUSAL),
                "35: the set of the I-bar on 35 is not complete (no mesial rest against"
                    + " rest away, plate and I-bar)")
            .fires(
                "a lingual arm besides",
                Designs.lowerClassOne().reciprocal(35, Face.LINGUAL, End.DISTAL),
                Severity.SHOULD,
                "35: a lingual arm keeps the set of the I-bar on 35 from letting go"
                    + " (lingual arm against rest, plate and I-bar alone)")
            .quiet(
                "no rest at all is told once, as an unrested clasp",
                Designs.lowerClassOne().without(Rest.class, 35))
            .quiet("complete", Designs.lowerClassOne())
            .quiet(
                "half a T is no RPI set",
                Designs.lowerClassOne()
                    .without(GuidePlate.class, 35)
                    .without(Clasp.class, 35)
                    .clasp(35, ClaspForm.HALF_T, Zone.DISTOBUCCAL, End.DISTAL))
            .upholds(
                "complete",
                Designs.lowerClassOne(),
                "works with its rest and plate as one set, which lets go as the saddle sinks"));
  }

  private static List<RuleCase> embrasures() {
    return List.of(
        RuleCase.of(new EmbrasureClaspsComeInPairs())
            .fires(
                "the half on 47 taken away",
                embrasure().without(Clasp.class, 47),
                "46: half an embrasure clasp: nothing grips 47 (1 arm against 2 arms back"
                    + " to back)")
            .fires(
                "beside a saddle",
                Designs.upperClassThree()
                    .without(Clasp.class, 16)
                    .clasp(16, ClaspForm.EMBRASURE, Zone.DISTOBUCCAL, End.MESIAL),
                "16: an embrasure clasp where no tooth stands beside it (1 arm against 2"
                    + " arms back to back)")
            .quiet("both halves", embrasure())
            .quiet("no embrasure clasp", Designs.lowerClassTwo())
            .upholds(
                "both halves",
                embrasure(),
                "is balanced by the embrasure clasp on 47 over the same embrasure"),
        RuleCase.of(new EmbrasureClaspsHaveRoom())
            .fires(
                "1 mm",
                embrasure().room(46, RestSite.DISTAL_OCCLUSAL, 1.0),
                "46: little room for the embrasure clasp on 46 to cross the embrasure (1 mm"
                    + " against at least 1.5 mm)")
            .quiet("1.5 mm", embrasure().room(46, RestSite.DISTAL_OCCLUSAL, 1.5))
            .asks("not measured", embrasure(), "room for a rest, distal occlusal of 46")
            .upholds(
                "2 mm",
                embrasure().room(46, RestSite.DISTAL_OCCLUSAL, 2.0),
                "has 2 mm to cross the embrasure"),
        RuleCase.of(new EmbrasureClaspsStandOnTheToothedSide())
            .fires(
                "in front of the free end",
                Designs.lowerClassTwo()
                    .without(Clasp.class, 34)
                    .clasp(34, ClaspForm.EMBRASURE, Zone.DISTOBUCCAL, End.MESIAL),
                "34: the embrasure clasp on 34 stands on the side of a free end (in front"
                    + " of saddle 35–37 against the side without one)")
            .quiet("across the arch", embrasure()),
        RuleCase.of(new EmbrasureClaspsAreSplitWhereTheyCan())
            .fires(
                "over 46 and 47",
                embrasure(),
                "46 and 47: metal through the contact is thin, and both clasps hold at one"
                    + " place (1 embrasure clasp against 2 single clasps apart)")
            .quiet("single clasps", Designs.lowerClassTwo()));
  }
}
