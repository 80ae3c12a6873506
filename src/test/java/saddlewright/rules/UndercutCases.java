package saddlewright.rules;

import java.util.ArrayList;
import java.util.List;
import saddlewright.chart.Tilt;
import saddlewright.dentition.End;
import saddlewright.dentition.Zone;
import saddlewright.design.Clasp;
import saddlewright.design.ClaspForm;
import saddlewright.design.ClaspMaterial;
import saddlewright.layout.Measure;
import saddlewright.rules.undercut.AbsentUndercutsAreMade;
import saddlewright.rules.undercut.ArmsStartAwayFromTheirUndercut;
import saddlewright.rules.undercut.CastArmsAreLongEnough;
import saddlewright.rules.undercut.IBarTipsLieMidBuccalOrMesially;
import saddlewright.rules.undercut.IBarsHaveTheirUndercut;
import saddlewright.rules.undercut.LinguallyUndercutMolarsTakeRingClasps;
import saddlewright.rules.undercut.RigidPartsStayAboveTheSurveyLine;
import saddlewright.rules.undercut.TipsAheadOfTheAxisAreWrought;
import saddlewright.rules.undercut.TipsClearTheGingivalMargin;
import saddlewright.rules.undercut.TipsEndInUndercuts;
import saddlewright.rules.undercut.TipsReachTheTerminalThird;
import saddlewright.rules.undercut.ToothBorneSaddlesTakeCastClasps;
import saddlewright.rules.undercut.UndercutsSuitTheMaterial;

/** Cases for the rules of undercuts and of the arms that reach them. */
final class UndercutCases {
  private UndercutCases() {}

  static List<RuleCase> all() {
    List<RuleCase> out = new ArrayList<>(tips());
    out.addAll(depths());
    out.addAll(arms());
    out.addAll(freeEnds());
    return out;
  }

  private static List<RuleCase> tips() {
    return List.of(
        RuleCase.of(new TipsEndInUndercuts())
            .fires(
                "charted elsewhere",
                Designs.upperClassThree()
                    .withoutUndercut(16, Zone.DISTOBUCCAL)
                    .undercut(16, Zone.MESIOBUCCAL, 0.25),
                "16: the clasp arm on 16 ends where the survey found no undercut"
                    + " (distobuccal against mesiobuccal, where one is charted)")
            .fires(
                "charted as none, and one elsewhere",
                Designs.upperClassThree()
                    .undercut(16, Zone.DISTOBUCCAL, 0)
                    .undercut(16, Zone.MESIOLINGUAL, 0.25),
                "16: the clasp arm on 16 ends where the survey found no undercut"
                    + " (distobuccal against mesiopalatal, where one is charted)")
            .quiet("charted at the tips", Designs.lowerClassOne())
            .quiet("no clasp yet", Designs.lowerClassOne().without(Clasp.class))
            .asks(
                "nothing charted",
                Designs.lowerClassOne().withoutUndercut(35, Zone.MID_BUCCAL),
                "undercut, mid-buccal of 35")
            .upholds(
                "charted at the tips",
                Designs.lowerClassOne(),
                "ends in the mid-buccal undercut that the survey found"),
        RuleCase.of(new AbsentUndercutsAreMade())
            .fires(
                "surveyed in vain",
                Designs.lowerClassOne().undercut(35, Zone.MID_BUCCAL, 0),
                "35: the survey found no undercut on the tooth for the I-bar on 35 (0 mm"
                    + " against 0.25 mm, made with composite or a crown)")
            .quiet("an undercut at the tip", Designs.lowerClassOne())
            .quiet("not surveyed", Designs.lowerClassOne().withoutUndercut(35, Zone.MID_BUCCAL))
            .quiet(
                "another zone would do",
                Designs.lowerClassOne()
                    .undercut(35, Zone.MID_BUCCAL, 0)
                    .undercut(35, Zone.MESIOBUCCAL, 0.25)),
        RuleCase.of(new TipsClearTheGingivalMargin())
            .fires(
                "0.5 mm above it",
                Designs.upperClassThree().undercut(16, Zone.DISTOBUCCAL, 0.25, 0.5),
                "16: the tip of the clasp arm on 16 lies close to the gingival margin (0.5"
                    + " mm against at least 1 mm)")
            .fires(
                "a higher one on the same face",
                Designs.upperClassThree()
                    .undercut(16, Zone.DISTOBUCCAL, 0.25, 0.5)
                    .undercut(16, Zone.MID_BUCCAL, 0.25, 2),
                "16: the tip of the clasp arm on 16 lies close to the gingival margin (0.5"
                    + " mm against at least 1 mm)")
            .quiet(
                "1 mm above it", Designs.upperClassThree().undercut(16, Zone.DISTOBUCCAL, 0.25, 1))
            .asks(
                "height not measured",
                Designs.upperClassThree(),
                "height of the undercut, distobuccal of 16")
            .upholds(
                "2 mm above it",
                Designs.upperClassThree().undercut(16, Zone.DISTOBUCCAL, 0.25, 2),
                "ends 2 mm above the gingival margin"),
        RuleCase.of(new TipsReachTheTerminalThird())
            .fires(
                "in the middle of the face of a molar",
                Designs.upperClassThree()
                    .without(Clasp.class, 16)
                    .clasp(16, ClaspForm.CIRCUMFERENTIAL, Zone.MID_BUCCAL, End.MESIAL),
                "16: the clasp arm on 16 ends in the middle of the face (mid-buccal against"
                    + " the distal third)")
            .fires(
                "in the middle of the face of a premolar",
                Designs.lowerClassOne()
                    .without(Clasp.class, 35)
                    .clasp(35, ClaspForm.COMBINATION, Zone.MID_BUCCAL, End.DISTAL),
                "35: the clasp arm on 35 ends in the middle of the face (mid-buccal against"
                    + " the mesial third)")
            .quiet("at the far end", Designs.upperClassThree())
            .quiet("a bar may end there", Designs.lowerClassOne()));
  }

