package saddlewright.rules;

import java.util.List;
import saddlewright.chart.Condition;
import saddlewright.chart.Tilt;
import saddlewright.dentition.End;
import saddlewright.dentition.RestSite;
import saddlewright.dentition.Span;
import saddlewright.dentition.Zone;
import saddlewright.design.Clasp;
import saddlewright.design.ClaspForm;
import saddlewright.design.ComponentId;
import saddlewright.design.ConnectorForm;
import saddlewright.design.MajorConnector;
import saddlewright.design.Rest;
import saddlewright.design.Saddle;
import saddlewright.rules.support.AbutmentsCarryTheirShare;
import saddlewright.rules.support.BoundedSaddlesAreRestedAtBothEnds;
import saddlewright.rules.support.CaninesAreRestedBeforeIncisors;
import saddlewright.rules.support.ClassFourPalatesShareTheLoad;
import saddlewright.rules.support.ClassFourRestsReachFarBack;
import saddlewright.rules.support.DenturesHaveThreeRests;
import saddlewright.rules.support.EmbrasureRestsComeInPairs;
import saddlewright.rules.support.EmbrasureRestsHaveRoom;
import saddlewright.rules.support.FreeEndRestsLieAwayFromTheSaddle;
import saddlewright.rules.support.FreeEndSaddlesAreRested;
import saddlewright.rules.support.IncisalRestsStandInTheLowerArch;
import saddlewright.rules.support.LoneTeethAreRestedOnBothFaces;
import saddlewright.rules.support.LongBoundedSaddlesShareTheLoad;
import saddlewright.rules.support.LowerCanineSeatsAreBuiltUp;
import saddlewright.rules.support.LowerCastDenturesAreToothBorne;
import saddlewright.rules.support.MucosaBornePlatesCoverThePalate;
import saddlewright.rules.support.OcclusalRestsAreBroadEnough;
import saddlewright.rules.support.RestsAvoidAmalgam;
import saddlewright.rules.support.RestsSpreadOverATriangle;
import saddlewright.rules.support.RestsStandOnBothSides;
import saddlewright.rules.support.RingClaspsHaveTwoRests;
import saddlewright.rules.support.TiltedMolarsAreNotRestedMesiallyAlone;
import saddlewright.rules.support.TiltedTeethAreLoadedAlongTheirAxis;
import saddlewright.rules.support.ToothBorneDenturesStandOnFourRests;

/** Cases for the rules of support. */
final class SupportCases {
  private SupportCases() {}

