package saddlewright.prescription;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import saddlewright.casefile.order.PreparationKind;
import saddlewright.chart.ArchChart;
import saddlewright.chart.Condition;
import saddlewright.chart.ToothFindings;
import saddlewright.chart.ToothStatus;
import saddlewright.chart.Undercut;
import saddlewright.dentition.Arch;
import saddlewright.dentition.CrownSize;
import saddlewright.dentition.End;
import saddlewright.dentition.Face;
import saddlewright.dentition.RestSite;
import saddlewright.dentition.Tooth;
import saddlewright.dentition.ToothNames;
import saddlewright.dentition.Zone;
import saddlewright.design.Clasp;
import saddlewright.design.ClaspForm;
import saddlewright.design.Component;
import saddlewright.design.GuidePlane;
import saddlewright.design.GuidePlate;
import saddlewright.design.Plating;
import saddlewright.design.ReciprocalArm;
import saddlewright.design.Rest;
import saddlewright.rules.AreaSupport;
import saddlewright.rules.Literature;
import saddlewright.rules.Quantity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;
import saddlewright.rules.support.RestsAvoidAmalgam;

/** The surfaces of standing teeth that the components of one arch ask to be altered. */
final class PreparedSurfaces {
  /** Depth from which an undercut keeps a rigid part out, mm: half of what springs a cast tip. */
  private static final double DEEP = 0.125;

  private final Situation situation;
  private final ArchChart chart;
  private final Gathered gathered;
  private final SeatTargets targets;

  PreparedSurfaces(Situation situation, Gathered gathered) {
    this.situation = situation;
    this.chart = situation.chart();
    this.gathered = gathered;
    this.targets = new SeatTargets(situation.profile());
  }

  void gather() {
    guidePlates();
    guidePlanes();
    reciprocalArms();
    reciprocalPlates();
    for (Clasp clasp : standing(Clasp.class, Clasp::tooth)) {
      survey(clasp);
      approach(clasp);
      embrasure(clasp);
    }
    seats();
  }

  private void guidePlates() {
    for (GuidePlate plate : standing(GuidePlate.class, GuidePlate::tooth)) {
      boolean free = facesFreeEnd(plate.tooth(), plate.end());
      gathered
          .draft(PreparationKind.GUIDE_PLANE, Demand.GUIDE, plate.tooth())
          .at(plate.end())
          .of("guide plate", plate)
          .add(inCrown(plate.tooth()) + targets.guidePlane(free), targets.guidePlaneSource(free));
    }
  }

  private void guidePlanes() {
    for (GuidePlane plane : standing(GuidePlane.class, GuidePlane::tooth)) {
      Gathered.Draft d = gathered.draft(PreparationKind.GUIDE_PLANE, Demand.GUIDE, plane.tooth());
      String how = inCrown(plane.tooth());
      if (plane.surface() == GuidePlane.Surface.LINGUAL) {
        d.at(Face.LINGUAL)
            .of("guide plane", plane)
            .add(
                how + "flat plane " + targets.reciprocal() + ", parallel to the path of insertion",
                targets.reciprocalSource());
      } else {
        End end = plane.surface() == GuidePlane.Surface.MESIAL ? End.MESIAL : End.DISTAL;
        boolean free = facesFreeEnd(plane.tooth(), end);
        d.at(end)
            .of("guide plane", plane)
            .add(how + targets.guidePlane(free), targets.guidePlaneSource(free));
      }
    }
  }

  private boolean facesFreeEnd(Tooth tooth, End end) {
    return AreaSupport.all(situation).stream()
            .filter(AreaSupport::isFreeEnd)
            .flatMap(a -> a.ends().stream())
            .anyMatch(e -> e.abutment() == tooth && e.facing() == end)
        || tooth
            .neighbour(end)
            .flatMap(situation.classification()::areaAt)
            .filter(saddlewright.classification.EdentulousArea::freeEnd)
            .isPresent();
  }

  private void reciprocalArms() {
    for (ReciprocalArm arm : standing(ReciprocalArm.class, ReciprocalArm::tooth)) {
      reciprocal(arm, arm.tooth(), arm.face(), "reciprocal arm", "the arm");
    }
  }

