package saddlewright.rules;

import java.util.List;
import saddlewright.design.ConnectorForm;
import saddlewright.design.MinorConnector;
import saddlewright.design.ReciprocalArm;
import saddlewright.design.Relief;
import saddlewright.design.Rest;
import saddlewright.layout.Measure;
import saddlewright.rules.hygiene.ArmsReplacePlatingWhereTheyWillDo;
import saddlewright.rules.hygiene.CoveredMarginsHaveAReason;
import saddlewright.rules.hygiene.DesignsAreOpen;
import saddlewright.rules.hygiene.GingivalMarginsAreLeftFree;
import saddlewright.rules.hygiene.MinorConnectorsCarrySomething;
import saddlewright.rules.hygiene.MinorConnectorsCrossSquarely;
import saddlewright.rules.hygiene.MinorConnectorsStandApart;
import saddlewright.rules.hygiene.MinorConnectorsStandInEmbrasures;
import saddlewright.rules.hygiene.ReliefDoesNotExcuseCover;

/** Cases for the rules of minor connectors and gingival hygiene. */
final class HygieneCases {
  private HygieneCases() {}

  static List<RuleCase> all() {
    return List.of(
        RuleCase.of(new MinorConnectorsStandApart())
            .fires(
                "struts in the next embrasure",
                Designs.lowerClassOne()
                    .without(MinorConnector.class, 33)
                    .strut(34, MinorConnector.Place.MESIAL_EMBRASURE),
                "Minor connector at 35: narrow window to the minor connector at 34 (# mm"
                    + " against at least 5 mm)")
            .quiet("one strut on each side", Designs.lowerClassTwo())
            .quiet(
                "the window is closed by plating",
                Designs.lowerClassOne()
                    .without(MinorConnector.class, 33)
                    .strut(34, MinorConnector.Place.MESIAL_EMBRASURE)
                    .plating(34, 35))
            .upholds(
                "one strut on each side",
                Designs.lowerClassTwo(),
                "leaves a window of # mm to the next"),
        RuleCase.of(new MinorConnectorsCrossSquarely())
            .fires(
                "a strut that runs along the gum",
                Designs.lowerClassTwo()
                    .measuring(MinorConnector.class, 44, Measure.CROSSING_DEGREES, 50),
                "Minor connector at 44: crosses the gingival margin at a slant (50° against at least 70°)")
            .quiet("struts as they are laid out", Designs.lowerClassTwo())
            .upholds(
                "struts as they are laid out",
                Designs.lowerClassTwo(),
                "crosses the gingival margin squarely"),
        RuleCase.of(new MinorConnectorsStandInEmbrasures())
            .fires(
                "up the face of a premolar",
                Designs.lowerClassTwo()
                    .without(MinorConnector.class, 44)
                    .strut(44, MinorConnector.Place.LINGUAL_FACE),
                "Minor connector at 44: runs up the middle of the lingual face (on the face against in an embrasure)")
            .quiet("on a canine that is the way to the cingulum", Designs.lowerClassOne())
            .upholds(
                "in an embrasure",
                Designs.lowerClassTwo(),
                "runs in the embrasure, out of the tongue's way"),
        RuleCase.of(new MinorConnectorsCarrySomething())
            .fires(
                "its rest was taken away",
                Designs.lowerClassOne().without(Rest.class, 33),
                "Minor connector at 33: carries nothing (no rest or arm against a rest, an arm or a bar)")
            .quiet("each carries a rest", Designs.lowerClassOne())
            .upholds(
                "each carries a rest", Designs.lowerClassOne(), "carries the cingulum rest on 33")
            .upholds(
                "a strut of a continuous bar",
                Designs.lowerClassOne()
                    .without(Rest.class, 33)
                    .swapped(ConnectorForm.CONTINUOUS_BAR),
                "steadies the bar on the teeth"),
        RuleCase.of(new GingivalMarginsAreLeftFree())
            .fires(
                "a plate in a deep sulcus",
                Designs.lowerClassOne().swapped(ConnectorForm.LINGUAL_PLATE),
                "Lower denture: covers many gingival margins (# % covered against at most 40 %)")
            .fires(
                "a plate in a shallow sulcus",
                Designs.lowerClassOne().lingualDepth(5, 31).swapped(ConnectorForm.LINGUAL_PLATE),
                Severity.CONSIDER,
                "Lower denture: covers many gingival margins (# % covered against at most 40 %)")
            .quiet("a bar", Designs.lowerClassOne())
            .quiet(
                "a continuous bar, whose upper limb lies on the teeth",
                Designs.lowerClassOne().swapped(ConnectorForm.CONTINUOUS_BAR))
            .upholds(
                "a bar",
                Designs.lowerClassOne(),
                "leaves # % of the lingual gingival margins free"),
        RuleCase.of(new CoveredMarginsHaveAReason())
            .fires(
                "incisors plated for nothing",
                Designs.lowerClassOne().plating(33, 32),
                "Plating 32–33: covers gums of teeth that gain nothing from it: 32 (1 such tooth against none)")
            .fires(
                "an incisor plated for nothing",
                Designs.lowerClassOne().plating(32, 32),
                "Plating 32: covers gums of teeth that gain nothing from it: 32 (1 such tooth against none)")
            .quiet("a loose incisor", Designs.lowerClassOne().plating(33, 32).mobile(32, 1))
            .upholds(
                "a rested canine",
                Designs.upperClassThree(),
                "covers only margins of teeth that gain from it"),
        RuleCase.of(new ArmsReplacePlatingWhereTheyWillDo())
            .fires(
                "a plated molar with a clasp",
                Designs.lowerClassTwo().without(ReciprocalArm.class, 46).plating(46, 46),
                "Plating 46: covers the gum of 46 where an arm would do (# % of its margin against a reciprocal arm)")
            .quiet("a plated canine", Designs.upperClassThree())
            .upholds("an arm", Designs.lowerClassTwo(), "braces the tooth and leaves its gum free"),
        RuleCase.of(new DesignsAreOpen())
            .fires(
                "eight struts",
                Designs.lowerClassOne()
                    .strut(34, MinorConnector.Place.DISTAL_EMBRASURE)
                    .strut(44, MinorConnector.Place.DISTAL_EMBRASURE)
                    .strut(31, MinorConnector.Place.LINGUAL_FACE)
                    .strut(41, MinorConnector.Place.LINGUAL_FACE),
                "Lower denture: many struts across the gums (8 minor connectors against at most 6)")
            .quiet("four struts", Designs.lowerClassOne())
            .upholds(
                "four struts",
                Designs.lowerClassOne(),
                "crosses the gums with 4 minor connectors only"),
        RuleCase.of(new ReliefDoesNotExcuseCover())
            .fires(
                "a relieved plate",
                Designs.lowerClassOne()
                    .swapped(ConnectorForm.LINGUAL_PLATE)
                    .relief(Relief.Area.GINGIVAL_MARGINS, 0.3),
                "Relief: does not spare the margins that are covered (# % covered against at most 40 %)")
            .quiet("no such relief", Designs.lowerClassOne().swapped(ConnectorForm.LINGUAL_PLATE))
            .upholds(
                "relief where struts cross",
                Designs.lowerClassOne().relief(Relief.Area.GINGIVAL_MARGINS, 0.3),
                "keeps struts from pressing on the gums"));
  }
}