  static List<RuleCase> all() {
    return List.of(
        RuleCase.of(new BoundedSaddlesAreRestedAtBothEnds())
            .fires(
                "no rest at the distal end",
                Designs.upperClassThree().without(Rest.class, 16),
                "Saddle 15–14: no rest on 16 beside it (1 of 2 ends rested against a rest facing it"
                    + " at each end)")
            .fires(
                "no rest at all",
                Designs.upperClassThree().without(Rest.class),
                "Saddle 15–14: no rest on 16 and 13 beside it (0 of 2 ends rested against a rest"
                    + " facing it at each end)")
            .fires(
                "the rest lies at the far end of the abutment",
                Designs.upperClassThree()
                    .without(Rest.class, 16)
                    .rest(16, RestSite.DISTAL_OCCLUSAL),
                Severity.SHOULD,
                "Saddle 15–14: the rest on 16 lies away from it (1 of 2 ends rested against a rest"
                    + " facing it at each end)")
            .quiet("a rest at each end", Designs.upperClassThree())
            .quiet(
                "a mesially tilted molar rested distally",
                Designs.upperClassThree()
                    .tilted(16, Tilt.MESIAL)
                    .without(Rest.class, 16)
                    .rest(16, RestSite.DISTAL_OCCLUSAL))
            .quiet(
                "no room, so the next tooth carries it",
                Designs.upperClassThree()
                    .room(16, RestSite.MESIAL_OCCLUSAL, 0.4)
                    .without(Rest.class, 16)
                    .rest(17, RestSite.MESIAL_OCCLUSAL))
            .quiet("a free-end saddle is another rule's", Designs.lowerClassOne())
            .upholds(
                "the distal end",
                Designs.upperClassThree(),
                "supports saddle 15–14 at its distal end")
            .upholds(
                "a front saddle",
                Designs.upperClassFour(),
                "supports saddle 12–22 at its right end"),
        RuleCase.of(new DenturesHaveThreeRests())
            .fires(
                "two rests",
                Designs.lowerClassOne().without(Rest.class, 33).without(Rest.class, 43),
                "Lower denture: few rests to stand on (2 rests against at least 3 rests)")
            .quiet("four rests", Designs.lowerClassOne())
            .quiet("nothing designed yet", Designs.lower().missing(36)),
        RuleCase.of(new EmbrasureRestsComeInPairs())
            .fires(
                "an embrasure clasp without the neighbour's rest",
                Designs.lowerClassTwo()
                    .rest(47, RestSite.MESIAL_OCCLUSAL)
                    .clasp(46, ClaspForm.EMBRASURE, Zone.MESIOBUCCAL, End.DISTAL)
                    .without(Rest.class, 47),
                "47: no rest beside the embrasure clasp on 46 (1 of 2 ridges rested against both"
                    + " rested)")
            .fires(
                "an embrasure rest alone",
                Designs.lowerClassTwo()
                    .rest(
                        45,
                        RestSite.DISTAL_OCCLUSAL,
                        Rest.Form.EMBRASURE,
                        Rest.Seat.PREPARED_ENAMEL)
                    .without(Rest.class, 46),
                "46: no rest beside the distal rest on 45 (1 of 2 ridges rested against both"
                    + " rested)")
            .quiet(
                "both ridges rested",
                Designs.lowerClassTwo()
                    .rest(47, RestSite.MESIAL_OCCLUSAL)
                    .clasp(46, ClaspForm.EMBRASURE, Zone.MESIOBUCCAL, End.DISTAL))
            .upholds(
                "the neighbour's rest",
                Designs.lowerClassTwo()
                    .rest(47, RestSite.MESIAL_OCCLUSAL)
                    .clasp(46, ClaspForm.EMBRASURE, Zone.MESIOBUCCAL, End.DISTAL),
                "keeps the metal from wedging 46 and 47"),
        RuleCase.of(new FreeEndRestsLieAwayFromTheSaddle())
            .fires(
                "distal rest on the terminal abutment",
                Designs.lowerClassOne().without(Rest.class, 35).rest(35, RestSite.DISTAL_OCCLUSAL),
                "35: the only rest on this abutment lies next to the free-end saddle 36–37 (distal"
                    + " rest against mesial rest)")
            .quiet("mesial rests", Designs.lowerClassOne())
            .quiet(
                "a canine's cingulum has no side",
                Designs.lower().missing(34, 35, 36, 37).saddle(34, 37).rest(33, RestSite.CINGULUM))
            .quiet(
                "no room mesially",
                Designs.lowerClassOne()
                    .room(35, RestSite.MESIAL_OCCLUSAL, 0.3)
                    .without(Rest.class, 35)
                    .rest(35, RestSite.DISTAL_OCCLUSAL))
            .quiet(
                "a wrought arm yields",
                Designs.lowerClassOne()
                    .without(Rest.class, 35)
                    .without(Clasp.class, 35)
                    .clasp(35, ClaspForm.COMBINATION, Zone.MESIOBUCCAL, End.DISTAL)
                    .rest(35, RestSite.DISTAL_OCCLUSAL))
            .upholds(
                "a mesial rest",
                Designs.lowerClassOne(),
                "lies away from the free-end saddle 36–37, so that its abutment is not pulled back")
            .upholds(
                "a distal rest with a wrought arm",
                Designs.lowerClassOne()
                    .without(Rest.class, 35)
                    .without(Clasp.class, 35)
                    .clasp(35, ClaspForm.COMBINATION, Zone.MESIOBUCCAL, End.DISTAL)
                    .rest(35, RestSite.DISTAL_OCCLUSAL),
                "lies beside the saddle because the wrought arm yields"),
        RuleCase.of(new FreeEndSaddlesAreRested())
            .fires(
                "no rest on the last tooth",
                Designs.lowerClassOne().without(Rest.class, 35),
                "Saddle 36–37: no rest on its terminal abutment 35 (0 rests against 1 rest)")
            .fires(
                "a third molar that serves nothing does not bound the saddle",
                Designs.lower()
                    .standing(38)
                    .missing(36, 37)
                    .saddle(36, 37)
                    .rest(45, RestSite.MESIAL_OCCLUSAL),
                "Saddle 36–37: no rest on its terminal abutment 35 (0 rests against 1 rest)")
            .quiet("rests on both", Designs.lowerClassOne())
            .quiet("bounded saddles are another rule's", Designs.upperClassThree())
            .upholds("rests", Designs.lowerClassOne(), "carries the front end of saddle 36–37"),
        RuleCase.of(new RestsStandOnBothSides())
            .fires(
                "rests on the left only",
                Designs.lowerClassOne().without(Rest.class, 45).without(Rest.class, 43),
                "Lower denture: no rest on the patient's right (rests on 1 side against rests on"
                    + " both sides)")
            .quiet("rests on both sides", Designs.lowerClassOne())
            .quiet(
                "no tooth stands on that side",
                Designs.lower()
                    .missing(41, 42, 43, 44, 45, 46, 47)
                    .saddle(47, 41)
                    .rest(33, RestSite.CINGULUM)),
        RuleCase.of(new RingClaspsHaveTwoRests())
            .fires(
                "one rest under a ring clasp",
                Designs.upperClassThree()
                    .without(Clasp.class, 16)
                    .clasp(16, ClaspForm.RING, Zone.MESIOBUCCAL, End.MESIAL),
                "16: ring clasp without a rest at each end of the tooth (1 rest against 2 rests)")
            .quiet(
                "two rests",
                Designs.upperClassThree()
                    .without(Clasp.class, 16)
                    .clasp(16, ClaspForm.RING, Zone.MESIOBUCCAL, End.MESIAL)
                    .rest(16, RestSite.DISTAL_OCCLUSAL))
            .quiet("no ring clasp", Designs.upperClassThree())
            .upholds(
                "two rests",
                Designs.upperClassThree()
                    .without(Clasp.class, 16)
                    .clasp(16, ClaspForm.RING, Zone.MESIOBUCCAL, End.MESIAL)
                    .rest(16, RestSite.DISTAL_OCCLUSAL),
                "steadies the long arm of the ring clasp"),
        RuleCase.of(new TiltedMolarsAreNotRestedMesiallyAlone())
            .fires(
                "mesial rest on a mesially tilted molar",
                Designs.upperClassThree().tilted(16, Tilt.MESIAL),
                "16: tilted mesially and rested on its mesial end alone (mesial rest against distal"
                    + " rest or rests at both ends)")
            .quiet(
                "rested at both ends",
                Designs.upperClassThree()
                    .tilted(16, Tilt.MESIAL)
                    .rest(16, RestSite.DISTAL_OCCLUSAL))
            .fires(
                "an extended mesial rest, in British teaching",
                extended().tilted(16, Tilt.MESIAL),
                "16: tilted mesially and rested on its mesial end alone (mesial rest against distal"
                    + " rest or rests at both ends)")
            .quiet(
                "an extended mesial rest, in North American teaching (board examination notes)",
                extended().tilted(16, Tilt.MESIAL).judgedBy(Profile.NORTH_AMERICAN_TEACHING))
            .quiet("tilted distally", Designs.upperClassThree().tilted(16, Tilt.DISTAL))
            .upholds(
                "rested at both ends",
                Designs.upperClassThree()
                    .tilted(16, Tilt.MESIAL)
                    .rest(16, RestSite.DISTAL_OCCLUSAL),
                "loads the mesially tilted 16 along its axis"),
        abutmentsCarryTheirShare(),
        caninesAreRestedBeforeIncisors(),
        classFourPalatesShareTheLoad(),
        classFourRestsReachFarBack(),
        embrasureRestsHaveRoom(),
        incisalRestsStandInTheLowerArch(),
        loneTeethAreRestedOnBothFaces(),
        longBoundedSaddlesShareTheLoad(),
        lowerCanineSeatsAreBuiltUp(),
        lowerCastDenturesAreToothBorne(),
        mucosaBornePlatesCoverThePalate(),
        occlusalRestsAreBroadEnough(),
        restsAvoidAmalgam(),
        restsSpreadOverATriangle(),
        tiltedTeethAreLoadedAlongTheirAxis(),
        toothBorneDenturesStandOnFourRests());
  }

