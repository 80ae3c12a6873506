package saddlewright.rules;

import java.util.List;
import saddlewright.chart.ArchChart;
import saddlewright.chart.GapDecision;
import saddlewright.chart.ToothFindings;
import saddlewright.chart.ToothStatus;
import saddlewright.dentition.Arch;
import saddlewright.dentition.End;
import saddlewright.dentition.RestSite;
import saddlewright.dentition.Tooth;
import saddlewright.dentition.Zone;
import saddlewright.design.Clasp;
import saddlewright.design.ClaspForm;
import saddlewright.design.ConnectorForm;
import saddlewright.design.MinorConnector;
import saddlewright.design.Rest;
import saddlewright.design.Saddle;
import saddlewright.rules.placing.ComponentsStandOnStandingTeeth;
import saddlewright.rules.placing.DesignsAreKeptSimple;
import saddlewright.rules.placing.EdentulousArchesNeedNoFramework;
import saddlewright.rules.placing.EveryReplacedToothHasASaddle;
import saddlewright.rules.placing.LoneTeethAreDoubtfulAbutments;
import saddlewright.rules.placing.RestsHaveRoomAboveThem;
import saddlewright.rules.placing.RestsSitOnPreparedSeats;
import saddlewright.rules.placing.RestsSuitTheKindOfTooth;
import saddlewright.rules.placing.RootsAreCoveredNotClasped;
import saddlewright.rules.placing.SaddlesDoNotOverlap;
import saddlewright.rules.placing.SaddlesEndAtReplacedTeeth;
import saddlewright.rules.placing.SaddlesLieOnGaps;
import saddlewright.rules.placing.SaddlesRunFromAbutmentToAbutment;
import saddlewright.rules.placing.ShortenedArchesAreConsidered;
import saddlewright.rules.placing.StandingThirdMolarsServe;
import saddlewright.rules.placing.WorkFollowsItsOrder;

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
            .fires(
                "an implant of which the chart does not say what it bears",
                Designs.lower().implant(46),
                "46: to be replaced, but no saddle lies there; chart an implant that bears a crown"
                    + " of its own as not replaced (0 of 1 on a saddle against all on a saddle)")
            .quiet("both areas have saddles", Designs.lowerClassOne())
            .quiet("lost but not replaced", Designs.lower().notReplaced(37, 47))
            .quiet(
                "no tooth is left: a complete denture",
                Designs.lower()
                    .missing(Tooth.in(Arch.LOWER).stream().mapToInt(Tooth::fdi).toArray()))
            .upholds("a saddle", Designs.lowerClassOne(), "replaces 36 and 37"),
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
            .asks(
                "not measured", Designs.upperClassThree(), "room for a rest, mesial occlusal of 16")
            .upholds(
                "1.8 mm",
                Designs.upperClassThree().room(16, RestSite.MESIAL_OCCLUSAL, 1.8),
                "has 1.8 mm of room for its metal")
            .quiet("1.5 mm", Designs.upperClassThree().room(16, RestSite.MESIAL_OCCLUSAL, 1.5)),
        RuleCase.of(new RestsSitOnPreparedSeats())
            .fires(
                "a rest on a slope",
                Designs.lowerClassOne()
                    .without(Rest.class, 33)
                    .rest(33, RestSite.CINGULUM, Rest.Form.STANDARD, Rest.Seat.UNPREPARED),
                "33: cingulum rest on 33 sits on an unprepared surface (no seat against a prepared"
                    + " seat)")
            .quiet("seats in enamel", Designs.lowerClassOne())
            .upholds(
                "a seat of composite",
                Designs.lowerClassOne(),
                "sits in a seat of composite, so it cannot slide"),
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
                Designs.upper().missing(14, 16).closed(15).saddle(14, 16)),
        designsAreKeptSimple(),
        edentulousArchesNeedNoFramework(),
        loneTeethAreDoubtfulAbutments(),
        rootsAreCoveredNotClasped(),
        saddlesEndAtReplacedTeeth(),
        saddlesRunFromAbutmentToAbutment(),
        shortenedArchesAreConsidered(),
        standingThirdMolarsServe(),
        workFollowsItsOrder());
  }

  private static RuleCase designsAreKeptSimple() {
    Designs many = Designs.upperClassFour();
    for (int t : new int[] {14, 15, 24, 25}) {
      many.rest(t, RestSite.MESIAL_OCCLUSAL).strut(t, MinorConnector.Place.MESIAL_EMBRASURE);
    }
    return RuleCase.of(new DesignsAreKeptSimple())
        .fires(
            "a rest on every tooth",
            many,
            "Upper denture: many rests, clasps and minor connectors (20 parts against at most 16"
                + " parts)")
        .quiet("twelve", Designs.upperClassFour())
        .quiet("saddles only", Designs.lower().missing(36).saddle(36, 36));
  }

  private static RuleCase edentulousArchesNeedNoFramework() {
    Designs bare = Designs.lower();
    Tooth.in(Arch.LOWER).forEach(t -> bare.missing(t.fdi()));
    Designs framed = Designs.lower();
    Tooth.in(Arch.LOWER).forEach(t -> framed.missing(t.fdi()));
    framed.saddle(47, 37).rest(33, RestSite.CINGULUM).connector(ConnectorForm.LINGUAL_BAR, 43, 33);
    return RuleCase.of(new EdentulousArchesNeedNoFramework())
        .fires(
            "a bar and a rest",
            framed,
            "Lower arch: a framework is drawn where no tooth stands (2 parts of a framework against"
                + " a complete denture)")
        .quiet("a saddle only", bare.saddle(47, 37))
        .quiet("teeth stand", Designs.lowerClassOne());
  }

  private static RuleCase loneTeethAreDoubtfulAbutments() {
    return RuleCase.of(new LoneTeethAreDoubtfulAbutments())
        .fires(
            "only 23 stands",
            only(Designs.upper(), 23).saddle(17, 22).saddle(24, 27),
            "23: the only tooth left to hold the denture (1 abutment against 2 or more, or an"
                + " overdenture or complete denture)")
        .quiet("two teeth", only(Designs.upper(), 23, 13).saddle(17, 14).saddle(24, 27))
        .quiet("no design yet", only(Designs.upper(), 23));
  }

  private static Designs only(Designs d, int... standing) {
    Tooth.in(d.design().arch()).stream()
        .filter(t -> t.position() < 8)
        .forEach(t -> d.missing(t.fdi()));
    return d.standing(standing);
  }

  private static RuleCase rootsAreCoveredNotClasped() {
    return RuleCase.of(new RootsAreCoveredNotClasped())
        .fires(
            "a clasp on a root",
            Designs.lowerClassOne()
                .root(33)
                .without(Rest.class, 33)
                .without(MinorConnector.class, 33)
                .clasp(33, ClaspForm.I_BAR, Zone.MID_BUCCAL, End.DISTAL),
            "33: I-bar on 33, but only a root is kept (a root against a crown)")
        .quiet("no root", Designs.lowerClassOne())
        .upholds(
            "a saddle over a root",
            Designs.lower().missing(34, 35, 36, 37).root(34).saddle(34, 37),
            "bears on the root of 34, which spares the ridge");
  }

  private static RuleCase saddlesEndAtReplacedTeeth() {
    return RuleCase.of(new SaddlesEndAtReplacedTeeth())
        .fires(
            "a saddle to the third molar, which is not replaced",
            Designs.lower().missing(36, 37).saddle(36, 38),
            "Saddle 36–38: reaches over 38, not to be replaced (3 places against 2 to be replaced)")
        .fires(
            "a saddle over nothing that is replaced",
            Designs.lower().saddle(38, 38),
            "Saddle 38: reaches over 38, not to be replaced (1 place against 0 to be replaced)")
        .quiet("ends at 37", Designs.lowerClassOne())
        .quiet(
            "a place within is left",
            Designs.upper().missing(14, 16).notReplaced(15).saddle(16, 14));
  }

  private static RuleCase saddlesRunFromAbutmentToAbutment() {
    return RuleCase.of(new SaddlesRunFromAbutmentToAbutment())
        .fires(
            "one gap, two saddles",
            Designs.upper().missing(14, 15).saddle(15, 15).saddle(14, 14),
            "15–14: one edentulous area is cut up into several saddles (2 saddles against 1"
                + " saddle)")
        .quiet("one saddle each", Designs.upperClassThree())
        .quiet(
            "overlapping saddles are another rule's",
            Designs.upper().missing(14, 15).saddle(15, 14).saddle(14, 14));
  }

  private static RuleCase shortenedArchesAreConsidered() {
    return RuleCase.of(new ShortenedArchesAreConsidered())
        .fires(
            "all premolars meet",
            Designs.lowerClassOne(),
            "Lower denture: replaces molars only, where the back teeth in front of them still meet"
                + " (4 pairs of back teeth against fewer than 4 pairs, or a reason)")
        .quiet(
            "two opposing premolars are lost",
            Designs.lowerClassOne().opposing(c -> lost(lost(c, 14), 15)))
        .quiet("a premolar is replaced too", Designs.lowerClassTwo())
        .quiet("bounded", Designs.upperClassThree());
  }

  private static ArchChart lost(ArchChart chart, int tooth) {
    return chart.with(
        Tooth.of(tooth), ToothFindings.of(ToothStatus.MISSING, GapDecision.NOT_REPLACED));
  }

  private static RuleCase standingThirdMolarsServe() {
    return RuleCase.of(new StandingThirdMolarsServe())
        .fires(
            "38 stands behind the saddle",
            Designs.lowerClassOne().standing(38),
            "38: stands behind saddle 36–37 but carries nothing (a free-end saddle against a"
                + " bounded saddle, rested on 38)")
        .quiet("no third molar", Designs.lowerClassOne())
        .quiet("a doubtful one", Designs.lowerClassOne().standing(38).doubtful(38))
        .upholds(
            "38 is rested",
            Designs.lowerClassOne().standing(38).rest(38, RestSite.MESIAL_OCCLUSAL),
            "makes 38 an abutment, so that saddle 36–37 is bounded");
  }

  private static RuleCase workFollowsItsOrder() {
    return RuleCase.of(new WorkFollowsItsOrder())
        .fires(
            "a bar before any clasp",
            Designs.lowerClassOne().without(Clasp.class),
            "Lower denture: the connector came before the clasps (no clasps against saddles, rests,"
                + " clasps, then the connector)")
        .fires(
            "clasps first of all",
            Designs.lower().missing(36, 37).clasp(35, ClaspForm.I_BAR, Zone.MID_BUCCAL, End.DISTAL),
            "Lower denture: the clasps came before the saddles (no saddles, no rests against"
                + " saddles, rests, clasps, then the connector)")
        .quiet("saddles only", Designs.lower().missing(36).saddle(36, 36))
        .quiet("complete", Designs.lowerClassOne());
  }
}
