package saddlewright.rules;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import saddlewright.chart.Tilt;
import saddlewright.dentition.End;
import saddlewright.dentition.Face;
import saddlewright.dentition.Zone;
import saddlewright.design.Clasp;
import saddlewright.design.ClaspForm;
import saddlewright.design.ConnectorForm;
import saddlewright.design.GuidePlane;
import saddlewright.design.GuidePlate;
import saddlewright.design.MajorConnector;
import saddlewright.design.MinorConnector;
import saddlewright.design.Plating;
import saddlewright.design.ReciprocalArm;
import saddlewright.rules.bracing.ClaspUnitsEncloseMoreThanHalf;
import saddlewright.rules.bracing.EachSideIsBracedOnTwoTeeth;
import saddlewright.rules.bracing.EveryClaspIsReciprocated;
import saddlewright.rules.bracing.GuidePlanesAreTallEnough;
import saddlewright.rules.bracing.GuidePlatesStandOnUprightSurfaces;
import saddlewright.rules.bracing.GuideSurfacesComeInPairs;
import saddlewright.rules.bracing.PlatesUnderBarArmsEndAtTheSurveyLine;
import saddlewright.rules.bracing.ReciprocalArmsFaceATip;
import saddlewright.rules.bracing.ReciprocalArmsStayAboveTheSurveyLine;
import saddlewright.rules.bracing.ReciprocationLastsAsLongAsTheFlexing;
import saddlewright.rules.bracing.ShortCrownsAreReciprocatedByPlates;

/** Cases for the rules of bracing and reciprocation. */
final class BracingCases {
  private BracingCases() {}

  static List<RuleCase> all() {
    return Stream.of(reciprocation(), hold(), guidance()).flatMap(List::stream).toList();
  }