  private static Designs extended() {
    return Designs.upperClassThree()
        .without(Rest.class, 16)
        .rest(16, RestSite.MESIAL_OCCLUSAL, Rest.Form.EXTENDED, Rest.Seat.PREPARED_ENAMEL);
  }

  private static RuleCase abutmentsCarryTheirShare() {
    return RuleCase.of(new AbutmentsCarryTheirShare())
        .fires(
            "four teeth on one canine",
            Designs.upperClassThree()
                .without(Rest.class, 16)
                .without(Rest.class, 26)
                .without(Rest.class, 23),
            "Upper denture: more teeth to carry than the rested teeth are good for (load of 4 teeth"
                + " against at most 1.5 teeth)")
        .fires(
            "loose abutments count nothing",
            Designs.upperClassThree().mobile(16, 2).mobile(26, 2),
            "Upper denture: more teeth to carry than the rested teeth are good for (load of 4 teeth"
                + " against at most 3 teeth)")
        .quiet("four rested teeth", Designs.upperClassThree())
        .quiet("the ridge takes half of a free end", Designs.lowerClassOne())
        .quiet("nothing rested yet", Designs.upperClassThree().without(Rest.class));
  }

  private static RuleCase caninesAreRestedBeforeIncisors() {
    return RuleCase.of(new CaninesAreRestedBeforeIncisors())
        .fires(
            "a rest on 42 beside a bare canine",
            Designs.lowerClassOne().without(Rest.class, 43).rest(42, RestSite.CINGULUM),
            "42: an incisor is rested while 43 stands free beside it (cingulum rest on 42 against"
                + " cingulum rest on 43)")
        .quiet(
            "a plate over the incisors",
            Designs.lowerClassOne()
                .without(Rest.class, 43)
                .rest(42, RestSite.CINGULUM)
                .plating(43, 33))
        .quiet("the canine is rested too", Designs.lowerClassOne().rest(42, RestSite.CINGULUM))
        .quiet(
            "the incisor bounds a saddle",
            Designs.upper().missing(11).saddle(11, 11).rest(12, RestSite.CINGULUM))
        .upholds("canines", Designs.lowerClassOne(), "uses the strongest root of the front");
  }

