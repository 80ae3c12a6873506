package saddlewright.prescription;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import saddlewright.casefile.Assessment;
import saddlewright.casefile.order.PreparationKind;
import saddlewright.chart.Condition;
import saddlewright.chart.ToothFindings;
import saddlewright.chart.ToothStatus;
import saddlewright.chart.Undercut;
import saddlewright.classification.EdentulousArea;
import saddlewright.dentition.Arch;
import saddlewright.dentition.End;
import saddlewright.dentition.Face;
import saddlewright.dentition.Notation;
import saddlewright.dentition.Tooth;
import saddlewright.dentition.ToothNames;
import saddlewright.design.Clasp;
import saddlewright.design.ClaspForm;
import saddlewright.design.Component;
import saddlewright.design.ComponentId;
import saddlewright.design.GuidePlane;
import saddlewright.design.GuidePlate;
import saddlewright.design.ReciprocalArm;
import saddlewright.design.Rest;
import saddlewright.rules.Quantity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;

/**
 * The mouth preparations that a design demands, in clinical order.
 *
 * <p>It follows from the components and the chart alone. What was surveyed and suffices asks for
 * nothing; a component on a tooth that does not stand asks for nothing either.
 */
public final class MouthPreparations {
  private static final Comparator<Preparation> CLINICAL_ORDER =
      Comparator.comparing(Preparation::kind)
          .thenComparing(Preparation::arch)
          .thenComparing(p -> p.teeth().get(0).place())
          .thenComparing(Preparation::surface)
          .thenComparing(Preparation::target);

  private final Situation situation;
  private final Notation notation;
  private final List<Preparation> out = new ArrayList<>();

  private MouthPreparations(Situation situation, Notation notation) {
    this.situation = situation;
    this.notation = notation;
  }

  /** Those of both arches; the order is by stage, then upper before lower, then along the arch. */
  public static List<Preparation> of(Assessment assessment, Notation notation) {
    List<Preparation> all = new ArrayList<>(of(assessment.upper(), notation));
    all.addAll(of(assessment.lower(), notation));
    all.sort(CLINICAL_ORDER);
    return List.copyOf(all);
  }

  /** Those of one arch. */
  public static List<Preparation> of(Situation situation, Notation notation) {
    MouthPreparations p = new MouthPreparations(situation, notation);
    p.extractions();
    p.caries();
    p.guidePlanes();
    p.reciprocalSurfaces();
    p.undercuts();
    p.seats();
    p.embrasures();
    p.finish();
    p.out.sort(CLINICAL_ORDER);
    return List.copyOf(p.out);
  }

  private void extractions() {
    for (Tooth t : Tooth.in(arch())) {
      if (situation.chart().tooth(t).status() == ToothStatus.TO_BE_EXTRACTED) {
        Optional<saddlewright.design.Saddle> saddle = situation.design().saddleAt(t);
        add(
            PreparationKind.EXTRACTION,
            t,
            "",
            saddle.isPresent()
                ? "extract when the denture is fitted: it carries the replacement"
                : "extract, and let the ridge heal before the master impression",
            saddle.stream().<Component>map(s -> s).toList(),
            saddle.isPresent() ? "immediate addition to the saddle" : "charted to be extracted",
            Source.commonPractice("order of treatment"));
      }
    }
  }

  private void caries() {
    for (Tooth t : Tooth.in(arch())) {
      ToothFindings f = situation.chart().tooth(t);
      if (f.condition().filter(c -> c == Condition.CARIOUS).isPresent()
          && situation.chart().stands(t)
          && situation.design().usesAsAbutment(t)) {
        add(
            PreparationKind.RESTORATION,
            t,
            "",
            "treat the caries; shape the restoration for the seat and planes below",
            List.of(),
            "charted as carious; carries part of the denture",
            Source.commonPractice("order of treatment"));
      }
    }
  }

  private void guidePlanes() {
    for (GuidePlate plate : standing(GuidePlate.class, GuidePlate::tooth)) {
      boolean free =
          plate
              .tooth()
              .neighbour(plate.end())
              .flatMap(situation.classification()::areaAt)
              .filter(EdentulousArea::freeEnd)
              .isPresent();
      add(
          PreparationKind.GUIDE_PLANE,
          plate.tooth(),
          ToothNames.end(plate.end()),
          SeatTargets.guidePlane(free),
          List.of(plate),
          "guide plate",
          SeatTargets.GUIDE_PLANE);
    }
    for (GuidePlane plane : standing(GuidePlane.class, GuidePlane::tooth)) {
      boolean lingual = plane.surface() == GuidePlane.Surface.LINGUAL;
      Optional<End> end =
          lingual
              ? Optional.empty()
              : Optional.of(plane.surface() == GuidePlane.Surface.MESIAL ? End.MESIAL : End.DISTAL);
      boolean plated =
          end.isPresent()
              && situation.design().stream(GuidePlate.class)
                  .anyMatch(p -> p.tooth() == plane.tooth() && p.end() == end.get());
      if (!plated) {
        add(
            PreparationKind.GUIDE_PLANE,
            plane.tooth(),
            end.map(ToothNames::end).orElse(ToothNames.face(plane.tooth(), Face.LINGUAL)),
            lingual
                ? "flat plane 2–4 mm high in the middle third, parallel to the path of insertion"
                : SeatTargets.guidePlane(false),
            List.of(plane),
            "guide plane",
            lingual ? SeatTargets.RECIPROCAL : SeatTargets.GUIDE_PLANE);
      }
    }
  }

