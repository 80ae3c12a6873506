package saddlewright.rules;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import saddlewright.chart.Condition;
import saddlewright.chart.Tilt;
import saddlewright.dentition.RestSite;
import saddlewright.design.ConnectorForm;
import saddlewright.design.MajorConnector;
import saddlewright.design.Saddle;
import saddlewright.rules.abutments.AbutmentsAreFirm;
import saddlewright.rules.abutments.AbutmentsAreFreeOfDecay;
import saddlewright.rules.abutments.AbutmentsHaveEnoughBone;
import saddlewright.rules.abutments.AbutmentsHaveEnoughRoot;
import saddlewright.rules.abutments.AbutmentsLeanLittle;
import saddlewright.rules.abutments.CombinationSyndromeIsForeseen;
import saddlewright.rules.abutments.FreeEndRidgesAreRecordedUnderLoad;
import saddlewright.rules.abutments.ReplacedTeethHaveAnOpponent;
import saddlewright.rules.abutments.RootFilledAbutmentsAreSpared;
import saddlewright.rules.abutments.WeakAbutmentsShareTheirLoad;

/** Cases for the rules of abutments and occlusion. */
final class AbutmentCases {
  private AbutmentCases() {}

  static List<RuleCase> all() {
    return Stream.of(strength(), crowns(), opponents()).flatMap(List::stream).toList();
  }

  private static List<RuleCase> strength() {
    return List.of(
        RuleCase.of(new AbutmentsAreFirm())
            .fires(
                "grade III under a rest",
                Designs.lowerClassOne().mobile(33, 3),
                "33: too loose to serve as an abutment (mobility grade 3 against grade 1 at"
                    + " most)")
            .fires(
                "grade II under a clasp",
                Designs.lowerClassOne().mobile(35, 2),
                Severity.SHOULD,
                "35: loose for an abutment; prefer a rest without a clasp, and plan its loss"
                    + " (mobility grade 2 against grade 1 at most)")
            .asks("mobility not charted", Designs.lowerClassOne(), "mobility at 45, 43, 33, 35")
            .upholds(
                "grade I",
                Designs.lowerClassOne().mobile(35, 1),
                "is firm enough to serve, mobility grade 1")
            .quiet("a loose tooth that bears nothing", Designs.lowerClassOne().mobile(31, 3))
            .quiet("grade I", Designs.lowerClassOne().mobile(35, 1)),
        RuleCase.of(new AbutmentsHaveEnoughBone())
            .fires(
                "40 per cent under a clasp",
                Designs.lowerClassOne().boneSupport(35, 40),
                "35: little bone for an abutment; prefer a rest without a clasp, and share its load"
                    + " (40 per cent of its bone against at least 50 per cent)")
            .fires(
                "40 per cent under a rest alone",
                Designs.lowerClassOne().boneSupport(33, 40),
                "33: little bone for a tooth that carries a rest; share its load (40 per cent of"
                    + " its bone against at least 50 per cent)")
            .asks(
                "neither bone nor root charted",
                Designs.lowerClassOne(),
                "bone support at 45, 43, 33, 35")
            .upholds(
                "80 per cent",
                Designs.lowerClassOne().boneSupport(35, 80),
                "keeps 80 per cent of its bone")
            .quiet("half", Designs.lowerClassOne().boneSupport(35, 50))
            .quiet("a tooth that bears nothing", Designs.lowerClassOne().boneSupport(31, 20)),
        RuleCase.of(new AbutmentsHaveEnoughRoot())
            .fires(
                "a crown twice the root",
                Designs.lowerClassOne().crownRoot(35, 2),
                "35: too little root to serve as an abutment (crown to root 2.0 against less than"
                    + " 1.0)")
            .fires(
                "as much crown as root",
                Designs.lowerClassOne().crownRoot(33, 1),
                Severity.SHOULD,
                "33: little root for an abutment; share its load with a neighbour (crown to root"
                    + " 1.0 against less than 1.0)")
            .asks(
                "neither bone nor root charted",
                Designs.lowerClassOne(),
                "crown to root ratio at 45, 43, 33, 35")
            .upholds(
                "half as much",
                Designs.lowerClassOne().crownRoot(35, 0.5),
                "has root enough, crown to root 0.5")
            .quiet("half as much crown as root", Designs.lowerClassOne().crownRoot(35, 0.5))
            .quiet("a tooth that bears nothing", Designs.lowerClassOne().crownRoot(31, 2)),
        RuleCase.of(new WeakAbutmentsShareTheirLoad())
            .fires(
                "doubtful and alone",
                Designs.upperClassThree().doubtful(16),
                "16: has a doubtful outlook, yet alone carries saddle 15–14 at this end; share its"
                    + " load with the next tooth (0 rests on the next tooth against 1 rest)")
            .fires(
                "loose and alone",
                Designs.lowerClassTwo().mobile(34, 2),
                "34: has mobility grade 2, yet alone carries saddle 35–37 at this end; share its"
                    + " load with the next tooth (0 rests on the next tooth against 1 rest)")
            .fires(
                "little bone",
                Designs.upperClassThree().boneSupport(16, 30),
                "16: has little bone, yet alone carries saddle 15–14 at this end; share its load"
                    + " with the next tooth (0 rests on the next tooth against 1 rest)")
            .fires(
                "a short root",
                Designs.upperClassThree().crownRoot(16, 1.2),
                "16: has a short root, yet alone carries saddle 15–14 at this end; share its load"
                    + " with the next tooth (0 rests on the next tooth against 1 rest)")
            .upholds(
                "a rest on the next tooth",
                Designs.upperClassThree().doubtful(16).rest(17, RestSite.MESIAL_OCCLUSAL),
                "takes part of the load of 16, which is weak")
            .quiet(
                "no next tooth to share with",
                Designs.upperClassThree().notReplaced(17).doubtful(16))
            .quiet("strong abutments", Designs.upperClassThree()));
  }