  private static List<RuleCase> depths() {
    return List.of(
        RuleCase.of(new UndercutsSuitTheMaterial())
            .fires(
                "0.5 mm under a cast arm",
                Designs.upperClassThree().undercut(16, Zone.DISTOBUCCAL, 0.5),
                "16: undercut too deep for the clasp arm on 16 (0.5 mm against 0.25 mm)")
            .fires(
                "0.25 mm under a wrought steel arm",
                Designs.upperClassThree()
                    .without(Clasp.class, 16)
                    .clasp(16, ClaspForm.COMBINATION, Zone.DISTOBUCCAL, End.MESIAL),
                "16: undercut too shallow for the clasp arm on 16 (0.25 mm against 0.75 mm)")
            .fires(
                "0.75 mm under an I-bar, 0.25 mm beside it",
                Designs.lowerClassOne()
                    .undercut(35, Zone.MID_BUCCAL, 0.75)
                    .undercut(35, Zone.MESIOBUCCAL, 0.25),
                "35: undercut too deep for the I-bar on 35 (0.75 mm against 0.25 mm)")
            .quiet("0.25 mm under cast arms", Designs.upperClassThree())
            .quiet(
                "half a gauge step off",
                Designs.upperClassThree().undercut(16, Zone.DISTOBUCCAL, 0.35))
            .quiet(
                "polymer, for which no school has a figure",
                Designs.upperClassThree()
                    .without(Clasp.class, 16)
                    .undercut(16, Zone.DISTOBUCCAL, 0.75)
                    .clasp(
                        16,
                        ClaspForm.CIRCUMFERENTIAL,
                        Zone.DISTOBUCCAL,
                        End.MESIAL,
                        ClaspMaterial.POLYMER))
            .asks(
                "not charted",
                Designs.upperClassThree().withoutUndercut(16, Zone.DISTOBUCCAL),
                "undercut, distobuccal of 16")
            .upholds(
                "0.25 mm under cast arms",
                Designs.upperClassThree(),
                "springs in 0.25 mm of undercut, as its material asks"),
        RuleCase.of(new ToothBorneSaddlesTakeCastClasps())
            .fires(
                "wire on a molar in 0.25 mm",
                Designs.upperClassThree()
                    .without(Clasp.class, 16)
                    .clasp(16, ClaspForm.COMBINATION, Zone.DISTOBUCCAL, End.MESIAL),
                "16: a yielding arm on a molar of a tooth-borne denture (wrought clasp arm"
                    + " on 16 against a cast arm)")
            .quiet("cast", Designs.upperClassThree())
            .quiet(
                "wire in an undercut too deep for a cast arm",
                Designs.upperClassThree()
                    .without(Clasp.class, 16)
                    .undercut(16, Zone.DISTOBUCCAL, 0.75)
                    .clasp(16, ClaspForm.COMBINATION, Zone.DISTOBUCCAL, End.MESIAL))
            .quiet("a free end", Designs.lowerClassTwo())
            .upholds(
                "cast",
                Designs.upperClassThree(),
                "is cast, since no saddle sinks that it would have to follow"));
  }

