package saddlewright.rules;

import java.util.List;
import java.util.Optional;
import saddlewright.chart.SoftTissues;
import saddlewright.dentition.End;
import saddlewright.dentition.RestSite;
import saddlewright.dentition.Side;
import saddlewright.dentition.Span;
import saddlewright.design.ComponentId;
import saddlewright.design.FinishLine;
import saddlewright.design.GuidePlane;
import saddlewright.design.GuidePlate;
import saddlewright.design.Saddle;
import saddlewright.rules.saddles.AcrylicSaddlesHaveMesh;
import saddlewright.rules.saddles.DoubtfulTeethCanBeAdded;
import saddlewright.rules.saddles.FlangesStayOutOfUndercuts;
import saddlewright.rules.saddles.FreeEndBasesAreAcrylic;
import saddlewright.rules.saddles.FreeEndBasesAreFullyExtended;
import saddlewright.rules.saddles.FreeEndMeshesHaveATissueStop;
import saddlewright.rules.saddles.FreeEndMeshesRunFarEnough;
import saddlewright.rules.saddles.FrontFlangesSuitTheRidge;
import saddlewright.rules.saddles.LongFreeEndsCarryFewerTeeth;
import saddlewright.rules.saddles.LowFrontSaddlesTakeBackings;
import saddlewright.rules.saddles.LowerSaddlesAreFinishedInAcrylicLingually;
import saddlewright.rules.saddles.MeshAndAcrylicHaveHeight;
import saddlewright.rules.saddles.MeshesEndAtFinishLines;
import saddlewright.rules.saddles.MetalBasesSuitShortSpans;
import saddlewright.rules.saddles.RecentRidgesTakeAcrylicBases;
import saddlewright.rules.saddles.SaddlesMeetGuideSurfaces;

/** Cases for the rules of saddles. */
final class SaddleCases {
  private SaddleCases() {}

  static List<RuleCase> all() {
    return List.of(
        acrylicSaddlesHaveMesh(),
        doubtfulTeethCanBeAdded(),
        flangesStayOutOfUndercuts(),
        freeEndBasesAreAcrylic(),
        freeEndBasesAreFullyExtended(),
        freeEndMeshesHaveATissueStop(),
        freeEndMeshesRunFarEnough(),
        frontFlangesSuitTheRidge(),
        longFreeEndsCarryFewerTeeth(),
        lowFrontSaddlesTakeBackings(),
        lowerSaddlesAreFinishedInAcrylicLingually(),
        meshAndAcrylicHaveHeight(),
        meshesEndAtFinishLines(),
        metalBasesSuitShortSpans(),
        recentRidgesTakeAcrylicBases(),
        saddlesMeetGuideSurfaces());
  }

  private static RuleCase acrylicSaddlesHaveMesh() {
    return RuleCase.of(new AcrylicSaddlesHaveMesh())
        .fires(
            "no mesh",
            Designs.lowerClassOne(),
            "Saddle 36–37: nothing holds its acrylic to the framework (no open metalwork against a"
                + " lattice, mesh or posts)")
        .quiet("a lattice in each", Designs.lowerClassOne().mesh(36, 37).mesh(47, 46))
        .quiet("no connector yet", Designs.lower().missing(36, 37).saddle(36, 37))
        .quiet(
            "each tooth has a backing",
            Designs.upperClassFour().backing(12).backing(11).backing(21).backing(22))
        .upholds(
            "a lattice", Designs.lowerClassOne().mesh(36, 37), "holds the acrylic of saddle 36–37");
  }

  private static RuleCase doubtfulTeethCanBeAdded() {
    return RuleCase.of(new DoubtfulTeethCanBeAdded())
        .fires(
            "a doubtful premolar beside a lingual bar",
            Designs.lowerClassTwo().doubtful(44),
            "44: of doubtful outlook, with nothing beside it to take its successor (no metal or"
                + " saddle beside it against plating or a saddle beside it)")
        .quiet("all of good outlook", Designs.lowerClassTwo())
        .upholds(
            "beside a saddle",
            Designs.lowerClassTwo().doubtful(34),
            "lets 34 be added when it is lost")
        .upholds(
            "plated",
            Designs.lowerClassTwo().doubtful(44).plating(44, 44),
            "lets 44 be added when it is lost");
  }

  private static RuleCase flangesStayOutOfUndercuts() {
    return RuleCase.of(new FlangesStayOutOfUndercuts())
        .fires(
            "2 mm of undercut under a full flange",
            Designs.upperClassFour().tissueUndercut(2, 11),
            "Saddle 12–22: its flange reaches into a tissue undercut (2 mm deep against at most"
                + " 1 mm)")
        .quiet("half a millimetre", Designs.upperClassFour().tissueUndercut(0.5, 11))
        .quiet("gum-fitted, no undercut charted", upperFour(Saddle.Flange.GUM_FITTED))
        .asks("not charted", Designs.upperClassFour(), "tissue undercut at 12–22")
        .upholds(
            "a part flange",
            upperFour(Saddle.Flange.PART).tissueUndercut(2, 11),
            "ends short of the tissue undercut");
  }