  private static RuleCase classFourPalatesShareTheLoad() {
    return RuleCase.of(new ClassFourPalatesShareTheLoad())
        .fires(
            "a strap",
            Designs.upperClassFour()
                .without(MajorConnector.class)
                .connector(ConnectorForm.PALATAL_STRAP, 17, 27),
            "Palatal strap: leaves the front of the palate out, under 4 teeth (a palatal strap"
                + " against a ring, plate or horseshoe)")
        .quiet("Class III", Designs.upperClassThree())
        .quiet(
            "two teeth",
            Designs.upper()
                .missing(11, 21)
                .saddle(11, 21)
                .connector(ConnectorForm.PALATAL_STRAP, 17, 27))
        .upholds(
            "a ring",
            Designs.upperClassFour(),
            "lets the palate share the load of the long front saddle");
  }

  private static RuleCase classFourRestsReachFarBack() {
    Designs front =
        Designs.upperClassFour()
            .without(Rest.class, 17)
            .without(Rest.class, 16)
            .rest(14, RestSite.MESIAL_OCCLUSAL);
    return RuleCase.of(new ClassFourRestsReachFarBack())
        .fires(
            "no rest behind 14",
            front,
            "17: no rest far back on the patient's right (hindmost mesial rest on 14 against a rest"
                + " on a molar, or on the last tooth)")
        .quiet("Class III", Designs.upperClassThree())
        .quiet("no rest yet", Designs.upperClassFour().without(Rest.class))
        .upholds(
            "rests on 17 and 27",
            Designs.upperClassFour(),
            "steadies the front saddle from far back");
  }

