package saddlewright.rules;

import java.util.List;
import saddlewright.dentition.End;
import saddlewright.dentition.RestSite;
import saddlewright.dentition.Zone;
import saddlewright.design.Clasp;
import saddlewright.design.ClaspForm;
import saddlewright.design.ConnectorForm;
import saddlewright.design.MajorConnector;
import saddlewright.design.MinorConnector;
import saddlewright.design.ReciprocalArm;
import saddlewright.design.Rest;
import saddlewright.design.Saddle;
import saddlewright.rules.indirect.ClassFourIndirectRetainersLieFarBack;
import saddlewright.rules.indirect.ClassOneIndirectRetainersStandOnBothSides;
import saddlewright.rules.indirect.ClassTwoIndirectRetainersStandOnTheDentateSide;
import saddlewright.rules.indirect.DoubtfulTeethAreDesignedForLoss;
import saddlewright.rules.indirect.IndirectRetainersLieBeyondBothAxes;
import saddlewright.rules.indirect.IndirectRetainersLieBeyondTheAxis;
import saddlewright.rules.indirect.IndirectRetainersLieFarFromTheAxis;
import saddlewright.rules.indirect.IndirectRetainersSitOnStrongTeeth;
import saddlewright.rules.indirect.IndirectRetentionHasTwoClasps;
import saddlewright.rules.indirect.LeverRatiosAreFavourable;
import saddlewright.rules.indirect.LiftingSaddlesHaveAnIndirectRetainer;
import saddlewright.rules.indirect.PlatesAreNotIndirectRetainers;
import saddlewright.rules.indirect.ToothBorneDenturesNeedNoIndirectRetainer;

/** Cases for the rules of indirect retention. */
final class IndirectCases {
  private IndirectCases() {}

  private static Designs withoutIndirect(Designs d, int... teeth) {
    for (int t : teeth) {
      d.without(Rest.class, t).without(MinorConnector.class, t);
    }
    return d;
  }