  private static RuleCase freeEndBasesAreAcrylic() {
    return RuleCase.of(new FreeEndBasesAreAcrylic())
        .fires(
            "a metal base",
            lowerOne(Saddle.Base.METAL, Saddle.Flange.FULL, Saddle.Finish.ACRYLIC),
            "Saddle 36–37: a free-end base that cannot be relined (a metal fitting surface against"
                + " acrylic on open metalwork)")
        .quiet(
            "metal where mesh has no room",
            lowerOne(Saddle.Base.METAL, Saddle.Flange.FULL, Saddle.Finish.ACRYLIC)
                .saddleSpace(2, 36, 37))
        .quiet("bounded saddles", Designs.upperClassThree())
        .upholds("acrylic", Designs.lowerClassOne(), "can be relined as the ridge shrinks");
  }

  private static RuleCase freeEndBasesAreFullyExtended() {
    return RuleCase.of(new FreeEndBasesAreFullyExtended())
        .fires(
            "no flange",
            lowerOne(Saddle.Base.ACRYLIC_ON_MESH, Saddle.Flange.GUM_FITTED, Saddle.Finish.ACRYLIC),
            "Saddle 36–37: a free-end base that stops short of the sulcus (no flange against a full"
                + " flange)")
        .fires(
            "a part flange",
            lowerOne(Saddle.Base.ACRYLIC_ON_MESH, Saddle.Flange.PART, Saddle.Finish.ACRYLIC),
            Severity.SHOULD,
            "Saddle 36–37: a free-end base that stops short of the sulcus (a part flange against a"
                + " full flange)")
        .quiet(
            "a part flange above an undercut",
            lowerOne(Saddle.Base.ACRYLIC_ON_MESH, Saddle.Flange.PART, Saddle.Finish.ACRYLIC)
                .tissueUndercut(2, 36))
        .quiet("a gum-fitted front saddle", upperFour(Saddle.Flange.GUM_FITTED))
        .upholds(
            "full flanges",
            Designs.lowerClassOne(),
            "covers # mm of ridge back to the retromolar pad and reaches the depth of the sulcus");
  }

  private static RuleCase freeEndMeshesHaveATissueStop() {
    return RuleCase.of(new FreeEndMeshesHaveATissueStop())
        .fires(
            "a mesh without a stop",
            Designs.lowerClassOne().mesh(36, 37),
            "Saddle 36–37: its mesh hangs free over the ridge (no tissue stop against 1 tissue"
                + " stop)")
        .fires(
            "the same on the right",
            Designs.lowerClassOne().mesh(47, 46),
            "Saddle 47–46: its mesh hangs free over the ridge (no tissue stop against 1 tissue"
                + " stop)")
        .quiet("no mesh yet", Designs.lowerClassOne())
        .quiet("a bounded saddle", Designs.lower().missing(35).saddle(35, 35).mesh(35, 35))
        .upholds(
            "a stop",
            Designs.lowerClassOne().mesh(36, 37).stop(37),
            "holds the mesh off the ridge while acrylic is packed");
  }

  private static RuleCase freeEndMeshesRunFarEnough() {
    return RuleCase.of(new FreeEndMeshesRunFarEnough())
        .fires(
            "a mesh under the first molar only",
            Designs.lowerClassTwo().mesh(35, 35),
            "Mesh 35: ends too early under the free-end saddle 35–37 (# mm against at least # mm)")
        .fires(
            "an upper mesh short of the tuberosity",
            Designs.upper().missing(16, 17).saddle(16, 17).mesh(16, 16),
            "Mesh 16: ends too early under the free-end saddle 17–16 (# mm against at least # mm)")
        .quiet("bounded", Designs.upperClassThree().mesh(15, 14))
        .quiet("no mesh yet", Designs.lowerClassTwo())
        .upholds(
            "a lower mesh",
            Designs.lowerClassTwo().mesh(35, 37),
            "runs over # mm of the # mm under its saddle")
        .upholds(
            "an upper mesh",
            Designs.upper().missing(16, 17).saddle(16, 17).mesh(16, 17),
            "runs over # mm of the # mm under its saddle");
  }