  private static List<RuleCase> reciprocation() {
    return List.of(
        RuleCase.of(new EveryClaspIsReciprocated())
            .fires(
                "the reciprocal arm was taken away",
                Designs.upperClassThree().without(ReciprocalArm.class, 16),
                "16: nothing opposes the clasp arm on 16 on the palatal face (0 reciprocal parts"
                    + " against 1 reciprocal part)")
            .fires(
                "an arm on the clasp's own face opposes nothing",
                Designs.upperClassThree()
                    .without(ReciprocalArm.class, 16)
                    .reciprocal(16, Face.BUCCAL, End.MESIAL),
                "16: nothing opposes the clasp arm on 16 on the palatal face (0 reciprocal parts"
                    + " against 1 reciprocal part)")
            .fires(
                "an RPI without its strut",
                Designs.lowerClassOne().without(MinorConnector.class, 35),
                "35: nothing opposes the I-bar on 35 on the lingual face (0 reciprocal parts"
                    + " against 1 reciprocal part)")
            .fires(
                "an RPI without its plate",
                Designs.lowerClassOne().without(GuidePlate.class, 35),
                "35: nothing opposes the I-bar on 35 on the lingual face (0 reciprocal parts"
                    + " against 1 reciprocal part)")
            .upholds("the arm", Designs.upperClassThree(), "opposes the clasp arm on 16")
            .upholds(
                "the clasp itself",
                Designs.lowerClassOne(),
                "is reciprocated by a guide plate with a minor connector")
            .quiet("reciprocal arms", Designs.upperClassThree())
            .quiet("RPI: plate and strut", Designs.lowerClassOne())
            .quiet(
                "plating on the other face",
                Designs.upperClassThree().clasp(13, ClaspForm.I_BAR, Zone.DISTOBUCCAL, End.DISTAL))
            .quiet(
                "a lingual plate over it",
                Designs.lowerClassOne()
                    .without(MinorConnector.class)
                    .without(MajorConnector.class)
                    .connector(ConnectorForm.LINGUAL_PLATE, 45, 35))
            .quiet(
                "a ring clasp holds its own tooth",
                Designs.upperClassThree()
                    .without(ReciprocalArm.class, 16)
                    .without(Clasp.class, 16)
                    .clasp(16, ClaspForm.RING, Zone.MESIOBUCCAL, End.MESIAL)),
        RuleCase.of(new ReciprocalArmsFaceATip())
            .fires(
                "on the face of the tip",
                Designs.upperClassThree()
                    .without(ReciprocalArm.class, 16)
                    .reciprocal(16, Face.BUCCAL, End.MESIAL),
                "16: reciprocal arm on the same face as the tip of the clasp arm on 16 (0 tips"
                    + " opposite against 1 tip opposite)")
            .fires(
                "on a tooth without a clasp",
                Designs.upperClassThree().without(Clasp.class, 16),
                Severity.CONSIDER,
                "16: reciprocal arm on a tooth without a clasp; it only covers the tooth (0 tips"
                    + " opposite against 1 tip opposite)")
            .upholds(
                "across from the tip",
                Designs.upperClassThree(),
                "lies straight across from the tip of the clasp arm on 16")
            .quiet("three-arm clasps", Designs.upperClassThree()),
        RuleCase.of(new ReciprocalArmsStayAboveTheSurveyLine())
            .fires(
                "a deep lingual undercut at mid-height",
                Designs.upperClassThree().undercut(16, Zone.MID_LINGUAL, 0.5, 3.5),
                "16: the survey line is high where the reciprocal arm runs; a rigid arm cannot"
                    + " enter the undercut of 0.5 mm (undercut 3.5 mm above the margin against at"
                    + " most # mm)")
            .asks(
                "its height is not charted",
                Designs.upperClassThree().undercut(16, Zone.MID_LINGUAL, 0.5),
                "height of the undercut, mid-palatal of 16")
            .upholds(
                "an undercut low on the crown",
                Designs.upperClassThree().undercut(16, Zone.MID_LINGUAL, 0.25, 1.5),
                "lies above the undercut of its face, which is low on the crown")
            .quiet("no lingual undercut", Designs.upperClassThree())
            .quiet(
                "looked for and not found",
                Designs.upperClassThree().undercut(16, Zone.MID_LINGUAL, 0, 3.5)),
        RuleCase.of(new ReciprocationLastsAsLongAsTheFlexing())
            .fires(
                "an arm without a guide plane",
                Designs.upperClassThree().undercut(16, Zone.DISTOBUCCAL, 0.25, 1.5),
                Severity.CONSIDER,
                "16: the reciprocal arm meets the tooth only when the denture is home; no guide"
                    + " plane is prepared under it (0 mm of guide plane against at least # mm)")
            .fires(
                "a guide plane lower than the way of the tip",
                Designs.upperClassThree()
                    .undercut(16, Zone.DISTOBUCCAL, 0.25, 0.2)
                    .guidePlane(16, GuidePlane.Surface.LINGUAL),
                "16: the guide plane under the reciprocal arm is lower than the way of the tip (# mm"
                    + " of guide plane against at least # mm)")
            .fires(
                "the plate of an RPI on a low tip",
                Designs.lowerClassOne().undercut(35, Zone.MID_BUCCAL, 0.25, 0.5),
                "35: guide plate on 35 lets go before the tip has passed the bulge (# mm of guide"
                    + " plane against at least # mm)")
            .asks(
                "height of the tip not charted",
                Designs.upperClassThree(),
                "height of the undercut, distobuccal of 16")
            .upholds(
                "a guide plane under the arm",
                Designs.upperClassThree()
                    .undercut(16, Zone.DISTOBUCCAL, 0.25, 2)
                    .guidePlane(16, GuidePlane.Surface.LINGUAL),
                "stays on its guide plane for # mm while the tip travels # mm")
            .upholds(
                "an RPI",
                Designs.lowerClassOne().undercut(35, Zone.MID_BUCCAL, 0.25, 2),
                "keeps 35 from turning for # mm while the tip travels # mm")
            .upholds(
                "a lingual plate",
                Designs.lowerClassOne()
                    .without(MajorConnector.class)
                    .connector(ConnectorForm.LINGUAL_PLATE, 45, 35),
                "steadies 35 all the way while the tip of its clasp passes the bulge")
            .quiet(
                "the survey found no undercut for the tips",
                Designs.upperClassThree()
                    .undercut(16, Zone.DISTOBUCCAL, 0, 0)
                    .undercut(26, Zone.DISTOBUCCAL, 0, 0))
            .quiet("nothing reciprocates at all", Designs.upperClassThree().without(Clasp.class)),
        RuleCase.of(new ShortCrownsAreReciprocatedByPlates())
            .fires(
                "a crown of 4 mm",
                Designs.upperClassThree().crownHeight(4, 16),
                "16: the crown is too short for a reciprocal arm (4 mm high against at least 5 mm)")
            .asks("crown not measured", Designs.upperClassThree(), "crown height at 16")
            .upholds(
                "a crown of 6 mm",
                Designs.upperClassThree().crownHeight(6, 16),
                "has room on a crown of 6 mm")
            .quiet("an RPI has no arm", Designs.lowerClassOne().crownHeight(4, 35)));
  }

  private static List<RuleCase> hold() {
    return List.of(
        RuleCase.of(new ClaspUnitsEncloseMoreThanHalf())
            .fires(
                "the reciprocal arm was taken away",
                Designs.upperClassThree().without(ReciprocalArm.class, 16),
                "16: the parts round it leave the tooth free to slip out of the clasp arm on 16 (#"
                    + " degrees enclosed against more than 180 degrees)")
            .fires(
                "an RPI without its plate",
                Designs.lowerClassOne().without(GuidePlate.class, 35),
                "35: the parts round it leave the tooth free to slip out of the I-bar on 35 (#"
                    + " degrees enclosed against more than 180 degrees)")
            .upholds(
                "three-arm clasp",
                Designs.upperClassThree(),
                "is part of a unit that holds its tooth over # degrees")
            .quiet("three points of an RPI", Designs.lowerClassOne())
            .quiet("two arms and a rest", Designs.upperClassThree()),
        RuleCase.of(new EachSideIsBracedOnTwoTeeth())
            .fires(
                "one braced tooth on the left, with the flange of a free-end saddle",
                Designs.lowerClassTwo(),
                Severity.CONSIDER,
                "Left side: too few teeth are braced against sideways push (1 braced tooth against"
                    + " 2 braced teeth)")
            .fires(
                "none on the side of a free-end saddle",
                Designs.lowerClassTwo()
                    .without(MinorConnector.class, 34)
                    .without(GuidePlate.class, 34),
                Severity.SHOULD,
                "Left side: too few teeth are braced against sideways push (0 braced teeth against"
                    + " 2 braced teeth)")
            .fires(
                "none on the right",
                Designs.upperClassThree()
                    .without(ReciprocalArm.class, 16)
                    .without(Plating.class, 13)
                    .without(GuidePlate.class, 13),
                "Right side: too few teeth are braced against sideways push (0 braced teeth against"
                    + " 2 braced teeth)")
            .quiet("plates and struts on both sides", Designs.lowerClassOne())
            .quiet("not begun", Designs.lower().missing(36).saddle(36, 36)));
  }

