package saddlewright.rules;

import java.util.List;
import saddlewright.dentition.RestSite;
import saddlewright.design.Clasp;
import saddlewright.design.ConnectorForm;
import saddlewright.design.MinorConnector;
import saddlewright.design.Rest;
import saddlewright.design.Saddle;
import saddlewright.rules.indirect.IndirectRetainersLieBeyondTheAxis;
import saddlewright.rules.indirect.IndirectRetainersLieFarFromTheAxis;
import saddlewright.rules.indirect.IndirectRetentionHasTwoClasps;
import saddlewright.rules.indirect.LiftingSaddlesHaveAnIndirectRetainer;

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
        RuleCase.of(new IndirectRetainersLieBeyondTheAxis())
            .fires(
                "marked on the last tooth behind the axis",
                withoutIndirect(Designs.lowerClassTwo(), 44).indirect(47, RestSite.DISTAL_OCCLUSAL),
                "47: indirect retainer on the saddle's side of the clasp axis (# mm"
                    + " on the saddle's side against at least 5 mm beyond)")
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
        RuleCase.of(new IndirectRetentionHasTwoClasps())
            .fires(
                "one clasp",
                Designs.lowerClassOne().without(Clasp.class, 45),
                "Lower denture: too few clasps to hold the axis about which its saddles lift (1"
                    + " clasp against at least 2 clasps)")
            .quiet("two clasps", Designs.lowerClassOne())
            .quiet("tooth-borne", Designs.upperClassThree().without(Clasp.class)),
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
            .quiet("marked and in place", Designs.lowerClassOne())
            .quiet("tooth-borne Class III", Designs.upperClassThree())
            .quiet(
                "short Class IV",
                withoutIndirect(Designs.upperClassFour(), 17, 27)
                    .standing(12, 22)
                    .without(Saddle.class)
                    .saddle(11, 21)));
  }
}
