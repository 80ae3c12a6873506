package saddlewright.rules;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import saddlewright.chart.SoftTissues;
import saddlewright.dentition.Span;
import saddlewright.design.ComponentId;
import saddlewright.design.ConnectorForm;
import saddlewright.design.ConnectorShape;
import saddlewright.design.MajorConnector;
import saddlewright.design.PostDam;
import saddlewright.design.Relief;
import saddlewright.layout.Measure;
import saddlewright.rules.upper.FrontSaddlesTakeARing;
import saddlewright.rules.upper.HorseshoeLimbsAreBroadEnough;
import saddlewright.rules.upper.HorseshoesDoNotCarryFreeEnds;
import saddlewright.rules.upper.HorseshoesSuitToriAndFrontSaddles;
import saddlewright.rules.upper.LastAbutmentPremolarsTakeAPlate;
import saddlewright.rules.upper.PalatalBarsLieFarBack;
import saddlewright.rules.upper.PalatalBarsServeShortBoundedSaddles;
import saddlewright.rules.upper.PalatalPlatesSuitLongSaddles;
import saddlewright.rules.upper.PalatalToriAreSpared;
import saddlewright.rules.upper.RingLimbsAreBroadEnough;
import saddlewright.rules.upper.RingsAreOpenEnough;
import saddlewright.rules.upper.ShortBoundedSaddlesTakeAStrap;
import saddlewright.rules.upper.SideLimbsAreBroadEnough;
import saddlewright.rules.upper.StrapsAreBroadEnough;
import saddlewright.rules.upper.UpperConnectorsAreBeaded;
import saddlewright.rules.upper.UpperConnectorsAreNotRelieved;
import saddlewright.rules.upper.UpperConnectorsCrossTheMidlineSquarely;
import saddlewright.rules.upper.UpperConnectorsEndOnTheHardPalate;
import saddlewright.rules.upper.UpperConnectorsLeaveTheRugaeFree;
import saddlewright.rules.upper.UpperFreeEndsTakeABroadPlate;
import saddlewright.rules.upper.WeakFrontTeethTakeACompletePalate;

/** Cases for the rules of upper major connectors. */
final class UpperConnectorCases {
  private UpperConnectorCases() {}

  private static ConnectorShape shape() {
    return ConnectorShape.DEFAULT;
  }

