package saddlewright.rules;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import saddlewright.chart.GapDecision;
import saddlewright.chart.SoftTissues;
import saddlewright.chart.Tilt;
import saddlewright.chart.ToothFindings;
import saddlewright.chart.ToothStatus;
import saddlewright.dentition.Arch;
import saddlewright.dentition.Side;
import saddlewright.dentition.Tooth;
import saddlewright.design.ConnectorForm;
import saddlewright.design.MajorConnector;
import saddlewright.design.MinorConnector;
import saddlewright.design.PostDam;
import saddlewright.design.Relief;
import saddlewright.design.Rest;
import saddlewright.rules.lower.BarsAreHighEnough;
import saddlewright.rules.lower.BarsAreStiffEnough;
import saddlewright.rules.lower.BarsSpanAtMostFourTeeth;
import saddlewright.rules.lower.ContinuousBarsHaveAReason;
import saddlewright.rules.lower.DentalBarsDoNotCarryFreeEnds;
import saddlewright.rules.lower.DentalBarsHaveTallCrowns;
import saddlewright.rules.lower.DentalBarsRunOnUprightTeeth;
import saddlewright.rules.lower.HighFrenaTakeAPlate;
import saddlewright.rules.lower.LabialBarsAreALastResort;
import saddlewright.rules.lower.LabialBarsHaveRoom;
import saddlewright.rules.lower.LingualBarsComeFirst;
import saddlewright.rules.lower.LingualBarsHaveDepth;
import saddlewright.rules.lower.LingualBarsPassUprightTeeth;
import saddlewright.rules.lower.LingualPlatesAreCarriedByRests;
import saddlewright.rules.lower.LingualPlatesAreForShallowSulci;
import saddlewright.rules.lower.LowerBarsClearTheFloorOfTheMouth;
import saddlewright.rules.lower.LowerConnectorsAreNotBeaded;
import saddlewright.rules.lower.LowerConnectorsAreRelieved;
import saddlewright.rules.lower.MandibularToriTakeAPlate;
import saddlewright.rules.lower.ResorbedFreeEndsTakeAPlate;
import saddlewright.rules.lower.SublingualBarsHaveDepth;
import saddlewright.rules.lower.WeakIncisorsTakeAPlate;

/** Cases for the rules of lower major connectors. */
final class LowerConnectorCases {
  private LowerConnectorCases() {}