  private static List<RuleCase> arms() {
    return List.of(
        RuleCase.of(new CastArmsAreLongEnough())
            .fires(
                "12 mm on a molar",
                Designs.upperClassThree().measuring(Clasp.class, 16, Measure.ARM_LENGTH, 12),
                "16: short cast arm of the clasp arm on 16 (12 mm against at least 13 mm)")
            .fires(
                "14 mm on a molar",
                Designs.upperClassThree().measuring(Clasp.class, 16, Measure.ARM_LENGTH, 14),
                Severity.CONSIDER,
                "16: short cast arm of the clasp arm on 16 (14 mm against at least 15 mm)")
            .fires(
                "14 mm on a premolar",
                Designs.lowerClassOne()
                    .without(Clasp.class, 35)
                    .clasp(35, ClaspForm.CIRCUMFERENTIAL, Zone.MESIOBUCCAL, End.DISTAL)
                    .measuring(Clasp.class, 35, Measure.ARM_LENGTH, 14),
                Severity.SHOULD,
                "35: short cast arm of the clasp arm on 35 (14 mm against at least 15 mm)")
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
            .quiet("a bar arm is not measured by it", Designs.lowerClassOne())
            .upholds(
                "15.4 mm",
                Designs.upperClassThree().measuring(Clasp.class, 16, Measure.ARM_LENGTH, 15.4),
                "springs over 15.4 mm of cast cobalt-chromium"),
        RuleCase.of(new ArmsStartAwayFromTheirUndercut())
            .fires(
                "a premolar arm that turns back",
                Designs.lowerClassOne()
                    .without(Clasp.class, 35)
                    .clasp(35, ClaspForm.COMBINATION, Zone.DISTOBUCCAL, End.DISTAL),
                "35: the clasp arm on 35 starts beside its own undercut and must turn back"
                    + " (starts and ends distally against a bar, or an arm from the other end)")
            .fires(
                "a molar arm that turns back",
                Designs.upperClassThree()
                    .without(Clasp.class, 16)
                    .clasp(16, ClaspForm.CIRCUMFERENTIAL, Zone.MESIOBUCCAL, End.MESIAL),
                Severity.SHOULD,
                "16: the clasp arm on 16 starts beside its own undercut and must turn back"
                    + " (starts and ends mesially against a ring, or an arm from the other end)")
            .fires(
                "a ring that stops half way",
                Designs.upperClassThree()
                    .without(Clasp.class, 16)
                    .clasp(16, ClaspForm.RING, Zone.DISTOBUCCAL, End.MESIAL),
                Severity.SHOULD,
                "16: the ring ends half way round its tooth (distal tip against a tip at"
                    + " the mesial end, where it starts)")
            .quiet("across the face", Designs.upperClassThree())
            .quiet("bars", Designs.lowerClassOne())
            .quiet(
                "a ring all round",
                Designs.upperClassThree()
                    .without(Clasp.class, 16)
                    .clasp(16, ClaspForm.RING, Zone.MESIOBUCCAL, End.MESIAL))
            .upholds(
                "across the face",
                Designs.upperClassThree(),
                "starts at the end away from its undercut"),
        RuleCase.of(new RigidPartsStayAboveTheSurveyLine())
            .fires(
                "undercut at both ends of the face",
                Designs.upperClassThree().undercut(16, Zone.MESIOBUCCAL, 0.5),
                "16: the clasp arm on 16 starts where the tooth is undercut (0.5 mm of"
                    + " undercut mesiobuccal against none under the stiff part of the arm)")
            .fires(
                "the same on a premolar",
                Designs.lowerClassOne()
                    .without(Clasp.class, 35)
                    .undercut(35, Zone.DISTOBUCCAL, 0.25)
                    .clasp(35, ClaspForm.COMBINATION, Zone.MESIOBUCCAL, End.DISTAL),
                "35: the clasp arm on 35 starts where the tooth is undercut (0.25 mm of"
                    + " undercut distobuccal against none under the stiff part of the arm)")
            .quiet("undercut at the tip alone", Designs.upperClassThree())
            .quiet(
                "a bar comes from below",
                Designs.lowerClassOne().undercut(35, Zone.DISTOBUCCAL, 0.25)),
        RuleCase.of(new LinguallyUndercutMolarsTakeRingClasps())
            .fires(
                "a buccal arm on a leaning molar",
                Designs.lowerClassTwo()
                    .leaning(46, Tilt.LINGUAL, 15)
                    .withoutUndercut(46, Zone.DISTOBUCCAL)
                    .undercut(46, Zone.MESIOLINGUAL, 0.25),
                "46: the leaning molar is undercut on its lingual face alone (buccal tip"
                    + " against a ring or a lingual arm)")
            .quiet("an upright molar", Designs.lowerClassTwo())
            .quiet(
                "undercut on both faces",
                Designs.lowerClassTwo()
                    .leaning(46, Tilt.LINGUAL, 15)
                    .undercut(46, Zone.MESIOLINGUAL, 0.25))
            .upholds(
                "a ring",
                Designs.lowerClassTwo()
                    .leaning(46, Tilt.LINGUAL, 15)
                    .without(Clasp.class, 46)
                    .withoutUndercut(46, Zone.DISTOBUCCAL)
                    .undercut(46, Zone.MESIOLINGUAL, 0.25)
                    .clasp(46, ClaspForm.RING, Zone.MESIOLINGUAL, End.MESIAL),
                "holds a leaning molar by the only undercut that it has"));
  }