  /** Plating that holds a tooth against its clasp where no arm does. */
  private void reciprocalPlates() {
    for (Plating plating : situation.design().all(Plating.class)) {
      for (Tooth t : plating.teeth()) {
        boolean clasped =
            situation.design().stream(Clasp.class)
                .anyMatch(c -> c.tooth() == t && c.tip().face() == Face.BUCCAL);
        boolean armed =
            situation.design().stream(ReciprocalArm.class).anyMatch(a -> a.tooth() == t);
        if (clasped && !armed && chart.stands(t)) {
          reciprocal(plating, t, Face.LINGUAL, "reciprocal plate", "the plate");
        }
      }
    }
  }

  private void reciprocal(Component part, Tooth tooth, Face face, String name, String it) {
    boolean high = false;
    double third = crownHeight(tooth) / 3;
    for (Zone z : Zone.values()) {
      Undercut u = chart.tooth(tooth).undercuts().get(z);
      high |=
          z.face() == face
              && u != null
              && u.depth() >= DEEP
              && u.height().filter(h -> h > third).isPresent();
    }
    gathered
        .draft(PreparationKind.SURVEY_LINE, Demand.RECIPROCATION, tooth)
        .at(face)
        .of(high ? name + ", survey line charted as high" : name, part)
        .add(
            inCrown(tooth)
                + (high ? "lower the survey line, " : "lower the survey line where it is high, ")
                + "so that "
                + it
                + " bears on a surface parallel to the path, "
                + targets.reciprocal(),
            targets.reciprocalSource());
  }

  private double crownHeight(Tooth tooth) {
    return chart.tooth(tooth).crownHeight().orElse(CrownSize.mean(tooth).height());
  }

  /** The undercut that a tip springs into. */
  private void survey(Clasp clasp) {
    Tooth tooth = clasp.tooth();
    Optional<Undercut> charted =
        Optional.ofNullable(chart.tooth(tooth).undercuts().get(clasp.tip()));
    Optional<Quantity> asked = WantedUndercut.of(clasp);
    double latitude = situation.profile().limit(Quantity.UNDERCUT_LATITUDE);
    Source source =
        asked
            .map(situation.profile()::source)
            .orElse(Source.commonPractice("survey before an arm is chosen"));
    if (charted.isEmpty() || charted.get().depth() <= 0) {
      String depth =
          asked.map(q -> Millimetres.fine(situation.profile().limit(q)) + " ").orElse("");
      undercut(clasp, "retentive tip, no undercut charted")
          .add(
              isInCrown(tooth)
                  ? "build a " + depth + "undercut into the crown"
                  : "survey; where there is none, add composite to make a " + depth + "undercut",
              source);
      return;
    }
    tooHigh(clasp, charted.get());
    if (asked.isEmpty()) {
      return;
    }
    double depth = charted.get().depth();
    double wanted = situation.profile().limit(asked.get());
    if (depth < wanted - latitude - 1e-9) {
      undercut(clasp, "undercut too shallow for " + TradeTerms.of(clasp.material()))
          .add(
              isInCrown(tooth)
                  ? "build a " + Millimetres.fine(wanted) + " undercut into the crown"
                  : "deepen from "
                      + Millimetres.fine(depth)
                      + " to "
                      + Millimetres.fine(wanted)
                      + " with bonded composite",
              source);
    } else if (depth > wanted + latitude + 1e-9) {
      gathered
          .draft(PreparationKind.SURVEY_LINE, Demand.RETENTION, tooth)
          .at(clasp.tip())
          .of("undercut too deep for " + TradeTerms.of(clasp.material()), clasp)
          .warn(
              "Another path of insertion, or blocking out beyond the tip, may spare the enamel.",
              Source.read(Literature.ABUTMENT_PREPARATION))
          .add(
              inCrown(tooth)
                  + "reduce the undercut from "
                  + Millimetres.fine(depth)
                  + " to "
                  + Millimetres.fine(wanted)
                  + " at the tip",
              source);
    }
  }