  private static RuleCase embrasureRestsHaveRoom() {
    return RuleCase.of(new EmbrasureRestsHaveRoom())
        .fires(
            "1.2 mm",
            embrasure().room(45, RestSite.DISTAL_OCCLUSAL, 1.2),
            "45: little room for metal through the embrasure at the distal rest on 45 (1.2 mm"
                + " against at least 1.5 mm)")
        .quiet("no embrasure rest", Designs.lowerClassTwo())
        .asks("not measured", embrasure(), "room for a rest, distal occlusal of 45")
        .upholds(
            "2 mm",
            embrasure().room(45, RestSite.DISTAL_OCCLUSAL, 2),
            "has 2 mm for metal through the embrasure");
  }

  private static Designs embrasure() {
    return Designs.lowerClassTwo()
        .rest(45, RestSite.DISTAL_OCCLUSAL, Rest.Form.EMBRASURE, Rest.Seat.PREPARED_ENAMEL);
  }

  private static RuleCase incisalRestsStandInTheLowerArch() {
    return RuleCase.of(new IncisalRestsStandInTheLowerArch())
        .fires(
            "on an upper canine",
            Designs.upperClassThree().without(Rest.class, 13).rest(13, RestSite.DISTAL_INCISAL),
            "13: an incisal rest on an upper tooth shows and lies in the bite (incisal rest against"
                + " cingulum rest)")
        .quiet("cingulum rests", Designs.upperClassThree())
        .upholds(
            "on a lower canine",
            Designs.lowerClassOne().without(Rest.class, 33).rest(33, RestSite.MESIAL_INCISAL),
            "is incisal on a lower tooth, where the lip hides it");
  }

  private static RuleCase loneTeethAreRestedOnBothFaces() {
    Designs pier = Designs.upper().missing(14, 16).saddle(14, 14).saddle(16, 16);
    return RuleCase.of(new LoneTeethAreRestedOnBothFaces())
        .fires(
            "a premolar between two saddles, rested mesially",
            Designs.upper()
                .missing(14, 16)
                .saddle(14, 14)
                .saddle(16, 16)
                .rest(15, RestSite.MESIAL_OCCLUSAL),
            "15: stands alone between two saddles without a distal rest (1 rest against a rest at"
                + " each end)")
        .fires(
            "before a free end, rested distally",
            Designs.upper()
                .missing(14, 16, 17)
                .saddle(14, 14)
                .saddle(17, 16)
                .rest(15, RestSite.DISTAL_OCCLUSAL),
            "15: stands alone between two saddles without a mesial rest (1 rest against a mesial"
                + " rest)")
        .quiet("nothing rested yet", pier)
        .quiet("no such tooth", Designs.upperClassThree())
        .upholds(
            "before a free end, rested mesially",
            Designs.upper()
                .missing(14, 16, 17)
                .saddle(14, 14)
                .saddle(17, 16)
                .rest(15, RestSite.MESIAL_OCCLUSAL),
            "keeps the lone 15 upright between two saddles");
  }