  private static List<RuleCase> crowns() {
    return List.of(
        RuleCase.of(new AbutmentsAreFreeOfDecay())
            .fires(
                "a carious abutment",
                Designs.lowerClassOne().condition(35, Condition.CARIOUS),
                "35: decayed, and the denture is planned on it; treat it first (untreated decay"
                    + " against a sound or restored crown)")
            .asks("condition not charted", Designs.lowerClassOne(), "condition at 45, 43, 33, 35")
            .quiet(
                "a carious tooth that bears nothing",
                Designs.lowerClassOne().condition(31, Condition.CARIOUS))
            .quiet("restored", Designs.lowerClassOne().condition(35, Condition.RESTORED)),
        RuleCase.of(new AbutmentsLeanLittle())
            .fires(
                "30 degrees",
                Designs.upperClassThree().leaning(16, Tilt.MESIAL, Optional.of(30.0)),
                "16: leans so far that a bite pushes it sideways; upright it, crown it, or choose"
                    + " another abutment (30 degrees against at most 25 degrees)")
            .asks(
                "tilt without degrees",
                Designs.upperClassThree().leaning(16, Tilt.MESIAL, Optional.empty()),
                "degrees of tilt at 16")
            .quiet("18 degrees", Designs.upperClassThree().tilted(16, Tilt.MESIAL))
            .quiet("upright", Designs.upperClassThree()),
        RuleCase.of(new RootFilledAbutmentsAreSpared())
            .fires(
                "a root-filled last tooth",
                Designs.lowerClassOne().condition(35, Condition.ROOT_FILLED),
                "35: root-filled, and clasped at the end of a free-end saddle; plan for its loss (a"
                    + " root-filled terminal abutment against a vital one)")
            .asks("condition not charted", Designs.lowerClassOne(), "condition at 45, 35")
            .quiet(
                "beside a bounded saddle",
                Designs.upperClassThree().condition(16, Condition.ROOT_FILLED))
            .quiet("vital", Designs.lowerClassOne().condition(35, Condition.SOUND)));
  }

  private static List<RuleCase> opponents() {
    return List.of(
        RuleCase.of(new CombinationSyndromeIsForeseen())
            .fires(
                "a lingual bar against a complete denture",
                Designs.lowerClassOne().againstACompleteDenture(),
                "Lingual bar: leaves front teeth unbound that bite alone against a complete upper"
                    + " denture (front teeth unbound against a lingual plate)")
            .fires(
                "a short flange",
                Designs.lowerClassOne()
                    .without(Saddle.class, 36)
                    .saddle(36, 37, Saddle.Flange.PART)
                    .againstACompleteDenture(),
                "Saddle 36–37: opposite a complete upper denture its base must not sink (a short"
                    + " flange against a full flange)")
            .upholds(
                "a lingual plate",
                Designs.lowerClassOne()
                    .without(MajorConnector.class)
                    .connector(ConnectorForm.LINGUAL_PLATE, 45, 35)
                    .againstACompleteDenture(),
                "binds the front teeth that bite against a complete upper denture")
            .quiet("against natural teeth", Designs.lowerClassOne())
            .quiet("not a Class I", Designs.lowerClassTwo().againstACompleteDenture()),
        RuleCase.of(new FreeEndRidgesAreRecordedUnderLoad())
            .fires(
                "nothing noted",
                Designs.lowerClassOne(),
                "Lower free-end ridge: the sheet does not say how it is recorded under load (no"
                    + " note against altered cast or functional reline noted)")
            .upholds(
                "altered cast noted",
                Designs.lowerClassOne().note("Altered cast, both sides"),
                "says how the ridge is recorded under load")
            .quiet("an upper denture", Designs.upperClassThree())
            .quiet("noted", Designs.lowerClassTwo().note("functional reline at fit")),
        RuleCase.of(new ReplacedTeethHaveAnOpponent())
            .fires(
                "no upper molars on the left",
                Designs.lowerClassOne().opposing(c -> Designs.lost(c, 25, 26, 27, 28)),
                "Saddle 36–37: no opposing tooth bites on its 2 hindmost teeth; consider a shorter"
                    + " saddle (2 of 2 unopposed against none unopposed)")
            .fires(
                "no upper second molar",
                Designs.lowerClassTwo().opposing(c -> Designs.lost(c, 26, 27, 28)),
                "Saddle 35–37: no opposing tooth bites on its 1 hindmost tooth; consider a shorter"
                    + " saddle (1 of 3 unopposed against none unopposed)")
            .upholds(
                "a full upper arch", Designs.lowerClassOne(), "carries teeth that are bitten on")
            .quiet("a complete upper denture", Designs.lowerClassOne().againstACompleteDenture())
            .quiet(
                "a bounded saddle holds its neighbours apart",
                Designs.upperClassThree().opposing(c -> Designs.lost(c, 34, 35))));
  }
}