  static List<RuleCase> all() {
    return List.of(
        RuleCase.of(new UpperConnectorsEndOnTheHardPalate())
            .fires(
                "a plate carried to 60 mm",
                Designs.upperClassOne()
                    .shaped(x -> x.withBorders(Optional.empty(), Optional.of(56.0))),
                "Palatal plate: its rear border runs on to the soft palate (# mm behind its limit against in front of it)")
            .asks(
                "a plate near a junction that was not charted",
                Designs.upperClassOne(),
                "distance to the soft palate")
            .quiet(
                "the junction was charted",
                Designs.upperClassOne().tissues(t -> t.withPalateLimit(Optional.of(50.0))))
            .upholds(
                "a strap in the middle",
                Designs.upperClassThree(),
                "ends on the hard palate, # mm in front of the soft palate"),
        RuleCase.of(new UpperConnectorsCrossTheMidlineSquarely())
            .fires(
                "a saddle in front on one side and behind on the other",
                Designs.upper()
                    .missing(14, 26, 27)
                    .saddle(14, 14)
                    .saddle(26, 27)
                    .connector(ConnectorForm.PALATAL_STRAP, 14, 27),
                "Palatal strap: its rear border runs slantwise over the midline (#° from square against at most 15°)")
            .quiet("saddles opposite each other", Designs.upperClassThree())
            .upholds(
                "a symmetrical strap", Designs.upperClassThree(), "crosses the midline squarely"),
        RuleCase.of(new UpperFreeEndsTakeABroadPlate())
            .fires(
                "a strap in Class I",
                Designs.upperClassOne().swapped(ConnectorForm.PALATAL_STRAP),
                "Palatal strap: too little palate is covered to share the load of free-end saddles (2 free-end saddles of up to 3 teeth against a palatal plate or ring)")
            .fires(
                "a bar behind one long free end",
                Designs.upper()
                    .missing(25, 26, 27)
                    .saddle(25, 27)
                    .connector(ConnectorForm.PALATAL_BAR, 16, 27),
                "Palatal bar: too little palate is covered to share the load of free-end saddles (1 free-end saddle of 3 teeth against a palatal plate or ring)")
            .quiet(
                "a strap behind one short free end",
                Designs.upper()
                    .missing(26, 27)
                    .saddle(26, 27)
                    .connector(ConnectorForm.PALATAL_STRAP, 16, 27))
            .quiet("bounded saddles", Designs.upperClassThree())
            .upholds(
                "a plate",
                Designs.upperClassOne(),
                "shares the load of free-end saddles with the palate"),
        RuleCase.of(new LastAbutmentPremolarsTakeAPlate())
            .fires(
                "a horseshoe behind 24",
                Designs.upperClassOne().swapped(ConnectorForm.HORSESHOE),
                "Horseshoe: long free-end saddle behind a slender abutment (last tooth 14 against a palatal plate behind a premolar or canine)")
            .fires(
                "a ring behind 24",
                Designs.upperClassOne().swapped(ConnectorForm.PALATAL_RING),
                Severity.CONSIDER,
                "Palatal ring: long free-end saddle behind a slender abutment (last tooth 14 against a palatal plate behind a premolar or canine)")
            .quiet(
                "a ring round a torus",
                Designs.upperClassOne()
                    .swapped(ConnectorForm.PALATAL_RING)
                    .tissues(t -> t.withTori(Set.of(SoftTissues.Torus.PALATAL))))
            .quiet(
                "a molar is left",
                Designs.upper()
                    .missing(27)
                    .saddle(27, 27)
                    .connector(ConnectorForm.PALATAL_STRAP, 16, 27))
            .upholds(
                "a plate", Designs.upperClassOne(), "covers the palate behind 14, the last tooth"),
        RuleCase.of(new WeakFrontTeethTakeACompletePalate())
            .fires(
                "two incisors and a ring",
                Designs.upperClassOne().missing(12, 22).swapped(ConnectorForm.PALATAL_RING),
                "Palatal ring: leaves support to front teeth that are few or weak (2 incisors standing against a plate over the whole hard palate)")
            .fires(
                "a loose canine and a plate that ends early",
                Designs.upperClassOne()
                    .mobile(13, 2)
                    .shaped(x -> x.withBorders(Optional.empty(), Optional.of(40.0))),
                "Palatal plate: leaves support to front teeth that are few or weak (weak front tooth 13 against a plate over the whole hard palate)")
            .asks(
                "mobility not charted",
                Designs.upperClassOne().swapped(ConnectorForm.PALATAL_RING),
                "mobility at 13–23")
            .quiet(
                "one free end",
                Designs.upper()
                    .missing(26, 27)
                    .saddle(26, 27)
                    .connector(ConnectorForm.PALATAL_STRAP, 16, 27))
            .quiet("the whole palate is covered", Designs.upperClassOne())
            .upholds(
                "a complete plate for two incisors",
                Designs.upperClassOne().missing(12, 22),
                "covers the whole palate to spare the front teeth"),
        RuleCase.of(new HorseshoesSuitToriAndFrontSaddles())
            .fires(
                "two short saddles behind",
                Designs.upperClassThree().swapped(ConnectorForm.HORSESHOE),
                "Horseshoe: nothing calls for it (no torus, no front saddle, 2 saddles against a torus, a front saddle or 3 saddles)")
            .fires(
                "free ends",
                Designs.upperClassOne().swapped(ConnectorForm.HORSESHOE),
                "Horseshoe: nothing calls for it (no torus, no front saddle, 2 saddles against a torus, a front saddle or 3 saddles)")
            .quiet("a strap", Designs.upperClassThree())
            .quiet(
                "four saddles",
                Designs.upperClassThree()
                    .missing(12, 22)
                    .saddle(12, 12)
                    .saddle(22, 22)
                    .swapped(ConnectorForm.HORSESHOE))
            .upholds(
                "a torus",
                Designs.upperClassThree()
                    .swapped(ConnectorForm.HORSESHOE)
                    .tissues(t -> t.withTori(Set.of(SoftTissues.Torus.PALATAL))),
                "goes round the torus")
            .upholds(
                "a front saddle",
                Designs.upperClassFour().swapped(ConnectorForm.HORSESHOE),
                "carries the front saddle"),
        RuleCase.of(new HorseshoesDoNotCarryFreeEnds())
            .fires(
                "Class I",
                Designs.upperClassOne().swapped(ConnectorForm.HORSESHOE),
                "Horseshoe: it spreads under free-end saddles (2 free-end saddles against none)")
            .fires(
                "Class I with a torus",
                Designs.upperClassOne()
                    .swapped(ConnectorForm.HORSESHOE)
                    .tissues(t -> t.withTori(Set.of(SoftTissues.Torus.PALATAL))),
                Severity.CONSIDER,
                "Horseshoe: it spreads under free-end saddles (2 free-end saddles against none)")
            .quiet("Class IV", Designs.upperClassFour().swapped(ConnectorForm.HORSESHOE)),
        RuleCase.of(new HorseshoeLimbsAreBroadEnough())
            .fires(
                "an opening 4 mm behind the front",
                Designs.upperClassThree()
                    .swapped(ConnectorForm.HORSESHOE)
                    .shaped(
                        x ->
                            x.withBorders(Optional.of(16.0), Optional.empty())
                                .withOpening(Optional.of(20.0), Optional.empty())),
                "Horseshoe: narrow in front, where it twists (# mm against at least 6 mm)")
            .quiet("the usual breadth", Designs.upperClassThree().swapped(ConnectorForm.HORSESHOE))
            .upholds(
                "the usual breadth",
                Designs.upperClassThree().swapped(ConnectorForm.HORSESHOE),
                "is # mm broad in front"),
        RuleCase.of(new RingLimbsAreBroadEnough())
            .fires(
                "an opening too far back",
                Designs.upperClassThree()
                    .swapped(ConnectorForm.PALATAL_RING)
                    .shaped(
                        x ->
                            x.withBorders(Optional.of(12.0), Optional.of(40.0))
                                .withOpening(Optional.of(20.0), Optional.of(36.0))),
                "Palatal ring: narrow behind (# mm against at least 8 mm)")
            .fires(
                "an opening too far forward",
                Designs.upperClassThree()
                    .swapped(ConnectorForm.PALATAL_RING)
                    .shaped(
                        x ->
                            x.withBorders(Optional.of(16.0), Optional.of(44.0))
                                .withOpening(Optional.of(19.0), Optional.of(35.0))),
                "Palatal ring: narrow in front (# mm against at least 6 mm)")
            .quiet("the usual breadths", Designs.upperClassFour())
            .upholds(
                "the usual breadths",
                Designs.upperClassFour(),
                "braces itself with straps of # mm and # mm"),
        RuleCase.of(new SideLimbsAreBroadEnough())
            .fires(
                "a palate too narrow for opening, limbs and clearance",
                Designs.upperClassFour(),
                Severity.CONSIDER,
                "Palatal ring: narrow limb beside the opening (# mm against at least 7 mm)")
            .quiet("a plate has none", Designs.upperClassOne())
            .upholds(
                "a ring nearer to the gums",
                Designs.upperClassFour()
                    .shaped(
                        x ->
                            x.withClearance(Optional.of(3.0))
                                .withOpening(Optional.of(30.0), Optional.of(41.0))),
                "has side limbs of # mm"),
        RuleCase.of(new RingsAreOpenEnough())
            .fires(
                "an opening of 8 mm",
                Designs.upperClassFour().measuring(MajorConnector.class, 16, Measure.OPENING, 8),
                "Palatal ring: small opening (8 mm against at least 15 mm)")
            .quiet(
                "15 mm",
                Designs.upperClassFour().measuring(MajorConnector.class, 16, Measure.OPENING, 15))
            .quiet("no ring", Designs.upperClassThree())
            .upholds("the usual ring", Designs.upperClassFour(), "leaves # mm of the palate free"),
        RuleCase.of(new StrapsAreBroadEnough())
            .fires(
                "a strap of 6 mm",
                Designs.upperClassThree()
                    .without(MajorConnector.class)
                    .add(
                        MajorConnector.of(
                                ComponentId.of("strap"),
                                ConnectorForm.PALATAL_STRAP,
                                Span.of(15, 25))
                            .withShape(shape().withHeight(Optional.of(6.0))))
                    .measuring(MajorConnector.class, 15, Measure.HEIGHT, 6),
                "Palatal strap: narrow for a strap (6 mm against at least 8 mm)")
            .quiet(
                "8 mm",
                Designs.upperClassThree().measuring(MajorConnector.class, 15, Measure.HEIGHT, 8))
            .quiet("a strap of the usual width", Designs.upperClassThree())
            .upholds(
                "the usual strap",
                Designs.upperClassThree(),
                "is stiff and thin, being # mm broad"),
        RuleCase.of(new PalatalBarsServeShortBoundedSaddles())
            .fires(
                "free ends",
                Designs.upperClassOne().swapped(ConnectorForm.PALATAL_BAR),
                "Palatal bar: too slight for these saddles (2 free-end saddles against bounded saddles of at most 3 teeth)")
            .fires(
                "a saddle of four teeth",
                Designs.upper()
                    .missing(13, 14, 15, 16)
                    .saddle(13, 16)
                    .connector(ConnectorForm.PALATAL_BAR, 16, 26),
                "Palatal bar: too slight for these saddles (4 teeth in one saddle against bounded saddles of at most 3 teeth)")
            .quiet(
                "short bounded saddles",
                Designs.upperClassThree().swapped(ConnectorForm.PALATAL_BAR)),
        RuleCase.of(new PalatalBarsLieFarBack())
            .fires(
                "between the premolars",
                Designs.upperClassThree().swapped(ConnectorForm.PALATAL_BAR),
                "Palatal bar: lies where the tongue speaks (# mm in front of the second premolars against level with them or behind)")
            .quiet("a strap may lie there", Designs.upperClassThree())
            .upholds(
                "between the molars",
                Designs.upper()
                    .missing(16, 26)
                    .saddle(16, 16)
                    .saddle(26, 26)
                    .connector(ConnectorForm.PALATAL_BAR, 16, 26),
                "lies behind the second premolars, out of the way of speech"),
        RuleCase.of(new UpperConnectorsAreBeaded())
            .fires(
                "no beading",
                Designs.upperClassThree(),
                "Palatal strap: its borders are not beaded (no beading against beading on all borders)")
            .fires(
                "a post-dam alone",
                Designs.upperClassThree().dam(PostDam.Extent.POSTERIOR_BORDER),
                Severity.CONSIDER,
                "Palatal strap: only its rear border is beaded (beading on the rear border against beading on all borders)")
            .quiet("beaded all round", Designs.upperClassThree().dam(PostDam.Extent.ALL_BORDERS))
            .quiet("a lower bar", Designs.lowerClassOne())
            .upholds(
                "beaded all round",
                Designs.upperClassThree().dam(PostDam.Extent.ALL_BORDERS),
                "seals the borders against food"),
        RuleCase.of(new UpperConnectorsAreNotRelieved())
            .fires(
                "relieved like a lower one",
                Designs.upperClassThree().relief(Relief.Area.UNDER_LOWER_CONNECTOR, 0.25),
                "Relief: lifts the connector off the palate (0.25 mm against contact)")
            .fires(
                "relieved over no torus",
                Designs.upperClassThree().relief(Relief.Area.PALATAL_TORUS, 0.5),
                "Relief: spares a torus that is not charted (0.5 mm against contact, or a charted torus)")
            .quiet(
                "relieved over the raphe",
                Designs.upperClassThree().relief(Relief.Area.MIDLINE_RAPHE, 0.3))
            .quiet(
                "relieved over a torus",
                Designs.upperClassThree()
                    .relief(Relief.Area.PALATAL_TORUS, 0.5)
                    .tissues(t -> t.withTori(Set.of(SoftTissues.Torus.PALATAL)))),
        RuleCase.of(new PalatalToriAreSpared())
            .fires(
                "a strap over a torus",
                Designs.upperClassThree()
                    .tissues(t -> t.withTori(Set.of(SoftTissues.Torus.PALATAL))),
                "Palatal strap: crosses the palatal torus without relief (0 mm relief against"
                    + " relief, or a ring or horseshoe round it)")
            .quiet("no torus", Designs.upperClassThree())
            .quiet(
                "a ring",
                Designs.upperClassFour()
                    .tissues(t -> t.withTori(Set.of(SoftTissues.Torus.PALATAL))))
            .upholds(
                "a ring",
                Designs.upperClassFour()
                    .tissues(t -> t.withTori(Set.of(SoftTissues.Torus.PALATAL))),
                "goes round the torus")
            .upholds(
                "relief",
                Designs.upperClassThree()
                    .relief(Relief.Area.PALATAL_TORUS, 0.5)
                    .tissues(t -> t.withTori(Set.of(SoftTissues.Torus.PALATAL))),
                "spares the torus"),
        RuleCase.of(new ShortBoundedSaddlesTakeAStrap())
            .fires(
                "a horseshoe",
                Designs.upperClassThree().swapped(ConnectorForm.HORSESHOE),
                "Horseshoe: more metal and more borders than short bounded saddles need (2 saddles of up to 2 teeth against a palatal strap)")
            .fires(
                "a ring",
                Designs.upperClassThree().swapped(ConnectorForm.PALATAL_RING),
                Severity.CONSIDER,
                "Palatal ring: more metal and more borders than short bounded saddles need (2 saddles of up to 2 teeth against a palatal strap)")
            .quiet("front teeth are replaced", Designs.upperClassFour())
            .quiet(
                "a torus is in the way",
                Designs.upperClassThree()
                    .swapped(ConnectorForm.PALATAL_RING)
                    .tissues(t -> t.withTori(Set.of(SoftTissues.Torus.PALATAL))))
            .upholds(
                "a strap",
                Designs.upperClassThree(),
                "joins short bounded saddles with the fewest borders"),
        RuleCase.of(new FrontSaddlesTakeARing())
            .fires(
                "a strap in Class IV",
                Designs.upperClassFour().swapped(ConnectorForm.PALATAL_STRAP),
                "Palatal strap: does not take hold of the front saddle (front saddle 12–22 against a ring, horseshoe or plate)")
            .quiet("saddles behind only", Designs.upperClassThree())
            .upholds("a ring", Designs.upperClassFour(), "takes hold of the front saddle 12–22"),
        RuleCase.of(new UpperConnectorsLeaveTheRugaeFree())
            .fires(
                "a plate carried forward",
                Designs.upperClassOne()
                    .shaped(x -> x.withBorders(Optional.of(8.0), Optional.empty())),
                "Palatal plate: covers the rugae (# % of them against at most 50 %)")
            .quiet("front teeth are replaced", Designs.upperClassFour())
            .upholds(
                "a strap behind them",
                Designs.upper()
                    .missing(16, 26)
                    .saddle(16, 16)
                    .saddle(26, 26)
                    .connector(ConnectorForm.PALATAL_STRAP, 16, 26),
                "leaves the rugae free"),
        RuleCase.of(new PalatalPlatesSuitLongSaddles())
            .fires(
                "one premolar",
                Designs.upper()
                    .missing(15)
                    .saddle(15, 15)
                    .connector(ConnectorForm.PALATAL_PLATE, 15, 26),
                "Palatal plate: covers the palate for a few teeth that standing ones can carry (1 tooth replaced against free-end or long saddles)")
            .fires(
                "four premolars",
                Designs.upperClassThree().swapped(ConnectorForm.PALATAL_PLATE),
                Severity.CONSIDER,
                "Palatal plate: covers the palate for a few teeth that standing ones can carry (4 teeth replaced against free-end or long saddles)")
            .quiet("free ends", Designs.upperClassOne())
            .upholds(
                "a molar will be lost",
                Designs.upperClassThree().swapped(ConnectorForm.PALATAL_PLATE).doubtful(16),
                "can take 16 when it is lost"));
  }
}