  private void reciprocalSurfaces() {
    for (ReciprocalArm arm : standing(ReciprocalArm.class, ReciprocalArm::tooth)) {
      add(
          PreparationKind.SURVEY_LINE,
          arm.tooth(),
          ToothNames.face(arm.tooth(), arm.face()),
          "lower the survey line where it is high, so that the arm bears on a surface 2–4 mm high"
              + " in the middle third",
          List.of(arm),
          "reciprocal arm",
          SeatTargets.RECIPROCAL);
    }
  }

  private void undercuts() {
    for (Clasp clasp : standing(Clasp.class, Clasp::tooth)) {
      String zone = ToothNames.zone(clasp.tooth(), clasp.tip());
      Optional<Undercut> charted =
          Optional.ofNullable(situation.chart().tooth(clasp.tooth()).undercuts().get(clasp.tip()));
      Optional<Quantity> asked = WantedUndercut.of(clasp);
      double latitude = situation.profile().limit(Quantity.UNDERCUT_LATITUDE);
      Source source =
          asked
              .map(situation.profile()::source)
              .orElse(Source.commonPractice("survey before an arm is chosen"));
      if (charted.isEmpty() || charted.get().depth() <= 0) {
        String depth =
            asked.map(q -> Millimetres.fine(situation.profile().limit(q)) + " ").orElse("");
        add(
            PreparationKind.UNDERCUT,
            clasp.tooth(),
            zone,
            "survey; where there is none, add composite to make a " + depth + "undercut",
            List.of(clasp),
            "retentive tip, no undercut charted",
            source);
      } else if (asked.isPresent()) {
        double depth = charted.get().depth();
        double wanted = situation.profile().limit(asked.get());
        if (depth < wanted - latitude - 1e-9) {
          add(
              PreparationKind.UNDERCUT,
              clasp.tooth(),
              zone,
              "deepen from "
                  + Millimetres.fine(depth)
                  + " to "
                  + Millimetres.fine(wanted)
                  + " with bonded composite",
              List.of(clasp),
              "undercut too shallow for " + TradeTerms.of(clasp.material()),
              source);
        } else if (depth > wanted + latitude + 1e-9) {
          add(
              PreparationKind.SURVEY_LINE,
              clasp.tooth(),
              zone,
              "reduce the undercut from "
                  + Millimetres.fine(depth)
                  + " to "
                  + Millimetres.fine(wanted)
                  + " at the tip",
              List.of(clasp),
              "undercut too deep for " + TradeTerms.of(clasp.material()),
              source);
        }
      }
    }
  }

  private void seats() {
    for (Rest rest : standing(Rest.class, Rest::tooth)) {
      if (rest.seat() == Rest.Seat.UNPREPARED) {
        continue;
      }
      String target =
          rest.seat() == Rest.Seat.RESTORATION
              ? SeatTargets.seat(rest) + ", within the restoration"
              : SeatTargets.seat(rest);
      Double room = situation.chart().tooth(rest.tooth()).clearances().get(rest.site());
      double least = situation.profile().limit(Quantity.REST_CLEARANCE_LEAST);
      if (room != null && room < least) {
        target +=
            "; only "
                + Millimetres.of(room)
                + " of room charted, "
                + Millimetres.of(least)
                + " needed above the seat";
      }
      add(
          PreparationKind.REST_SEAT,
          rest.tooth(),
          ToothNames.site(rest.site()),
          target,
          List.of(rest),
          rest.indirectRetainer() ? "rest as indirect retainer" : "rest",
          SeatTargets.source(rest));
    }
  }

  private void embrasures() {
    for (Clasp clasp : standing(Clasp.class, Clasp::tooth)) {
      Optional<Tooth> beside = clasp.tooth().neighbour(clasp.origin());
      if (clasp.form() == ClaspForm.EMBRASURE
          && beside.filter(situation.chart()::stands).isPresent()) {
        List<Tooth> pair =
            java.util.stream.Stream.of(clasp.tooth(), beside.get())
                .sorted(Comparator.comparing(Tooth::place))
                .toList();
        boolean cleared =
            out.stream()
                .anyMatch(p -> p.teeth().equals(pair) && p.kind() == PreparationKind.REST_SEAT);
        if (!cleared) {
          out.add(
              new Preparation(
                  PreparationKind.REST_SEAT,
                  arch(),
                  pair,
                  "embrasure",
                  "clear a rounded channel 1.5 mm deep from buccal to "
                      + ToothNames.face(clasp.tooth(), Face.LINGUAL)
                      + ", keeping the contact",
                  List.of(clasp.id()),
                  "embrasure clasp",
                  SeatTargets.EMBRASURE));
        }
      }
    }
  }

  private void finish() {
    TreeSet<Tooth> cut = new TreeSet<>(Comparator.comparing(Tooth::place));
    for (Preparation p : out) {
      if (p.kind().compareTo(PreparationKind.GUIDE_PLANE) >= 0) {
        cut.addAll(p.teeth());
      }
    }
    if (!cut.isEmpty()) {
      out.add(
          new Preparation(
              PreparationKind.FINISH,
              arch(),
              List.copyOf(cut),
              "",
              "round and polish every cut surface, apply fluoride, protect any exposed dentine;"
                  + " check room and path on a study cast before the master impression",
              List.of(),
              "all prepared teeth",
              SeatTargets.FINISH));
    }
  }

  private void add(
      PreparationKind kind,
      Tooth tooth,
      String surface,
      String target,
      List<? extends Component> components,
      String reason,
      Source source) {
    List<ComponentId> ids = components.stream().map(Component::id).toList();
    out.add(new Preparation(kind, arch(), List.of(tooth), surface, target, ids, reason, source));
  }

  private <C extends Component> List<C> standing(
      Class<C> kind, java.util.function.Function<C, Tooth> tooth) {
    return situation.design().stream(kind)
        .filter(c -> situation.chart().stands(tooth.apply(c)))
        .toList();
  }

  private Arch arch() {
    return situation.arch();
  }
}