  private static RuleCase frontFlangesSuitTheRidge() {
    return RuleCase.of(new FrontFlangesSuitTheRidge())
        .fires(
            "gum-fitted on a resorbed ridge",
            ridges(upperFour(Saddle.Flange.GUM_FITTED), SoftTissues.RidgeState.RESORBED),
            "Saddle 12–22: its front teeth are set on a ridge that has sunk (no flange against a"
                + " flange)")
        .quiet("a full flange", Designs.upperClassFour())
        .quiet("an immediate saddle", upperFour(Saddle.Flange.GUM_FITTED).toBeExtracted(11))
        .quiet("no front teeth", Designs.upperClassThree())
        .asks(
            "state of the ridge not charted",
            upperFour(Saddle.Flange.GUM_FITTED),
            "state of the ridge, upper right")
        .upholds(
            "gum-fitted on a full ridge",
            ridges(upperFour(Saddle.Flange.GUM_FITTED), SoftTissues.RidgeState.WELL_FORMED),
            "lies on a full ridge and needs no flange")
        .upholds(
            "a flange where bone was lost",
            ridges(Designs.upperClassFour(), SoftTissues.RidgeState.RESORBED),
            "fills out the lip where bone was lost");
  }

  private static RuleCase longFreeEndsCarryFewerTeeth() {
    return RuleCase.of(new LongFreeEndsCarryFewerTeeth())
        .fires(
            "four teeth behind the canine",
            Designs.lower().missing(34, 35, 36, 37).saddle(34, 37),
            "Saddle 34–37: a long row of teeth behind its only abutment (4 teeth against at most"
                + " 3 teeth)")
        .fires(
            "an artificial third molar",
            Designs.lower().missing(36, 37, 38).saddle(36, 38),
            "Saddle 36–38: carries an artificial third molar on the rise of the ridge (last tooth"
                + " 38 against no third molar)")
        .quiet("bounded", Designs.upperClassThree())
        .upholds(
            "two molars",
            Designs.lowerClassOne(),
            "carries no more than 2 teeth behind its abutment, which keeps the lever short");
  }

  private static RuleCase lowFrontSaddlesTakeBackings() {
    return RuleCase.of(new LowFrontSaddlesTakeBackings())
        .fires(
            "2 mm under the incisors",
            Designs.upperClassFour().saddleSpace(2, 12, 11, 21, 22).mesh(12, 22),
            "Saddle 12–22: too low for mesh at 12, 11, 21 and 22, and no metal backs the teeth"
                + " (2 mm against at least 3 mm, or backings)")
        .quiet("6 mm", Designs.upperClassFour().saddleSpace(6, 12, 11, 21, 22))
        .quiet("no front teeth", Designs.upperClassThree())
        .asks("not charted", Designs.upperClassFour(), "space for the saddle at 12–22")
        .upholds(
            "a backing",
            Designs.upperClassFour().saddleSpace(6, 12, 21, 22).saddleSpace(2, 11).backing(11),
            "carries a tooth for which mesh has no room");
  }

  private static RuleCase lowerSaddlesAreFinishedInAcrylicLingually() {
    return RuleCase.of(new LowerSaddlesAreFinishedInAcrylicLingually())
        .fires(
            "metal lingually",
            lowerOne(Saddle.Base.ACRYLIC_ON_MESH, Saddle.Flange.FULL, Saddle.Finish.METAL),
            "Saddle 36–37: the tongue meets metal (a metal lingual finish against acrylic)")
        .quiet(
            "no room for acrylic",
            lowerOne(Saddle.Base.METAL, Saddle.Flange.FULL, Saddle.Finish.METAL)
                .saddleSpace(2, 36, 37))
        .quiet("an upper saddle", Designs.upperClassThree())
        .upholds(
            "acrylic",
            Designs.lowerClassOne(),
            "is finished in acrylic where the tongue lies, so it can be eased");
  }

  private static RuleCase meshAndAcrylicHaveHeight() {
    return RuleCase.of(new MeshAndAcrylicHaveHeight())
        .fires(
            "2.5 mm",
            Designs.lowerClassOne().saddleSpace(6, 36, 46, 47).saddleSpace(2.5, 37),
            "Saddle 36–37: too low for mesh, acrylic and tooth at 37 (2.5 mm against at least"
                + " 3 mm)")
        .quiet(
            "metal needs less",
            lowerOne(Saddle.Base.METAL, Saddle.Flange.FULL, Saddle.Finish.ACRYLIC)
                .saddleSpace(6, 46, 47))
        .asks("not charted", Designs.lowerClassOne(), "space for the saddle at 36, 37")
        .upholds(
            "6 mm",
            Designs.lowerClassOne().saddleSpace(6, 36, 37, 46, 47),
            "has 6 mm for mesh, acrylic and tooth");
  }