  static List<RuleCase> all() {
    return List.of(
        RuleCase.of(new LingualBarsHaveDepth())
            .fires(
                "6 mm at 31",
                Designs.lowerClassOne().lingualDepth(6, 31),
                "Lingual bar: shallow lingual sulcus at 31 (6 mm against at least 7 mm)")
            .fires(
                "7.5 mm at 41",
                Designs.lowerClassOne().lingualDepth(7.5, 41),
                Severity.SHOULD,
                "Lingual bar: shallow lingual sulcus at 41 (7.5 mm against at least 8 mm)")
            .quiet("8 mm", Designs.lowerClassOne().lingualDepth(8, 31))
            .quiet(
                "a plate needs no such depth",
                Designs.lowerClassOne()
                    .lingualDepth(4, 31)
                    .without(MajorConnector.class)
                    .connector(ConnectorForm.LINGUAL_PLATE, 45, 35))
            .asks(
                "no depth charted",
                Designs.lower()
                    .missing(36, 37, 46, 47)
                    .saddle(36, 37)
                    .saddle(46, 47)
                    .rpi(35)
                    .rpi(45)
                    .connector(ConnectorForm.LINGUAL_BAR, 45, 35),
                "lingual sulcus depth at 45–35")
            .asks(
                "depth charted in part",
                Designs.lower()
                    .missing(36, 37, 46, 47)
                    .saddle(36, 37)
                    .saddle(46, 47)
                    .rpi(35)
                    .rpi(45)
                    .lingualDepth(9, 31, 32, 33, 34, 35, 41, 42)
                    .connector(ConnectorForm.LINGUAL_BAR, 45, 35),
                "lingual sulcus depth at 45–43")
            .upholds(
                "10 mm", Designs.lowerClassOne(), "has room in a lingual sulcus of 10 mm at least"),
        RuleCase.of(new SublingualBarsHaveDepth())
            .fires(
                "4 mm",
                Designs.lowerClassOne().lingualDepth(4, 31).swapped(ConnectorForm.SUBLINGUAL_BAR),
                "Sublingual bar: shallow lingual sulcus at 31 (4 mm against at least 5 mm)")
            .asks(
                "no depth charted",
                Designs.lower()
                    .missing(36, 37, 46, 47)
                    .saddle(36, 37)
                    .saddle(46, 47)
                    .rpi(35)
                    .rpi(45)
                    .connector(ConnectorForm.SUBLINGUAL_BAR, 45, 35),
                "lingual sulcus depth at 45–35")
            .quiet(
                "6 mm",
                Designs.lowerClassOne().lingualDepth(6, 31).swapped(ConnectorForm.SUBLINGUAL_BAR))
            .upholds(
                "6 mm",
                Designs.lowerClassOne().lingualDepth(6, 31).swapped(ConnectorForm.SUBLINGUAL_BAR),
                "lies in a sulcus of 6 mm at least"),
        RuleCase.of(new LingualBarsComeFirst())
            .fires(
                "a sublingual bar in 10 mm",
                Designs.lowerClassOne().swapped(ConnectorForm.SUBLINGUAL_BAR),
                "Sublingual bar: a lingual bar would fit (10 mm of lingual sulcus against less than 8 mm, or something in the way of a bar)")
            .fires(
                "a dental bar in 10 mm",
                Designs.lowerClassOne().swapped(ConnectorForm.DENTAL_BAR),
                "Dental bar: a lingual bar would fit (10 mm of lingual sulcus against less than 8 mm, or something in the way of a bar)")
            .asks(
                "no depth charted",
                Designs.lower()
                    .missing(36, 37, 46, 47)
                    .saddle(36, 37)
                    .saddle(46, 47)
                    .rpi(35)
                    .rpi(45)
                    .connector(ConnectorForm.SUBLINGUAL_BAR, 45, 35),
                "lingual sulcus depth at 45–35")
            .quiet(
                "a high frenum is in the way",
                Designs.lowerClassOne()
                    .tissues(t -> t.withHighLingualFrenum(true))
                    .swapped(ConnectorForm.DENTAL_BAR))
            .upholds(
                "a lingual bar in 10 mm", Designs.lowerClassOne(), "leaves teeth and gums alone")
            .upholds(
                "a sublingual bar in 6 mm",
                Designs.lowerClassOne().lingualDepth(6, 31).swapped(ConnectorForm.SUBLINGUAL_BAR),
                "is a way out of a sulcus of 6 mm"),
        RuleCase.of(new LingualPlatesAreForShallowSulci())
            .fires(
                "a plate in 10 mm",
                Designs.lowerClassOne().swapped(ConnectorForm.LINGUAL_PLATE),
                "Lingual plate: covers the gums although a bar would fit (10 mm of lingual sulcus against less than 8 mm, or another reason)")
            .asks(
                "no depth charted",
                Designs.lower()
                    .missing(36, 37, 46, 47)
                    .saddle(36, 37)
                    .saddle(46, 47)
                    .rpi(35)
                    .rpi(45)
                    .connector(ConnectorForm.LINGUAL_PLATE, 45, 35),
                "lingual sulcus depth at 45–35")
            .quiet("a bar", Designs.lowerClassOne())
            .quiet(
                "an opposing complete denture",
                Designs.lowerClassOne()
                    .swapped(ConnectorForm.LINGUAL_PLATE)
                    .opposing(
                        c ->
                            Tooth.in(Arch.UPPER).stream()
                                .reduce(
                                    c,
                                    (x, t) ->
                                        x.with(
                                            t,
                                            ToothFindings.of(
                                                ToothStatus.MISSING, GapDecision.REPLACED)),
                                    (x, y) -> y)))
            .upholds(
                "5 mm",
                Designs.lowerClassOne().lingualDepth(5, 31).swapped(ConnectorForm.LINGUAL_PLATE),
                "is called for by a lingual sulcus of 5 mm")
            .upholds(
                "weak incisors",
                Designs.lowerClassOne().mobile(31, 2).swapped(ConnectorForm.LINGUAL_PLATE),
                "is called for by the weak 31")
            .upholds(
                "flat ridges",
                Designs.lowerClassOne()
                    .tissues(
                        t ->
                            t.withRidge(Side.LEFT, Optional.of(SoftTissues.RidgeState.RESORBED))
                                .withRidge(
                                    Side.RIGHT, Optional.of(SoftTissues.RidgeState.RESORBED)))
                    .swapped(ConnectorForm.LINGUAL_PLATE),
                "is called for by resorbed ridges on both sides"),
        RuleCase.of(new LingualPlatesAreCarriedByRests())
            .fires(
                "a plate without rests",
                Designs.lower()
                    .missing(36, 37, 46, 47)
                    .saddle(36, 37)
                    .saddle(46, 47)
                    .connector(ConnectorForm.LINGUAL_PLATE, 45, 35),
                "Lingual plate: no rest carries it on a canine or premolar of each side (0 of 2"
                    + " sides carried against both sides carried)")
            .quiet(
                "rests on both sides",
                Designs.lowerClassOne()
                    .without(MajorConnector.class)
                    .connector(ConnectorForm.LINGUAL_PLATE, 45, 35))
            .quiet("a bar", Designs.lowerClassOne())
            .upholds(
                "rests on both sides",
                Designs.lowerClassOne().swapped(ConnectorForm.LINGUAL_PLATE),
                "carries the lingual plate"),
        RuleCase.of(new DentalBarsHaveTallCrowns())
            .fires(
                "6 mm",
                Designs.lowerClassOne()
                    .swapped(ConnectorForm.DENTAL_BAR)
                    .crownHeight(9, 34, 33, 32, 31, 41, 42, 43, 44)
                    .crownHeight(6, 32),
                "Dental bar: short crown of 32 under it (6 mm against at least 8 mm)")
            .asks(
                "not charted",
                Designs.lowerClassOne().swapped(ConnectorForm.DENTAL_BAR),
                "crown height at 44–34")
            .quiet(
                "9 mm",
                Designs.lowerClassOne()
                    .swapped(ConnectorForm.DENTAL_BAR)
                    .crownHeight(9, 34, 33, 32, 31, 41, 42, 43, 44))
            .upholds(
                "9 mm",
                Designs.lowerClassOne()
                    .swapped(ConnectorForm.DENTAL_BAR)
                    .crownHeight(9, 34, 33, 32, 31, 41, 42, 43, 44),
                "finds crowns of 9 mm and more"),
        RuleCase.of(new DentalBarsRunOnUprightTeeth())
            .fires(
                "a gap",
                Designs.lowerClassOne().notReplaced(32).swapped(ConnectorForm.DENTAL_BAR),
                "Dental bar: cannot lie close to the teeth (gap at 32 against an unbroken row of upright teeth)")
            .fires(
                "a tooth that leans in",
                Designs.lowerClassOne().tilted(34, Tilt.LINGUAL).swapped(ConnectorForm.DENTAL_BAR),
                "Dental bar: cannot lie close to the teeth (34 leans to the tongue against an unbroken row of upright teeth)")
            .quiet("an unbroken row", Designs.lowerClassOne().swapped(ConnectorForm.DENTAL_BAR))
            .upholds(
                "an unbroken row",
                Designs.lowerClassOne().swapped(ConnectorForm.DENTAL_BAR),
                "runs on an unbroken row of teeth"),
        RuleCase.of(new DentalBarsDoNotCarryFreeEnds())
            .fires(
                "Class I",
                Designs.lowerClassOne().swapped(ConnectorForm.DENTAL_BAR),
                "Dental bar: it gives under free-end saddles (2 free-end saddles against none)")
            .quiet(
                "bounded saddles",
                Designs.lower()
                    .missing(36, 46)
                    .saddle(36, 36)
                    .saddle(46, 46)
                    .connector(ConnectorForm.DENTAL_BAR, 46, 36)),
        RuleCase.of(new BarsSpanAtMostFourTeeth())
            .fires(
                "a dental bar on premolar rests",
                Designs.lowerClassOne()
                    .without(Rest.class, 33)
                    .without(Rest.class, 43)
                    .without(MinorConnector.class, 33)
                    .without(MinorConnector.class, 43)
                    .swapped(ConnectorForm.DENTAL_BAR),
                "Dental bar: long way without a support, 44 to 34 (8 teeth against at most 4 teeth)")
            .fires(
                "a continuous bar held at its ends",
                Designs.lower()
                    .missing(36, 37, 46, 47)
                    .saddle(36, 37)
                    .saddle(46, 47)
                    .rpi(35)
                    .rpi(45)
                    .connector(ConnectorForm.CONTINUOUS_BAR, 45, 35),
                "Continuous bar: long way without a support, 43 to 33 (6 teeth against at most 4 teeth)")
            .quiet(
                "held at the canines",
                Designs.lowerClassOne().swapped(ConnectorForm.CONTINUOUS_BAR))
            .upholds(
                "held at the canines",
                Designs.lowerClassOne().swapped(ConnectorForm.CONTINUOUS_BAR),
                "is supported after every 4 teeth at the most"),
        RuleCase.of(new ContinuousBarsHaveAReason())
            .fires(
                "bounded saddles on firm teeth",
                Designs.lower()
                    .missing(36, 46)
                    .saddle(36, 36)
                    .saddle(46, 46)
                    .connector(ConnectorForm.CONTINUOUS_BAR, 46, 36),
                "Continuous bar: its upper limb has nothing to do (no loose front tooth charted, no free-end saddle against a reason for a second bar)")
            .quiet("a lingual bar", Designs.lowerClassOne())
            .upholds(
                "free ends",
                Designs.lowerClassOne().swapped(ConnectorForm.CONTINUOUS_BAR),
                "keeps the free-end saddles from lifting")
            .upholds(
                "a loose incisor",
                Designs.lowerClassOne().mobile(41, 1).swapped(ConnectorForm.CONTINUOUS_BAR),
                "splints the loose 41"),
        RuleCase.of(new LabialBarsAreALastResort())
            .fires(
                "upright teeth",
                Designs.lowerClassOne().swapped(ConnectorForm.LABIAL_BAR),
                "Labial bar: nothing bars the lingual way (no torus, no tooth leaning to the tongue against one of them)")
            .quiet(
                "a torus",
                Designs.lowerClassOne()
                    .tissues(
                        t ->
                            t.withTori(
                                Set.of(
                                    SoftTissues.Torus.MANDIBULAR_LEFT,
                                    SoftTissues.Torus.MANDIBULAR_RIGHT)))
                    .swapped(ConnectorForm.LABIAL_BAR))
            .upholds(
                "a tooth that leans in",
                Designs.lowerClassOne().tilted(35, Tilt.LINGUAL).swapped(ConnectorForm.LABIAL_BAR),
                "passes outside 35, which leans to the tongue"),
        RuleCase.of(new LabialBarsHaveRoom())
            .fires(
                "6 mm",
                Designs.lowerClassOne()
                    .swapped(ConnectorForm.LABIAL_BAR)
                    .tissues(t -> t.withBuccalDepth(Tooth.T31, Optional.of(6.0))),
                "Labial bar: shallow labial sulcus at 31 (6 mm against at least 8 mm)")
            .asks(
                "not charted",
                Designs.lowerClassOne().swapped(ConnectorForm.LABIAL_BAR),
                "buccal sulcus depth at 44–34")
            .quiet("a lingual bar", Designs.lowerClassOne())
            .upholds(
                "9 mm",
                Designs.lower()
                    .missing(34, 35, 36, 37, 44, 45, 46, 47, 33, 32, 31, 41, 42)
                    .saddle(44, 47)
                    .saddle(31, 37)
                    .tissues(t -> t.withBuccalDepth(Tooth.T43, Optional.of(9.0)))
                    .connector(ConnectorForm.LABIAL_BAR, 44, 34),
                "has 9 mm of labial sulcus"),
        RuleCase.of(new LowerBarsClearTheFloorOfTheMouth())
            .fires(
                "a bar of 6 mm in 8 mm",
                Designs.lowerClassOne()
                    .lingualDepth(8, 31)
                    .shaped(x -> x.withHeight(Optional.of(6.0))),
                "Lingual bar: too near to the raised floor of the mouth at 31 (# mm against at least 1 mm)")
            .asks(
                "not charted",
                Designs.lower()
                    .missing(36, 37, 46, 47)
                    .saddle(36, 37)
                    .saddle(46, 47)
                    .rpi(35)
                    .rpi(45)
                    .connector(ConnectorForm.LINGUAL_BAR, 45, 35),
                "lingual sulcus depth at 45–35")
            .quiet("a usual bar in 8 mm", Designs.lowerClassOne().lingualDepth(8, 31))
            .upholds("10 mm", Designs.lowerClassOne(), "stays # mm above the floor of the mouth"),
        RuleCase.of(new BarsAreHighEnough())
            .fires(
                "3 mm",
                Designs.lowerClassOne().shaped(x -> x.withHeight(Optional.of(3.0))),
                "Lingual bar: low, so that it bends (3 mm against at least 4 mm)")
            .quiet("4 mm", Designs.lowerClassOne())
            .upholds("4 mm", Designs.lowerClassOne(), "is 4 mm high"),
        RuleCase.of(new BarsAreStiffEnough())
            .fires(
                "a bar of 2 mm",
                Designs.lowerClassOne().shaped(x -> x.withHeight(Optional.of(2.0))),
                "Lingual bar: gives under load on one side (# N/mm (model estimate) against at least 2.0 N/mm)")
            .quiet("the usual bar", Designs.lowerClassOne())
            .upholds(
                "the usual bar",
                Designs.lowerClassOne(),
                "joins the sides stiffly (# N/mm, model estimate)"),
        RuleCase.of(new HighFrenaTakeAPlate())
            .fires(
                "a bar across the frenum",
                Designs.lowerClassOne().tissues(t -> t.withHighLingualFrenum(true)),
                "Lingual bar: crosses a high lingual frenum (a bar in the sulcus against a lingual plate or dental bar)")
            .quiet("no high frenum", Designs.lowerClassOne())
            .upholds(
                "a plate",
                Designs.lowerClassOne()
                    .swapped(ConnectorForm.LINGUAL_PLATE)
                    .tissues(t -> t.withHighLingualFrenum(true)),
                "clears the high lingual frenum"),
        RuleCase.of(new MandibularToriTakeAPlate())
            .fires(
                "a bar over tori",
                Designs.lowerClassOne()
                    .tissues(
                        t ->
                            t.withTori(
                                Set.of(
                                    SoftTissues.Torus.MANDIBULAR_LEFT,
                                    SoftTissues.Torus.MANDIBULAR_RIGHT))),
                "Lingual bar: runs on to a mandibular torus (a bar in the sulcus against a relieved plate, or a bar outside the teeth)")
            .quiet("no torus", Designs.lowerClassOne())
            .upholds(
                "a plate",
                Designs.lowerClassOne()
                    .swapped(ConnectorForm.LINGUAL_PLATE)
                    .tissues(
                        t ->
                            t.withTori(
                                Set.of(
                                    SoftTissues.Torus.MANDIBULAR_LEFT,
                                    SoftTissues.Torus.MANDIBULAR_RIGHT))),
                "passes the torus"),
        RuleCase.of(new LingualBarsPassUprightTeeth())
            .fires(
                "two premolars lean in",
                Designs.lowerClassOne().tilted(34, Tilt.LINGUAL).tilted(35, Tilt.LINGUAL),
                "Lingual bar: teeth lean over its way in: 34, 35 (2 leaning teeth against none)")
            .fires(
                "one leans in",
                Designs.lowerClassOne().tilted(35, Tilt.LINGUAL),
                Severity.CONSIDER,
                "Lingual bar: teeth lean over its way in: 35 (1 leaning tooth against none)")
            .quiet("upright teeth", Designs.lowerClassOne()),
        RuleCase.of(new ResorbedFreeEndsTakeAPlate())
            .fires(
                "both resorbed",
                Designs.lowerClassOne()
                    .tissues(
                        t ->
                            t.withRidge(Side.LEFT, Optional.of(SoftTissues.RidgeState.RESORBED))
                                .withRidge(
                                    Side.RIGHT, Optional.of(SoftTissues.RidgeState.RESORBED))),
                "Lingual bar: nothing braces the denture over flat ridges (both ridges resorbed against a lingual plate against the front teeth)")
            .asks("not charted", Designs.lowerClassOne(), "state of the ridge, lower right")
            .quiet(
                "one is well formed",
                Designs.lowerClassOne()
                    .tissues(
                        t ->
                            t.withRidge(
                                Side.LEFT, Optional.of(SoftTissues.RidgeState.WELL_FORMED))))
            .upholds(
                "a plate",
                Designs.lowerClassOne()
                    .swapped(ConnectorForm.LINGUAL_PLATE)
                    .tissues(
                        t ->
                            t.withRidge(Side.LEFT, Optional.of(SoftTissues.RidgeState.RESORBED))
                                .withRidge(
                                    Side.RIGHT, Optional.of(SoftTissues.RidgeState.RESORBED))),
                "braces the denture where both ridges are resorbed"),
        RuleCase.of(new WeakIncisorsTakeAPlate())
            .fires(
                "a doubtful incisor",
                Designs.lowerClassOne().doubtful(31),
                "Lingual bar: weak 31 could not be added to it (a bar against a lingual plate)")
            .asks("mobility not charted", Designs.lowerClassOne(), "mobility at 42–32")
            .quiet(
                "firm incisors",
                Designs.lowerClassOne().mobile(31, 0).mobile(32, 0).mobile(41, 0).mobile(42, 0))
            .upholds(
                "a plate",
                Designs.lowerClassOne().mobile(31, 2).swapped(ConnectorForm.LINGUAL_PLATE),
                "backs 31 and can take it when it is lost"),
        RuleCase.of(new LowerConnectorsAreRelieved())
            .fires(
                "no relief",
                Designs.lowerClassOne(),
                "Lingual bar: not relieved from the gum beneath it (0 mm relief against at least 0.2 mm)")
            .fires(
                "thin relief",
                Designs.lowerClassOne().relief(Relief.Area.UNDER_LOWER_CONNECTOR, 0.1),
                "Lingual bar: thin relief beneath it (0.1 mm against at least 0.2 mm)")
            .quiet(
                "a sheet of wax",
                Designs.lowerClassOne().relief(Relief.Area.UNDER_LOWER_CONNECTOR, 0.25))
            .upholds(
                "a sheet of wax",
                Designs.lowerClassOne().relief(Relief.Area.UNDER_LOWER_CONNECTOR, 0.25),
                "keeps the lingual bar off the gum when the saddles sink"),
        RuleCase.of(new LowerConnectorsAreNotBeaded())
            .fires(
                "a dam below",
                Designs.lowerClassOne().dam(PostDam.Extent.ALL_BORDERS),
                "Post-dam: would cut into the thin mucosa under a lower connector (beaded against not beaded)")
            .quiet("none", Designs.lowerClassOne())
            .quiet("an upper one", Designs.upperClassThree().dam(PostDam.Extent.ALL_BORDERS)));
  }
}
