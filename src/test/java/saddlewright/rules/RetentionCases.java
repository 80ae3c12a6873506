package saddlewright.rules;

import java.util.ArrayList;
import java.util.List;
import saddlewright.chart.Condition;
import saddlewright.dentition.End;
import saddlewright.dentition.Zone;
import saddlewright.design.Clasp;
import saddlewright.design.ClaspForm;
import saddlewright.design.Rest;
import saddlewright.rules.retention.ClaspAxesBisectTheDenture;
import saddlewright.rules.retention.ClaspedTeethAreSound;
import saddlewright.rules.retention.ClaspsHoldBothSides;
import saddlewright.rules.retention.ClaspsStandBackFromAClassFourSaddle;
import saddlewright.rules.retention.ClaspsStayOutOfTheSmile;
import saddlewright.rules.retention.ClassOneDenturesHaveTwoClasps;
import saddlewright.rules.retention.ClassThreeClaspsStandOnADiagonal;
import saddlewright.rules.retention.ClassTwoDenturesAreClaspedFarBackOpposite;
import saddlewright.rules.retention.ClassTwoDenturesHaveTwoOrThreeClasps;
import saddlewright.rules.retention.DenturesHaveFewClasps;
import saddlewright.rules.retention.EveryClaspedToothIsRested;
import saddlewright.rules.retention.GripIsEvenOnBothSides;
import saddlewright.rules.retention.MolarsAreClaspedBeforeVisibleTeeth;
import saddlewright.rules.retention.RetentionIsOpposedAcrossTheArch;
import saddlewright.rules.retention.TeethBearOneRetentiveArm;
import saddlewright.rules.retention.TerminalAbutmentsAreClasped;

/** Cases for the rules of retention: number and place of clasps. */
final class RetentionCases {
  private RetentionCases() {}

  static List<RuleCase> all() {
    List<RuleCase> out = new ArrayList<>(number());
    out.addAll(place());
    out.addAll(teeth());
    return out;
  }

  private static List<RuleCase> number() {
    return List.of(
        RuleCase.of(new ClassOneDenturesHaveTwoClasps())
            .fires(
                "a third clasp, on the canine",
                Designs.lowerClassOne()
                    .clasp(33, ClaspForm.I_BAR, Zone.MID_BUCCAL, End.DISTAL)
                    .undercut(33, Zone.MID_BUCCAL, 0.25),
                "Lower denture: Class I with more clasps than it needs (3 clasps against 2"
                    + " clasps)")
            .fires(
                "a clasp taken away",
                Designs.lowerClassOne().without(Clasp.class, 45),
                "Lower denture: Class I with fewer clasps than it needs (1 clasp against 2"
                    + " clasps)")
            .quiet("one on each terminal abutment", Designs.lowerClassOne())
            .quiet(
                "a loose terminal abutment is helped by the tooth in front of it",
                Designs.lowerClassOne()
                    .mobile(35, 1)
                    .clasp(34, ClaspForm.COMBINATION, Zone.MESIOBUCCAL, End.DISTAL))
            .quiet("no clasp yet", Designs.lowerClassOne().without(Clasp.class))
            .quiet("another class", Designs.lowerClassTwo())
            .upholds(
                "two clasps",
                Designs.lowerClassOne(),
                "is one of the two clasps that two free ends ask for"),
        RuleCase.of(new ClassTwoDenturesHaveTwoOrThreeClasps())
            .fires(
                "the clasp at the free end taken away",
                Designs.lowerClassTwo().without(Clasp.class, 34),
                "Lower denture: Class II with fewer clasps than it needs (1 clasp against"
                    + " at least 2 clasps)")
            .fires(
                "four clasps",
                Designs.lowerClassTwo()
                    .clasp(45, ClaspForm.I_BAR, Zone.MID_BUCCAL, End.DISTAL)
                    .clasp(44, ClaspForm.I_BAR, Zone.MID_BUCCAL, End.DISTAL),
                "Lower denture: Class II with more clasps than it needs (4 clasps against"
                    + " at most 3 clasps)")
            .quiet("two clasps", Designs.lowerClassTwo())
            .quiet("another class", Designs.lowerClassOne())
            .upholds(
                "two clasps",
                Designs.lowerClassTwo(),
                "is one of the 2 clasps that hold one free end"),
        RuleCase.of(new DenturesHaveFewClasps())
            .fires(
                "five on a tooth-borne denture",
                Designs.upperClassThree()
                    .clasp(17, ClaspForm.CIRCUMFERENTIAL, Zone.DISTOBUCCAL, End.MESIAL)
                    .clasp(27, ClaspForm.CIRCUMFERENTIAL, Zone.DISTOBUCCAL, End.MESIAL)
                    .clasp(13, ClaspForm.I_BAR, Zone.DISTOBUCCAL, End.DISTAL),
                "Upper denture: more clasps than its retention asks for (5 clasps against"
                    + " at most 4)")
            .fires(
                "four on a Class I denture",
                Designs.lowerClassOne()
                    .clasp(34, ClaspForm.I_BAR, Zone.MID_BUCCAL, End.DISTAL)
                    .clasp(44, ClaspForm.I_BAR, Zone.MID_BUCCAL, End.DISTAL),
                Severity.CONSIDER,
                "Lower denture: more clasps than its retention asks for (4 clasps against"
                    + " at most 3)")
            .quiet(
                "four at the corners",
                Designs.upperClassThree()
                    .clasp(13, ClaspForm.I_BAR, Zone.DISTOBUCCAL, End.DISTAL)
                    .clasp(23, ClaspForm.I_BAR, Zone.DISTOBUCCAL, End.DISTAL))
            .quiet("two", Designs.lowerClassOne()),
        RuleCase.of(new TeethBearOneRetentiveArm())
            .fires(
                "a second arm on 35",
                Designs.lowerClassOne()
                    .clasp(35, ClaspForm.CIRCUMFERENTIAL, Zone.MESIOLINGUAL, End.DISTAL),
                "35: more than one retentive arm on the tooth (2 arms against 1 arm)")
            .quiet("one arm each", Designs.lowerClassOne()));
  }