  private Gathered.Draft undercut(Clasp clasp, String why) {
    Gathered.Draft d =
        gathered
            .draft(PreparationKind.UNDERCUT, Demand.RETENTION, clasp.tooth())
            .at(clasp.tip())
            .of(why, clasp);
    return isInCrown(clasp.tooth())
        ? d
        : d.warn(
            "Instead of composite, a dimple in the enamel or a crown makes an undercut too; so may"
                + " another path of insertion.",
            Source.read(Literature.SCHOOL_PROTOCOL + "; " + Literature.DASTEVSKI));
  }

  /** A tip from above belongs into the gingival third. */
  private void tooHigh(Clasp clasp, Undercut charted) {
    double third = crownHeight(clasp.tooth()) / 3;
    if (clasp.form().isOcclusallyApproaching()
        && charted.height().filter(h -> h > third).isPresent()) {
      gathered
          .draft(PreparationKind.SURVEY_LINE, Demand.RETENTION, clasp.tooth())
          .at(clasp.tip())
          .of("survey line too high for the arm", clasp)
          .add(
              inCrown(clasp.tooth())
                  + "lower the survey line so that the tip lies in the gingival third, at most "
                  + Millimetres.of(third)
                  + " above the gingival margin (charted at "
                  + Millimetres.of(charted.height().get())
                  + ")",
              Source.fromMemory(
                  "tip in the gingival third, shoulder in the middle third; that contours are"
                      + " lowered in enamel was read in "
                      + Literature.ABUTMENT_PREPARATION));
    }
  }

  /** The ridge that an arm from below crosses. */
  private void approach(Clasp clasp) {
    Double depth = chart.softTissues().tissueUndercut().get(clasp.tooth());
    double most = situation.profile().limit(Quantity.TISSUE_UNDERCUT);
    if (clasp.form().isGingivallyApproaching() && depth != null && depth > most) {
      gathered
          .draft(PreparationKind.TISSUES, Demand.APPROACH, clasp.tooth())
          .at(PreparationKey.RIDGE)
          .of("tissue undercut under the arm", clasp)
          .add(
              "tissue undercut of "
                  + Millimetres.of(depth)
                  + ", at most "
                  + Millimetres.of(most)
                  + " wanted: change the path of insertion, or have it blocked out and the arm"
                  + " kept clear",
              Source.read(Literature.ABUTMENT_PREPARATION));
    }
  }

  private void embrasure(Clasp clasp) {
    Optional<Tooth> beside = clasp.tooth().neighbour(clasp.origin());
    if (clasp.form() == ClaspForm.EMBRASURE && beside.filter(chart::stands).isPresent()) {
      gathered
          .draft(PreparationKind.REST_SEAT, Demand.EMBRASURE, clasp.tooth(), beside.get())
          .at(PreparationKey.BETWEEN)
          .of("embrasure clasp", clasp)
          .add(
              "a seat on each of the two marginal ridges, and between them a rounded channel "
                  + targets.mm(Quantity.EMBRASURE_ROOM)
                  + " deep from buccal to "
                  + ToothNames.face(clasp.tooth(), Face.LINGUAL)
                  + ", keeping the contact",
              situation.profile().source(Quantity.EMBRASURE_ROOM));
    }
  }

  private void seats() {
    for (Rest rest : standing(Rest.class, Rest::tooth)) {
      if (rest.seat() == Rest.Seat.UNPREPARED) {
        continue;
      }
      Gathered.Draft d =
          gathered
              .draft(PreparationKind.REST_SEAT, Demand.REST, rest.tooth())
              .at(rest.site())
              .of(rest.indirectRetainer() ? "rest as indirect retainer" : "rest", rest);
      if (rest.site().isOcclusal()) {
        d.warn(
            "Occlusal seats are rounded triangles, half the distance between cusps wide, without a"
                + " sharp edge; the floor meets the minor connector at less than 90°.",
            Source.read(Literature.REST_SEATS + "; " + Literature.STRATTON));
      }
      enamel(d, rest);
      filling(d, rest);
      d.add(targets.seat(rest, isInCrown(rest.tooth())) + room(d, rest), targets.source(rest));
    }
  }