  private static RuleCase longBoundedSaddlesShareTheLoad() {
    return RuleCase.of(new LongBoundedSaddlesShareTheLoad())
        .fires(
            "four teeth, the ridge takes a share",
            long4(),
            Severity.CONSIDER,
            "Saddle 34–37: too long for its two abutments; the ridge takes a share, another rest"
                + " would help (4 teeth against at most 3 teeth on two abutments)")
        .fires(
            "four teeth on metal",
            long4()
                .without(Saddle.class, 35)
                .add(
                    Saddle.of(ComponentId.of("metal"), Span.of(34, 37))
                        .withBase(Saddle.Base.METAL)),
            "Saddle 34–37: too long for its two abutments alone (4 teeth against at most 3 teeth on"
                + " two abutments)")
        .quiet("two teeth", Designs.upperClassThree())
        .quiet("a free end", Designs.lower().missing(34, 35, 36, 37).saddle(34, 37))
        .upholds(
            "a rest on the next tooth",
            Designs.lower()
                .missing(33, 34, 35, 36)
                .saddle(33, 36)
                .rest(32, RestSite.CINGULUM)
                .rest(31, RestSite.CINGULUM)
                .rest(37, RestSite.MESIAL_OCCLUSAL),
            "helps to carry the long saddle 33–36");
  }

  private static Designs long4() {
    return Designs.lower()
        .missing(34, 35, 36, 37)
        .standing(38)
        .saddle(34, 37)
        .rest(38, RestSite.MESIAL_OCCLUSAL)
        .rest(33, RestSite.CINGULUM);
  }

  private static RuleCase lowerCanineSeatsAreBuiltUp() {
    return RuleCase.of(new LowerCanineSeatsAreBuiltUp())
        .fires(
            "cut in enamel",
            Designs.lowerClassOne()
                .without(Rest.class, 33)
                .rest(33, RestSite.CINGULUM, Rest.Form.STANDARD, Rest.Seat.PREPARED_ENAMEL),
            "33: a seat cut in the thin enamel of a lower canine (a seat in enamel against a ledge"
                + " of composite)")
        .quiet("upper canines", Designs.upperClassThree())
        .upholds(
            "composite",
            Designs.lowerClassOne()
                .without(Rest.class, 33)
                .rest(33, RestSite.CINGULUM, Rest.Form.STANDARD, Rest.Seat.COMPOSITE),
            "sits on a ledge that is built up, since lower canine enamel is too thin to cut");
  }

  private static RuleCase lowerCastDenturesAreToothBorne() {
    return RuleCase.of(new LowerCastDenturesAreToothBorne())
        .fires(
            "a bar without a rest",
            Designs.lowerClassOne().without(Rest.class),
            "Lower denture: a framework that lies on mucosa alone (0 of 2 saddles rested against"
                + " rests on the abutments)")
        .quiet("rested", Designs.lowerClassOne())
        .quiet("no connector yet", Designs.lower().missing(36).saddle(36, 36));
  }

  private static RuleCase mucosaBornePlatesCoverThePalate() {
    return RuleCase.of(new MucosaBornePlatesCoverThePalate())
        .fires(
            "a strap without a rest",
            Designs.upperClassThree().without(Rest.class),
            "Palatal strap: carries a denture without rests on part of the palate (a palatal strap"
                + " against a palatal plate, or rests)")
        .quiet("rested", Designs.upperClassThree())
        .upholds(
            "a plate",
            Designs.upperClassThree()
                .without(Rest.class)
                .without(MajorConnector.class)
                .connector(ConnectorForm.PALATAL_PLATE, 17, 27),
            "spreads the whole load over the palate");
  }

  private static RuleCase occlusalRestsAreBroadEnough() {
    return RuleCase.of(new OcclusalRestsAreBroadEnough())
        .fires(
            "a small molar",
            Designs.upperClassThree().crownDepth(16, 6.6),
            "16: mesial rest on 16 is narrow at the marginal ridge (2.2 mm against at least"
                + " 2.5 mm)")
        .quiet("cingulum rests", Designs.lower().rest(33, RestSite.CINGULUM))
        .upholds("a usual molar", Designs.upperClassThree(), "is # mm broad at the ridge");
  }

  private static RuleCase restsAvoidAmalgam() {
    return RuleCase.of(new RestsAvoidAmalgam())
        .fires(
            "a seat in amalgam",
            restored().condition(16, Condition.AMALGAM),
            "16: the seat of the mesial rest on 16 lies in amalgam (amalgam against enamel,"
                + " composite, an inlay or a crown)")
        .quiet("seats in enamel", Designs.upperClassThree().condition(16, Condition.AMALGAM))
        .asks("restoration not charted", restored(), "condition at 16")
        .upholds(
            "a crown",
            restored().condition(16, Condition.CROWNED),
            "has its seat in a restoration that bears load");
  }