  private static List<RuleCase> place() {
    return List.of(
        RuleCase.of(new ClaspsHoldBothSides())
            .fires(
                "clasps on the left only",
                Designs.lowerClassOne().without(Clasp.class, 45),
                "Lower denture: no clasp on the patient's right (clasps on 1 side against clasps on"
                    + " both sides)")
            .quiet("one on each side", Designs.lowerClassOne())
            .quiet("no clasp yet", Designs.lowerClassOne().without(Clasp.class))
            .upholds("one on each side", Designs.lowerClassOne(), "holds the patient's left side"),
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
                    .clasp(34, ClaspForm.I_BAR, Zone.MID_BUCCAL, End.DISTAL))
            .upholds("clasped", Designs.lowerClassOne(), "holds down saddle 36–37 where it begins"),
        RuleCase.of(new ClassTwoDenturesAreClaspedFarBackOpposite())
            .fires(
                "on the premolar, with two molars behind it",
                Designs.lowerClassTwo()
                    .without(Clasp.class, 46)
                    .clasp(44, ClaspForm.I_BAR, Zone.MID_BUCCAL, End.DISTAL),
                "44: the hindmost clasp across from the free end stands far forward (I-bar"
                    + " on 44 against a clasp on 47 or 46)")
            .quiet("on the first molar", Designs.lowerClassTwo())
            .quiet(
                "the premolar is the last tooth there is",
                Designs.lowerClassTwo()
                    .without(Clasp.class, 46)
                    .notReplaced(46, 47)
                    .clasp(45, ClaspForm.I_BAR, Zone.MID_BUCCAL, End.DISTAL))
            .upholds(
                "on the first molar",
                Designs.lowerClassTwo(),
                "stands as far back as the teeth allow, across the arch from the free end"),
        RuleCase.of(new ClassThreeClaspsStandOnADiagonal())
            .fires(
                "with an undercut on a canine to move to",
                Designs.upperClassThree().undercut(13, Zone.DISTOBUCCAL, 0.25),
                "16 and 26: the line through the two clasps leaves every saddle on one side of it (2"
                    + " saddles on one side against saddles on both sides)")
            .fires(
                "on both first molars",
                Designs.upperClassThree(),
                "16 and 26: the line through the two clasps leaves every saddle on one side"
                    + " of it (2 saddles on one side against saddles on both sides)")
            .quiet(
                "one behind, one in front",
                Designs.upperClassThree()
                    .without(Clasp.class, 26)
                    .clasp(23, ClaspForm.I_BAR, Zone.DISTOBUCCAL, End.DISTAL))
            .quiet(
                "at four corners",
                Designs.upperClassThree()
                    .clasp(13, ClaspForm.I_BAR, Zone.DISTOBUCCAL, End.DISTAL)
                    .clasp(23, ClaspForm.I_BAR, Zone.DISTOBUCCAL, End.DISTAL))
            .quiet("another class", Designs.lowerClassOne())
            .upholds(
                "one behind, one in front",
                Designs.upperClassThree()
                    .without(Clasp.class, 26)
                    .clasp(23, ClaspForm.I_BAR, Zone.DISTOBUCCAL, End.DISTAL),
                "stands on a diagonal with a saddle on either side of it"),
        RuleCase.of(new ClaspsStandBackFromAClassFourSaddle())
            .fires(
                "on a canine beside the saddle",
                Designs.upperClassFour()
                    .without(Clasp.class, 16)
                    .clasp(13, ClaspForm.I_BAR, Zone.DISTOBUCCAL, End.DISTAL),
                "13: the I-bar on 13 stands beside the anterior saddle (beside the saddle"
                    + " against a molar, or at least the next premolar)")
            .quiet("on the first molars", Designs.upperClassFour())
            .quiet("another class", Designs.upperClassThree())
            .upholds(
                "on the first molars",
                Designs.upperClassFour(),
                "stands well back from the anterior saddle"),
        RuleCase.of(new ClaspAxesBisectTheDenture())
            .fires(
                "Class IV, clasped at its hindmost edge",
                Designs.upperClassFour().without(Rest.class, 17).without(Rest.class, 27),
                "16 and 26: the line through the two clasps runs along the edge of the"
                    + " denture (0 mm of it beyond the line against at least 2 mm)")
            .quiet("Class IV with rests behind the clasps", Designs.upperClassFour())
            .quiet("a diagonal", Designs.lowerClassTwo())
            .quiet("tooth-borne: the diagonal is judged there", Designs.upperClassThree())
            .upholds(
                "a diagonal",
                Designs.lowerClassTwo(),
                "stands on a clasp axis that divides the denture: it reaches # mm to one side and #"
                    + " mm to the other"),
        RuleCase.of(new RetentionIsOpposedAcrossTheArch())
            .fires(
                "lingual on the right",
                Designs.lowerClassTwo()
                    .without(Clasp.class, 46)
                    .clasp(46, ClaspForm.CIRCUMFERENTIAL, Zone.DISTOLINGUAL, End.MESIAL),
                "46: retention is not opposed across the arch (lingual on the right, buccal"
                    + " on the left against the same face on both sides)")
            .quiet("buccal against buccal", Designs.lowerClassTwo())
            .quiet("one side alone", Designs.lowerClassTwo().without(Clasp.class, 46))
            .upholds(
                "buccal against buccal",
                Designs.lowerClassOne(),
                "is opposed across the arch by the I-bar on 45, buccal against buccal"));
  }

  private static List<RuleCase> teeth() {
    return List.of(
        RuleCase.of(new EveryClaspedToothIsRested())
            .fires(
                "the rest was taken away",
                Designs.lowerClassTwo().without(Rest.class, 46),
                "46: clasp arm on 46 without a rest on the same tooth (0 rests against 1 rest)")
            .quiet("every clasp with its rest", Designs.lowerClassTwo())
            .upholds(
                "every clasp with its rest",
                Designs.lowerClassTwo(),
                "keeps the clasp arm on 46 from sinking into the gingiva"),
        RuleCase.of(new ClaspsStayOutOfTheSmile())
            .fires(
                "on a lower incisor",
                Designs.lowerClassOne().clasp(32, ClaspForm.I_BAR, Zone.MID_BUCCAL, End.DISTAL),
                "32: a clasp on an incisor shows (I-bar on 32 against no clasp on an incisor)")
            .fires(
                "across the face of an upper canine",
                Designs.upperClassThree()
                    .clasp(13, ClaspForm.COMBINATION, Zone.MESIOBUCCAL, End.DISTAL),
                Severity.CONSIDER,
                "13: the clasp arm on 13 crosses a face that shows (an arm from above"
                    + " against an arm from below, or a tip at the back of the tooth)")
            .fires(
                "across a premolar that shows",
                Designs.lowerClassOne()
                    .visible(35)
                    .without(Clasp.class, 35)
                    .clasp(35, ClaspForm.COMBINATION, Zone.MESIOBUCCAL, End.DISTAL),
                Severity.CONSIDER,
                "35: the clasp arm on 35 crosses a face that shows (an arm from above"
                    + " against an arm from below, or a tip at the back of the tooth)")
            .quiet("on molars", Designs.upperClassThree())
            .quiet(
                "from below, at the back of the canine",
                Designs.upperClassThree().clasp(13, ClaspForm.I_BAR, Zone.DISTOBUCCAL, End.DISTAL))
            .upholds(
                "from below, at the back of the canine",
                Designs.upperClassThree().clasp(13, ClaspForm.I_BAR, Zone.DISTOBUCCAL, End.DISTAL),
                "is kept out of sight on a tooth that shows"),
        RuleCase.of(new MolarsAreClaspedBeforeVisibleTeeth())
            .fires(
                "the canine in place of the molar behind the gap",
                Designs.upperClassThree()
                    .without(Clasp.class, 16)
                    .clasp(13, ClaspForm.I_BAR, Zone.DISTOBUCCAL, End.DISTAL),
                "13: the I-bar on 13 shows, while a rested molar behind it bears no clasp"
                    + " (16 without a clasp against the molar clasped first)")
            .quiet("molars alone", Designs.upperClassThree())
            .quiet(
                "the molar too",
                Designs.upperClassThree().clasp(13, ClaspForm.I_BAR, Zone.DISTOBUCCAL, End.DISTAL)),
        RuleCase.of(new ClaspedTeethAreSound())
            .fires(
                "a loose tooth",
                Designs.lowerClassOne().mobile(35, 2),
                "35: the I-bar on 35 pulls at a tooth that is not sound (mobility grade 2"
                    + " against grade 1 at most)")
            .fires(
                "a carious tooth",
                Designs.lowerClassOne().condition(35, Condition.CARIOUS),
                "35: the I-bar on 35 pulls at a tooth that is not sound (caries against a"
                    + " sound or restored crown)")
            .fires(
                "little bone",
                Designs.lowerClassOne().boneSupport(35, 40),
                "35: the I-bar on 35 pulls at a tooth that is not sound (40 % bone against"
                    + " at least 50 %)")
            .fires(
                "a root-filled tooth",
                Designs.lowerClassOne().condition(35, Condition.ROOT_FILLED),
                Severity.CONSIDER,
                "35: the I-bar on 35 pulls at a tooth that is not sound (root-filled"
                    + " against a vital tooth, or the filling known to be complete)")
            .quiet("mobility grade I", Designs.lowerClassOne().mobile(35, 1))
            .quiet(
                "a loose tooth that is not clasped",
                Designs.lowerClassOne().without(Clasp.class, 35).mobile(35, 2))
            .asks("mobility", Designs.lowerClassOne(), "mobility at 45, 35")
            .asks("condition", Designs.lowerClassOne().mobile(35, 0), "condition at 45, 35")
            .upholds(
                "charted firm and sound",
                Designs.lowerClassOne().mobile(35, 0).condition(35, Condition.SOUND),
                "grips a firm, sound tooth"),
        RuleCase.of(new GripIsEvenOnBothSides())
            .fires(
                "a bar on one side, wire on the other",
                Designs.lowerClassOne()
                    .without(Clasp.class, 35)
                    .clasp(35, ClaspForm.COMBINATION, Zone.MESIOBUCCAL, End.DISTAL)
                    .undercut(35, Zone.MESIOBUCCAL, 0.75),
                "45 and 35: the two clasps do not grip alike (I-bar on 45 in 0.25 mm;"
                    + " wrought clasp arm on 35 in 0.75 mm against the same on both sides)")
            .fires(
                "a deeper undercut on one side",
                Designs.lowerClassOne().undercut(35, Zone.MID_BUCCAL, 0.5),
                "45 and 35: the two clasps do not grip alike (I-bar on 45 in 0.25 mm; I-bar"
                    + " on 35 in 0.5 mm against the same on both sides)")
            .quiet("alike", Designs.lowerClassOne())
            .quiet("on different teeth", Designs.lowerClassTwo())
            .upholds(
                "alike", Designs.lowerClassOne(), "grips as the I-bar on 35 does across the arch"));
  }
}