  private String room(Gathered.Draft d, Rest rest) {
    Double charted = chart.tooth(rest.tooth()).clearances().get(rest.site());
    double least = situation.profile().limit(Quantity.REST_CLEARANCE_LEAST);
    Source source = situation.profile().source(Quantity.REST_CLEARANCE_LEAST);
    if (charted == null) {
      if (rest.site().isOcclusal()) {
        d.warn(
            "Check on softened wax that "
                + targets.mm(Quantity.REST_CLEARANCE_LEAST)
                + " of metal finds room; do not gain it from the buccal cusps of lower teeth.",
            source);
      }
      return "";
    }
    if (charted >= least) {
      return "";
    }
    d.warn("Do not gain room by grinding the buccal cusps of lower teeth.", source);
    return "; only "
        + Millimetres.of(charted)
        + " of room charted, "
        + Millimetres.of(least)
        + " needed above the seat";
  }

  private void enamel(Gathered.Draft d, Rest rest) {
    Tooth tooth = rest.tooth();
    if (rest.seat() != Rest.Seat.PREPARED_ENAMEL || isInCrown(tooth)) {
      return;
    }
    if (tooth.isPremolar() && rest.site().isOcclusal()) {
      d.warn(
          "Premolar enamel is about 0.5–0.6 mm thick here, and more than half of the seats in the"
              + " study reached dentine: 1.5 mm usually cannot be had within enamel, 1.0 mm may"
              + " be.",
          Source.read(Literature.PREMOLAR_SEATS));
    }
    if (rest.site() == RestSite.CINGULUM && tooth.arch() == Arch.LOWER) {
      d.warn(
          "The lingual enamel of lower front teeth is thin and is easily cut through; a bonded"
              + " composite seat"
              + (tooth.isCanine() ? ", a seat on the marginal ridge" : "")
              + " or a restoration does without.",
          Source.read(
              Literature.BDJ_PREPARATION
                  + "; "
                  + Literature.MAZURAT
                  + "; "
                  + Literature.REST_MANUAL));
    } else if (rest.site() == RestSite.CINGULUM) {
      d.warn(
          (tooth.isCanine()
                  ? "An upper canine often has cingulum enough for a modest cut; where it is flat, "
                  : "Where the cingulum is flat, ")
              + "a bonded composite seat"
              + (tooth.isCanine() ? ", a seat on the marginal ridge" : "")
              + " or a restoration serves instead.",
          Source.read(Literature.BDJ_PREPARATION + "; " + Literature.REST_MANUAL));
    }
    if (rest.site().isIncisal()) {
      d.warn(
          "The metal shows; a bonded composite seat on the lingual surface is the alternative.",
          Source.read(Literature.REST_MANUAL + "; that it shows is from memory"));
    }
  }

  private void filling(Gathered.Draft d, Rest rest) {
    Optional<Condition> condition = chart.tooth(rest.tooth()).condition();
    if (condition.equals(Optional.of(Condition.AMALGAM))) {
      d.warn(
          "The tooth has an amalgam; a seat lies in sound enamel, composite, an inlay or a crown"
              + " (one text accepts amalgam).",
          new RestsAvoidAmalgam().stated().source());
    } else if (condition.equals(Optional.of(Condition.RESTORED))
        && rest.seat() == Rest.Seat.PREPARED_ENAMEL) {
      d.warn(
          "The tooth is charted as restored: keep the seat wholly in enamel or wholly within the"
              + " restoration.",
          Source.commonPractice("no seat across the edge of a restoration"));
    }
  }

  /** Whether surfaces of the tooth are built into a crown rather than cut. */
  private boolean isInCrown(Tooth tooth) {
    ToothFindings f = chart.tooth(tooth);
    return f.condition().equals(Optional.of(Condition.CROWNED))
        || f.status() == ToothStatus.IMPLANT;
  }

  private String inCrown(Tooth tooth) {
    return isInCrown(tooth) ? "build into the crown: " : "";
  }

  private <C extends Component> List<C> standing(Class<C> kind, Function<C, Tooth> tooth) {
    return situation.design().stream(kind).filter(c -> chart.stands(tooth.apply(c))).toList();
  }
}