  private static List<RuleCase> freeEnds() {
    return List.of(
        RuleCase.of(new IBarTipsLieMidBuccalOrMesially())
            .fires(
                "a distobuccal tip",
                Designs.lowerClassOne()
                    .without(Clasp.class, 35)
                    .undercut(35, Zone.DISTOBUCCAL, 0.25)
                    .clasp(35, ClaspForm.I_BAR, Zone.DISTOBUCCAL, End.DISTAL),
                "35: the tip of the I-bar on 35 lies behind the bulge of the tooth"
                    + " (distobuccal against mid-buccal or mesiobuccal)")
            .quiet("mid-buccal tips", Designs.lowerClassOne())
            .quiet(
                "a bounded saddle does not sink",
                Designs.upperClassThree().clasp(13, ClaspForm.I_BAR, Zone.DISTOBUCCAL, End.DISTAL))
            .upholds(
                "mid-buccal tips",
                Designs.lowerClassOne(),
                "meets the tooth at its bulge or in front of it, and moves away from it under"
                    + " load"),
        RuleCase.of(new IBarsHaveTheirUndercut())
            .fires(
                "undercut distobuccally alone",
                Designs.lowerClassOne()
                    .withoutUndercut(35, Zone.MID_BUCCAL)
                    .undercut(35, Zone.DISTOBUCCAL, 0.25),
                "35: the only undercut lies behind the place of an I-bar (distobuccal"
                    + " undercut alone against one mid-buccally or mesiobuccally, or half a T)")
            .quiet("undercut mid-buccally", Designs.lowerClassOne())
            .quiet(
                "half a T there",
                Designs.lowerClassOne()
                    .without(Clasp.class, 35)
                    .withoutUndercut(35, Zone.MID_BUCCAL)
                    .undercut(35, Zone.DISTOBUCCAL, 0.25)
                    .clasp(35, ClaspForm.HALF_T, Zone.DISTOBUCCAL, End.DISTAL)),
        RuleCase.of(new TipsAheadOfTheAxisAreWrought())
            .fires(
                "a cast arm on the premolar in front of a modification",
                Designs.lowerClassTwo()
                    .clasp(44, ClaspForm.CIRCUMFERENTIAL, Zone.MESIOBUCCAL, End.DISTAL),
                "44: a stiff tip in front of the axis bites as the saddle sinks (cast clasp"
                    + " arm on 44, # mm in front of the axis against a wrought arm there)")
            .quiet(
                "a wrought one",
                Designs.lowerClassTwo()
                    .clasp(44, ClaspForm.COMBINATION, Zone.MESIOBUCCAL, End.DISTAL))
            .quiet("RPI: the tips lie behind it", Designs.lowerClassOne())
            .quiet("no free end", Designs.upperClassThree())
            .upholds(
                "a wrought one",
                Designs.lowerClassTwo()
                    .clasp(44, ClaspForm.COMBINATION, Zone.MESIOBUCCAL, End.DISTAL),
                "gives way in front of the axis, where the sinking saddle pulls it upwards"));
  }
}