  private static Designs restored() {
    return Designs.upperClassThree()
        .without(Rest.class, 16)
        .rest(16, RestSite.MESIAL_OCCLUSAL, Rest.Form.STANDARD, Rest.Seat.RESTORATION);
  }

  private static RuleCase restsSpreadOverATriangle() {
    return RuleCase.of(new RestsSpreadOverATriangle())
        .fires(
            "three in a row",
            Designs.lowerClassOne()
                .without(Rest.class, 33)
                .without(Rest.class, 43)
                .rest(35, RestSite.DISTAL_OCCLUSAL),
            "Lower denture: its rests lie nearly on one line (# mm off the line against at least"
                + " 5 mm)")
        .fires(
            "only the canines are left",
            Designs.lower()
                .missing(34, 35, 36, 37, 44, 45, 46, 47, 31, 32, 41, 42)
                .saddle(34, 37)
                .saddle(47, 44)
                .saddle(42, 32)
                .rest(33, RestSite.CINGULUM)
                .rest(43, RestSite.CINGULUM)
                .rest(43, RestSite.DISTAL_INCISAL),
            Severity.CONSIDER,
            "Lower denture: its rests lie nearly on one line, and no sound tooth stands off it (#"
                + " mm off the line against at least 5 mm)")
        .quiet("canines well in front", Designs.lowerClassOne())
        .quiet(
            "two rests are another rule's",
            Designs.lowerClassOne().without(Rest.class, 33).without(Rest.class, 43));
  }

  private static RuleCase tiltedTeethAreLoadedAlongTheirAxis() {
    return RuleCase.of(new TiltedTeethAreLoadedAlongTheirAxis())
        .fires(
            "a premolar that leans back, rested distally",
            Designs.lower()
                .missing(36)
                .tilted(35, Tilt.DISTAL)
                .saddle(36, 36)
                .rest(35, RestSite.DISTAL_OCCLUSAL),
            "35: leans distally and is rested on that end alone (distal rest against mesial rest or"
                + " both)")
        .fires(
            "a premolar that leans forward, rested mesially",
            Designs.lower()
                .missing(36)
                .tilted(35, Tilt.MESIAL)
                .saddle(36, 36)
                .rest(35, RestSite.MESIAL_OCCLUSAL),
            "35: leans mesially and is rested on that end alone (mesial rest against distal rest or"
                + " both)")
        .quiet(
            "the last tooth before a free end",
            Designs.lowerClassOne()
                .tilted(35, Tilt.DISTAL)
                .without(Rest.class, 35)
                .rest(35, RestSite.DISTAL_OCCLUSAL))
        .quiet(
            "a mesially tilted molar has its own rule",
            Designs.upperClassThree().tilted(16, Tilt.MESIAL))
        .upholds(
            "rested at the high end",
            Designs.lowerClassOne().tilted(35, Tilt.DISTAL),
            "loads the distally tilted 35 along its axis");
  }

  private static RuleCase toothBorneDenturesStandOnFourRests() {
    return RuleCase.of(new ToothBorneDenturesStandOnFourRests())
        .fires(
            "three rests",
            Designs.upperClassThree().without(Rest.class, 23),
            "Upper denture: tooth-borne, and free to tip over the line between two rests (3 rests"
                + " against 4 rests)")
        .fires(
            "three rests, in North American teaching (teaching cards)",
            Designs.upperClassThree()
                .without(Rest.class, 23)
                .judgedBy(Profile.NORTH_AMERICAN_TEACHING),
            Severity.SHOULD,
            "Upper denture: tooth-borne, and free to tip over the line between two rests (3 rests"
                + " against 4 rests)")
        .quiet("four rests", Designs.upperClassThree())
        .quiet("a free-end denture", Designs.lowerClassOne());
  }
}