  static List<RuleCase> all() {
    return List.of(
        RuleCase.of(new ClassFourIndirectRetainersLieFarBack())
            .fires(
                "on the first molars, though the second are sound",
                withoutIndirect(Designs.upperClassFour(), 16, 17)
                    .threeArm(15, RestSite.MESIAL_OCCLUSAL, End.MESIAL, Zone.DISTOBUCCAL)
                    .indirect(16, RestSite.MESIAL_OCCLUSAL)
                    .without(Clasp.class, 16)
                    .without(ReciprocalArm.class, 16),
                "16: indirect retainer in front of 17, which is sound (# mm beyond the clasp axis"
                    + " against # mm)")
            .upholds(
                "on the second molars",
                Designs.upperClassFour(),
                "stands on the last sound tooth of its side, # mm back")
            .quiet("on the second molars", Designs.upperClassFour())
            .quiet("a Class I", Designs.lowerClassOne()),
        RuleCase.of(new ClassOneIndirectRetainersStandOnBothSides())
            .fires(
                "one on the left only",
                withoutIndirect(Designs.lowerClassOne(), 43),
                "Saddle 47–46: its side has no indirect retainer beyond the clasp axis (0 on this"
                    + " side against 1 on each side)")
            .upholds(
                "one on each side",
                Designs.lowerClassOne(),
                "keeps saddle 36–37 down on its own side")
            .quiet("one on each side", Designs.lowerClassOne())
            .quiet("a Class II", Designs.lowerClassTwo()),
        RuleCase.of(new ClassTwoIndirectRetainersStandOnTheDentateSide())
            .fires(
                "on the canine of the saddle's side",
                withoutIndirect(Designs.lowerClassTwo(), 44).indirect(33, RestSite.CINGULUM),
                "33: indirect retainer on the side of saddle 35–37, where the slanting axis leaves"
                    + " it a short lever (0 on the side with teeth against 1 on the side with"
                    + " teeth)")
            .upholds(
                "on the first premolar opposite",
                Designs.lowerClassTwo(),
                "stands across from saddle 35–37, at # degrees to the clasp axis")
            .quiet("on the first premolar opposite", Designs.lowerClassTwo())
            .quiet("a Class I", Designs.lowerClassOne()),
        RuleCase.of(new DoubtfulTeethAreDesignedForLoss())
            .fires(
                "a doubtful molar behind a bounded saddle",
                Designs.upperClassThree()
                    .notReplaced(17)
                    .clasp(23, ClaspForm.I_BAR, Zone.DISTOBUCCAL, End.DISTAL)
                    .doubtful(16),
                "Saddle 15–14: the loss of 16 makes it a free end, and no rest lies beyond the clasps"
                    + " left (0 rests 5 mm or more beyond them against 1 rest, planned now)")
            .fires(
                "one clasp would be left",
                Designs.upperClassThree().notReplaced(17).doubtful(16),
                "Saddle 15–14: the loss of 16 makes it a free end, with too few clasps left to hold"
                    + " the axis (1 clasp left against at least 2 clasps)")
            .fires(
                "a rest opposite lies far enough in front, but is not marked",
                Designs.upperClassThree()
                    .notReplaced(17)
                    .clasp(13, ClaspForm.I_BAR, Zone.DISTOBUCCAL, End.DISTAL)
                    .doubtful(16),
                Severity.CONSIDER,
                "Saddle 15–14: the loss of 16 makes it a free end; a rest could then serve as"
                    + " indirect retainer but is not marked as one (0 marked against 1 marked)")
            .upholds(
                "a rest opposite lies far enough in front",
                Designs.upperClassThree()
                    .notReplaced(17)
                    .clasp(13, ClaspForm.I_BAR, Zone.DISTOBUCCAL, End.DISTAL)
                    .without(Rest.class, 23)
                    .indirect(23, RestSite.CINGULUM)
                    .doubtful(16),
                "will be the indirect retainer if 16 is lost")
            .quiet("no doubt", Designs.upperClassThree().notReplaced(17))
            .quiet("a tooth stands behind it", Designs.upperClassThree().doubtful(16)),
        RuleCase.of(new IndirectRetainersLieBeyondBothAxes())
            .fires(
                "between the clasps and a rest farther forward",
                Designs.lowerClassTwo()
                    .without(Rest.class, 34)
                    .without(Rest.class, 46)
                    .rest(33, RestSite.CINGULUM)
                    .rest(43, RestSite.CINGULUM),
                "44: indirect retainer beyond the clasp axis, but on the saddle's side of the"
                    + " support axis (# mm on the saddle's side against beyond both)")
            .upholds(
                "canines before premolars",
                Designs.lowerClassOne(),
                "lies beyond the clasp axis and the support axis alike")
            .quiet("canines before premolars", Designs.lowerClassOne())
            .quiet("no saddle lifts", Designs.upperClassThree()),
        RuleCase.of(new IndirectRetainersLieBeyondTheAxis())
            .fires(
                "marked on the last tooth behind the axis",
                withoutIndirect(Designs.lowerClassTwo(), 44).indirect(47, RestSite.DISTAL_OCCLUSAL),
                "47: indirect retainer on the saddle's side of the clasp axis (# mm"
                    + " on the saddle's side against at least 5 mm beyond)")
            .upholds(
                "in front of the axis",
                Designs.lowerClassOne(),
                "lies # mm beyond the clasp axis from saddle 36–37")
            .quiet("in front of the axis", Designs.lowerClassOne())
            .quiet("behind the axis of a Class IV", Designs.upperClassFour()),
        RuleCase.of(new IndirectRetainersLieFarFromTheAxis())
            .fires(
                "on the clasped premolar itself",
                withoutIndirect(Designs.lowerClassOne(), 33, 43)
                    .without(Rest.class, 35)
                    .indirect(35, RestSite.MESIAL_OCCLUSAL),
                "35: indirect retainer close to the clasp axis, lever ratio # (#"
                    + " mm against at least 5 mm)")
            .fires(
                "no tooth lies farther",
                Designs.lower()
                    .missing(35, 36, 37, 45, 46, 47)
                    .saddle(35, 37)
                    .saddle(45, 47)
                    .rpi(34)
                    .rpi(44)
                    .indirect(33, RestSite.CINGULUM)
                    .indirect(43, RestSite.CINGULUM)
                    .connector(ConnectorForm.LINGUAL_PLATE, 44, 34),
                Severity.CONSIDER,
                "33: indirect retainer close to the clasp axis, lever ratio #; no"
                    + " sound tooth lies farther (# mm against at least 5 mm)")
            .quiet("canine cingula before premolar clasps", Designs.lowerClassOne()),
        RuleCase.of(new IndirectRetainersSitOnStrongTeeth())
            .fires(
                "a single incisor",
                withoutIndirect(Designs.lowerClassOne(), 33, 43).indirect(41, RestSite.CINGULUM),
                "41: indirect retainer on a single incisor, which gives way under it (1 incisor"
                    + " against a firm canine, premolar or molar)")
            .fires(
                "a doubtful canine",
                Designs.lowerClassOne().doubtful(33),
                "33: indirect retainer on a tooth of poor outlook (doubtful or loose against a firm"
                    + " canine, premolar or molar)")
            .fires(
                "a loose canine",
                Designs.lowerClassOne().mobile(33, 2),
                "33: indirect retainer on a tooth of poor outlook (doubtful or loose against a firm"
                    + " canine, premolar or molar)")
            .upholds(
                "canines",
                Designs.lowerClassOne(),
                "sits on a tooth that is strong enough for an indirect retainer")
            .quiet("canines", Designs.lowerClassOne())
            .quiet(
                "incisors bound by a plate",
                withoutIndirect(Designs.lowerClassOne(), 33, 43)
                    .without(MajorConnector.class)
                    .connector(ConnectorForm.LINGUAL_PLATE, 45, 35)
                    .indirect(41, RestSite.CINGULUM)),
        RuleCase.of(new IndirectRetentionHasTwoClasps())
            .fires(
                "one clasp",
                Designs.lowerClassOne().without(Clasp.class, 45),
                "Lower denture: too few clasps to hold the axis about which its saddles lift (1"
                    + " clasp against at least 2 clasps)")
            .upholds(
                "two clasps",
                Designs.lowerClassOne(),
                "holds down the axis about which the saddles could lift")
            .quiet("two clasps", Designs.lowerClassOne())
            .quiet(
                "a single tooth is left, which can bear but one",
                Designs.upper()
                    .missing(17, 16, 15, 14, 13, 12, 11, 21, 22, 24, 25, 26, 27)
                    .notReplaced(18, 28)
                    .saddle(17, 22)
                    .saddle(24, 27)
                    .rest(23, RestSite.CINGULUM)
                    .clasp(23, ClaspForm.COMBINATION, Zone.MESIOBUCCAL, End.DISTAL))
            .quiet("tooth-borne", Designs.upperClassThree().without(Clasp.class)),
        RuleCase.of(new LeverRatiosAreFavourable())
            .fires(
                "only the front teeth are left",
                Designs.lower()
                    .missing(34, 35, 36, 37, 44, 45, 46, 47)
                    .saddle(34, 37)
                    .saddle(44, 47)
                    .rest(33, RestSite.CINGULUM)
                    .clasp(33, ClaspForm.I_BAR, Zone.DISTOBUCCAL, End.DISTAL)
                    .rest(43, RestSite.CINGULUM)
                    .clasp(43, ClaspForm.I_BAR, Zone.DISTOBUCCAL, End.DISTAL)
                    .indirect(31, RestSite.MESIAL_INCISAL)
                    .connector(ConnectorForm.LINGUAL_PLATE, 44, 34),
                "Saddle 34–37: its lever is long beside that of the indirect retainer; the clasps"
                    + " must hold # times its pull (ratio # against at least 0.20)")
            .upholds(
                "canines before second premolars",
                Designs.lowerClassOne(),
                "works with a lever of # mm to # mm against saddle 36–37")
            .quiet("canines before second premolars", Designs.lowerClassOne())
            .quiet("no saddle lifts", Designs.upperClassThree()),
        RuleCase.of(new LiftingSaddlesHaveAnIndirectRetainer())
            .fires(
                "Class I without one",
                withoutIndirect(Designs.lowerClassOne(), 33, 43),
                "Saddle 36–37: no indirect retainer beyond the clasp axis (0 rests 5 mm or more"
                    + " beyond it against 1 indirect retainer)")
            .fires(
                "Class II without one",
                withoutIndirect(Designs.lowerClassTwo(), 44),
                "Saddle 35–37: no indirect retainer beyond the clasp axis (0 rests 5 mm or more"
                    + " beyond it against 1 indirect retainer)")
            .fires(
                "long Class IV without one",
                withoutIndirect(Designs.upperClassFour(), 17, 27),
                "Saddle 12–22: no indirect retainer beyond the clasp axis (0 rests 5 mm or more"
                    + " beyond it against 1 indirect retainer)")
            .fires(
                "a rest that could serve is not marked",
                withoutIndirect(Designs.lowerClassTwo(), 44).rest(44, RestSite.MESIAL_OCCLUSAL),
                Severity.CONSIDER,
                "Saddle 35–37: a rest beyond the clasp axis can serve as indirect retainer but is"
                    + " not marked as one (0 marked, nearest fit rest # mm beyond against 1"
                    + " indirect retainer)")
            .fires(
                "an unmarked rest on the farthest sound tooth, though close",
                Designs.lower()
                    .missing(35, 36, 37, 45, 46, 47)
                    .saddle(35, 37)
                    .saddle(45, 47)
                    .rpi(34)
                    .rpi(44)
                    .rest(33, RestSite.CINGULUM)
                    .rest(43, RestSite.CINGULUM)
                    .connector(ConnectorForm.LINGUAL_BAR, 44, 34),
                Severity.CONSIDER,
                "Saddle 35–37: a rest beyond the clasp axis can serve as indirect retainer but is"
                    + " not marked as one (0 marked, nearest fit rest # mm beyond against 1"
                    + " indirect retainer)")
            .fires(
                "the canines are the last teeth",
                lastCanines(),
                Severity.SHOULD,
                "Saddle 34–37: no indirect retainer beyond the clasp axis; no sound tooth lies there"
                    + " to carry one (0 rests 5 mm or more beyond it against 1 indirect retainer)")
            .quiet("marked and in place", Designs.lowerClassOne())
            .quiet("tooth-borne Class III", Designs.upperClassThree())
            .quiet(
                "short Class IV",
                withoutIndirect(Designs.upperClassFour(), 17, 27)
                    .standing(12, 22)
                    .without(Saddle.class)
                    .saddle(11, 21))
            .upholds(
                "in place",
                Designs.lowerClassOne(),
                "keeps saddle 36–37 from lifting away from its ridge"),
        RuleCase.of(new PlatesAreNotIndirectRetainers())
            .fires(
                "a plate without end rests",
                withoutIndirect(Designs.lowerClassOne(), 33, 43)
                    .without(MajorConnector.class)
                    .connector(ConnectorForm.LINGUAL_PLATE, 45, 35),
                "Lingual plate: no rest beyond the axis; the metal slides up the slopes of the"
                    + " front teeth (0 rests beyond it against 1 rest at least, better one at each"
                    + " end)")
            .upholds(
                "rests on the canines",
                Designs.lowerClassOne()
                    .without(MajorConnector.class)
                    .connector(ConnectorForm.LINGUAL_PLATE, 45, 35),
                "gives the lingual plate the stop that its slopes cannot give")
            .quiet("no sound tooth beyond the axis could carry one", lastCanines())
            .quiet("a lingual bar", withoutIndirect(Designs.lowerClassOne(), 33, 43))
            .quiet(
                "rests on the canines",
                Designs.lowerClassOne()
                    .without(MajorConnector.class)
                    .connector(ConnectorForm.LINGUAL_PLATE, 45, 35)),
        RuleCase.of(new ToothBorneDenturesNeedNoIndirectRetainer())
            .fires(
                "one in a Class III",
                Designs.upperClassThree().without(Rest.class, 13).indirect(13, RestSite.CINGULUM),
                "13: marked as indirect retainer, though no saddle can lift (1 indirect retainer"
                    + " against none)")
            .quiet("a free end", Designs.lowerClassOne())
            .quiet(
                "a loss is foreseen",
                Designs.upperClassThree()
                    .doubtful(16)
                    .without(Rest.class, 13)
                    .indirect(13, RestSite.CINGULUM))
            .quiet("none marked", Designs.upperClassThree()));
  }

  /** Only incisors stand in front of the clasped and rested canines. */
  private static Designs lastCanines() {
    return Designs.lower()
        .missing(44, 45, 46, 47, 34, 35, 36, 37)
        .saddle(34, 37)
        .saddle(44, 47)
        .rest(33, RestSite.CINGULUM)
        .rest(43, RestSite.CINGULUM)
        .clasp(33, ClaspForm.COMBINATION, Zone.MESIOBUCCAL, End.DISTAL)
        .clasp(43, ClaspForm.COMBINATION, Zone.MESIOBUCCAL, End.DISTAL)
        .connector(ConnectorForm.LINGUAL_PLATE, 43, 33);
  }
}