  private static RuleCase meshesEndAtFinishLines() {
    return RuleCase.of(new MeshesEndAtFinishLines())
        .fires(
            "no line",
            Designs.lowerClassOne().mesh(36, 37),
            "Saddle 36–37: its acrylic thins out over polished metal (no finish line against a"
                + " finish line outside and inside)")
        .fires(
            "outside only",
            Designs.lowerClassOne().mesh(36, 37).finishLine(36, 37, FinishLine.Level.EXTERNAL),
            Severity.CONSIDER,
            "Saddle 36–37: its acrylic has a finish line on one face only (outside only against"
                + " outside and inside)")
        .quiet("no mesh yet", Designs.lowerClassOne())
        .upholds(
            "both",
            Designs.lowerClassOne().mesh(36, 37).finishLine(36, 37, FinishLine.Level.BOTH),
            "gives the acrylic of saddle 36–37 a butt joint against the metal");
  }

  private static RuleCase metalBasesSuitShortSpans() {
    return RuleCase.of(new MetalBasesSuitShortSpans())
        .fires(
            "four teeth on metal",
            Designs.lower()
                .missing(34, 35, 36, 37)
                .standing(38)
                .add(metal(34, 37))
                .rest(38, RestSite.MESIAL_OCCLUSAL),
            "Saddle 34–37: a metal base on a long span (4 teeth against at most 3 teeth)")
        .quiet("acrylic", Designs.upperClassThree())
        .upholds(
            "two teeth on metal",
            Designs.upper().missing(14, 15).add(metal(15, 14)),
            "is short enough for its abutments to carry, so it needs no relining")
        .upholds(
            "no height",
            Designs.upper().missing(14, 15).saddleSpace(2, 14).add(metal(15, 14)),
            "takes metal where there is no height for mesh and acrylic");
  }

  private static RuleCase recentRidgesTakeAcrylicBases() {
    return RuleCase.of(new RecentRidgesTakeAcrylicBases())
        .fires(
            "metal on a healing ridge",
            ridges(
                Designs.upper().missing(14, 15).add(metal(15, 14)),
                SoftTissues.RidgeState.RECENTLY_HEALED),
            "Saddle 15–14: metal over a ridge that is still healing (a metal fitting surface"
                + " against acrylic on open metalwork)")
        .fires(
            "metal where a tooth is still to come out",
            Designs.upper().missing(14).toBeExtracted(15).add(metal(15, 14)),
            "Saddle 15–14: metal over a ridge that is still healing (a metal fitting surface"
                + " against acrylic on open metalwork)")
        .quiet(
            "metal on a settled ridge",
            ridges(
                Designs.upper().missing(14, 15).add(metal(15, 14)),
                SoftTissues.RidgeState.WELL_FORMED))
        .quiet("acrylic", Designs.upperClassThree())
        .asks(
            "metal, ridge not charted",
            Designs.upper().missing(14, 15).add(metal(15, 14)),
            "state of the ridge, upper right")
        .upholds(
            "acrylic on a healing ridge",
            ridges(Designs.upperClassThree(), SoftTissues.RidgeState.RECENTLY_HEALED),
            "can be relined while the ridge under it heals");
  }

  private static RuleCase saddlesMeetGuideSurfaces() {
    return RuleCase.of(new SaddlesMeetGuideSurfaces())
        .fires(
            "one end without",
            Designs.upperClassThree(),
            "Saddle 15–14: no guide surface on 16 beside it (1 of 2 ends against a guide plate or"
                + " guide plane at each)")
        .fires(
            "a free end without",
            Designs.lowerClassOne().without(GuidePlate.class, 35),
            "Saddle 36–37: no guide surface on 35 beside it (0 of 1 end against a guide plate or"
                + " guide plane at each)")
        .quiet(
            "one prepared, one plated",
            Designs.upperClassThree()
                .guidePlane(16, GuidePlane.Surface.MESIAL)
                .guidePlate(26, End.MESIAL))
        .quiet("nothing but saddles yet", Designs.lower().missing(36).saddle(36, 36))
        .upholds("a guide plate", Designs.lowerClassOne(), "meets saddle 36–37 on a guide surface");
  }

  private static Designs lowerOne(Saddle.Base base, Saddle.Flange flange, Saddle.Finish finish) {
    return Designs.lowerClassOne()
        .without(Saddle.class, 36)
        .add(new Saddle(ComponentId.of("other"), Span.of(36, 37), base, flange, finish));
  }

  private static Designs upperFour(Saddle.Flange flange) {
    return Designs.upperClassFour()
        .without(Saddle.class, 11)
        .add(Saddle.of(ComponentId.of("front"), Span.of(12, 22)).withFlange(flange));
  }

  private static Saddle metal(int from, int to) {
    return Saddle.of(ComponentId.of("metal"), Span.of(from, to)).withBase(Saddle.Base.METAL);
  }

  private static Designs ridges(Designs d, SoftTissues.RidgeState state) {
    return d.tissues(
        t -> t.withRidge(Side.RIGHT, Optional.of(state)).withRidge(Side.LEFT, Optional.of(state)));
  }
}