  private static List<RuleCase> guidance() {
    return List.of(
        RuleCase.of(new GuidePlanesAreTallEnough())
            .fires(
                "a crown of 5 mm beside a bounded saddle",
                Designs.upperClassThree().crownHeight(5, 13),
                "13: guide plate on 13: the crown is too short for a guide plane of full height (2"
                    + " mm against at least 3 mm)")
            .fires(
                "a crown of 3 mm at a free end",
                Designs.lowerClassOne().crownHeight(3, 35),
                "35: guide plate on 35: the crown is too short for a guide plane of full height"
                    + " (1.2 mm against at least 1.5 mm)")
            .asks("crown not measured", Designs.lowerClassOne(), "crown height at 35")
            .upholds(
                "a crown of 8 mm",
                Designs.lowerClassOne().crownHeight(8, 35),
                "leads the denture over 3.2 mm of its path")
            .quiet("a free end needs less", Designs.lowerClassOne().crownHeight(5, 35)),
        RuleCase.of(new GuidePlatesStandOnUprightSurfaces())
            .fires(
                "a molar that leans 18 degrees over its plate",
                Designs.upperClassThree().guidePlate(16, End.MESIAL).tilted(16, Tilt.MESIAL),
                "16: the tooth leans towards its guide plate, which must be blocked out there;"
                    + " grind or build up the surface first (18 degrees against at most 10"
                    + " degrees)")
            .asks(
                "tilt without degrees",
                Designs.upperClassThree()
                    .guidePlate(16, End.MESIAL)
                    .leaning(16, Tilt.MESIAL, Optional.empty()),
                "degrees of tilt at 16")
            .upholds(
                "8 degrees",
                Designs.upperClassThree()
                    .guidePlate(16, End.MESIAL)
                    .leaning(16, Tilt.MESIAL, Optional.of(8.0)),
                "slides on a surface that leans no more than the cast can be tilted")
            .quiet(
                "a plane cut into the leaning surface",
                Designs.upperClassThree()
                    .guidePlate(16, End.MESIAL)
                    .guidePlane(16, GuidePlane.Surface.MESIAL)
                    .tilted(16, Tilt.MESIAL))
            .quiet(
                "leaning away from the plate",
                Designs.upperClassThree().guidePlate(16, End.MESIAL).tilted(16, Tilt.DISTAL))
            .quiet("upright", Designs.upperClassThree()),
        RuleCase.of(new PlatesUnderBarArmsEndAtTheSurveyLine())
            .fires(
                "a lingual plate behind RPI units",
                Designs.lowerClassOne()
                    .without(MajorConnector.class)
                    .connector(ConnectorForm.LINGUAL_PLATE, 45, 35),
                "35: lingual plate covers it behind a bar arm; above the survey line it would act"
                    + " as a rest before the mesial one, below it food packs (no note against upper"
                    + " edge at the survey line noted)")
            .upholds(
                "noted",
                Designs.lowerClassOne()
                    .without(MajorConnector.class)
                    .connector(ConnectorForm.LINGUAL_PLATE, 45, 35)
                    .note("Plate ends at the survey line of 35 and 45"),
                "says where the plate on 35 ends")
            .quiet("a lingual bar", Designs.lowerClassOne()),
        RuleCase.of(new GuideSurfacesComeInPairs())
            .fires(
                "all guide plates taken away",
                Designs.lowerClassOne().without(GuidePlate.class),
                "Lower denture: nothing leads it along a single path of insertion (0 guided teeth"
                    + " against at least 2 guided teeth)")
            .fires(
                "one left",
                Designs.upperClassThree().without(GuidePlate.class, 13),
                "Upper denture: nothing leads it along a single path of insertion (1 guided tooth"
                    + " against at least 2 guided teeth)")
            .upholds(
                "a pair",
                Designs.lowerClassOne(),
                "is one of 2 surfaces that give the denture a single path")
            .quiet("a pair", Designs.lowerClassOne())
            .quiet("not begun", Designs.lower().missing(36).saddle(36, 36)));
  }
}
