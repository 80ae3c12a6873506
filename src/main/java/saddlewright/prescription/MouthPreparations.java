package saddlewright.prescription;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import saddlewright.casefile.Assessment;
import saddlewright.casefile.order.PreparationKind;
import saddlewright.chart.Condition;
import saddlewright.chart.SoftTissues;
import saddlewright.chart.ToothFindings;
import saddlewright.chart.ToothStatus;
import saddlewright.dentition.Arch;
import saddlewright.dentition.Side;
import saddlewright.dentition.Tooth;
import saddlewright.design.Component;
import saddlewright.design.Saddle;
import saddlewright.rules.AreaSupport;
import saddlewright.rules.Literature;
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
          .thenComparing(p -> p.key().demand());

  private static final Source ORDER = Source.commonPractice("order of treatment");

  private final Situation situation;
  private final Gathered gathered;

  private MouthPreparations(Situation situation) {
    this.situation = situation;
    this.gathered = new Gathered(situation);
  }

  /** Those of both arches; the order is by stage, then upper before lower, then along the arch. */
  public static List<Preparation> of(Assessment assessment) {
    List<Preparation> all = new ArrayList<>(of(assessment.upper()));
    all.addAll(of(assessment.lower()));
    all.sort(CLINICAL_ORDER);
    return List.copyOf(all);
  }

  /** Those of one arch. */
  public static List<Preparation> of(Situation situation) {
    MouthPreparations p = new MouthPreparations(situation);
    p.extractions();
    p.ridges();
    p.abutments();
    p.room();
    new PreparedSurfaces(situation, p.gathered).gather();
    p.finish();
    p.freeEnds();
    p.doubtful();
    List<Preparation> out = p.gathered.all();
    out.sort(CLINICAL_ORDER);
    return List.copyOf(out);
  }

  private void extractions() {
    for (Tooth t : Tooth.in(situation.arch())) {
      if (situation.chart().tooth(t).status() != ToothStatus.TO_BE_EXTRACTED) {
        continue;
      }
      Gathered.Draft d = gathered.draft(PreparationKind.EXTRACTION, Demand.EXTRACTION, t);
      Optional<Saddle> saddle = situation.design().saddleAt(t);
      if (saddle.isPresent()) {
        d.of("immediate addition to the saddle", saddle.get())
            .warn(
                "While the tooth stands, its replacement cannot be tried in, and the registration"
                    + " may not be possible either: give the laboratory everything it needs to"
                    + " know beforehand.",
                Source.read(Literature.IMMEDIATE_DENTURES))
            .add(
                "extract when the denture is fitted: it carries the replacement, with metal"
                    + " retention under that tooth",
                Source.read(Literature.IMMEDIATE_DENTURES + "; " + Literature.BEZZON));
      } else {
        d.of("charted to be extracted")
            .add("extract, and let the ridge heal before the master impression", ORDER);
      }
    }
  }

  /** Tissues under a saddle that must be sound before they are recorded. */
  private void ridges() {
    situation
        .chart()
        .softTissues()
        .ridges()
        .forEach(
            (side, state) -> {
              Optional<Saddle> saddle = onSide(side);
              if (saddle.isPresent() && state == SoftTissues.RidgeState.FLABBY) {
                gathered
                    .draft(PreparationKind.TISSUES, Demand.RIDGE, teeth(saddle.get(), side))
                    .whateverTheTeeth()
                    .at(side)
                    .of("saddle on a flabby ridge", saddle.get())
                    .add(
                        "condition the ridge before the master impression, and record it without"
                            + " displacing it",
                        Source.read(
                            Literature.PREPARATION_SLIDES
                                + ": condition edentulous tissues before teeth"));
              }
            });
  }

  private Optional<Saddle> onSide(Side side) {
    return situation.design().stream(Saddle.class)
        .filter(s -> !teeth(s, side).isEmpty())
        .findFirst();
  }

  private static List<Tooth> teeth(Saddle saddle, Side side) {
    return saddle.span().teeth().stream().filter(t -> t.side() == side).toList();
  }

  /** What must be treated, and have settled, before a tooth carries part of the denture. */
  private void abutments() {
    for (Tooth t : Tooth.in(situation.arch())) {
      if (!situation.chart().stands(t) || !situation.design().usesAsAbutment(t)) {
        continue;
      }
      ToothFindings f = situation.chart().tooth(t);
      f.condition().ifPresent(c -> treated(t, c));
      double loosest = situation.profile().limit(Quantity.CLASP_MOBILITY);
      if (f.mobility().filter(m -> m > loosest).isPresent()) {
        gathered
            .draft(PreparationKind.TISSUES, Demand.DISEASE, t)
            .of("charted as mobile, grade " + f.mobility().get() + "; carries part of the denture")
            .add(
                "periodontal care; judge the response before the denture is begun",
                Source.read(Literature.ABUTMENT_PREPARATION));
      }
    }
  }

  private void treated(Tooth t, Condition condition) {
    switch (condition) {
      case CARIOUS ->
          gathered
              .draft(PreparationKind.RESTORATION, Demand.CARIES, t)
              .of("charted as carious; carries part of the denture")
              .add("treat the caries; shape the restoration for the seat and planes below", ORDER);
      case ROOT_FILLED ->
          gathered
              .draft(PreparationKind.RESTORATION, Demand.ROOT_FILLING, t)
              .of("charted as root-filled; carries part of the denture")
              .add(
                  "see that the root filling has healed before the denture is begun",
                  Source.read(Literature.ABUTMENT_PREPARATION));
      case CROWNED ->
          gathered
              .draft(PreparationKind.RESTORATION, Demand.CROWN, t)
              .of("charted as crowned; carries part of the denture")
              .warn(
                  "Keep the present crown only where it is thick enough to be cut.",
                  Source.commonPractice("preparing an existing crown"))
              .add(
                  "surveyed crown, finished before the master impression, with what is listed"
                      + " below for this tooth built in",
                  Source.read(Literature.ABUTMENT_PREPARATION));
      case SOUND, RESTORED, AMALGAM -> {
        // Nothing to be done beforehand; what matters for a seat is said with the seat.
      }
    }
  }

  /** Teeth that have grown or tilted into the room of the denture. */
  private void room() {
    double least = situation.profile().limit(Quantity.SADDLE_SPACE);
    for (Saddle s : situation.design().all(Saddle.class)) {
      for (Tooth t : s.span().teeth()) {
        Optional<Double> space = situation.chart().tooth(t).saddleSpace();
        if (situation.chart().isReplaced(t) && space.filter(v -> v < least).isPresent()) {
          gathered
              .draft(PreparationKind.RESTORATION, Demand.ROOM, t)
              .of("too little height for the saddle", s)
              .add(
                  "only "
                      + Millimetres.of(space.get())
                      + " from the ridge to the opposing teeth, "
                      + Millimetres.of(least)
                      + " needed: adjust or restore the opposing teeth to an even occlusal plane",
                  Source.read(Literature.PREPARATION_SLIDES));
        }
      }
    }
  }

  private void finish() {
    TreeSet<Tooth> cut = new TreeSet<>(Comparator.comparing(Tooth::place));
    for (Preparation p : gathered.all()) {
      if (p.kind().altersTeeth()) {
        cut.addAll(p.teeth());
      }
    }
    if (!cut.isEmpty()) {
      gathered
          .draft(PreparationKind.FINISH, Demand.CUT_SURFACES, List.copyOf(cut))
          .whateverTheTeeth()
          .of("all prepared teeth")
          .add(
              "round and polish every cut surface, apply fluoride, protect any exposed dentine;"
                  + " check room and path on a study cast before the master impression",
              Source.read(Literature.PREPARATION_SLIDES));
    }
  }

  private void freeEnds() {
    for (AreaSupport area : AreaSupport.all(situation)) {
      Saddle s = area.saddle();
      if (area.isFreeEnd() && s.base() == Saddle.Base.ACRYLIC_ON_MESH) {
        boolean onwards = area.ends().get(0).abutment().place() < s.span().first().place();
        Side side = (onwards ? s.span().last() : s.span().first()).side();
        gathered
            .draft(PreparationKind.LATER, Demand.FREE_END, teeth(s, side))
            .whateverTheTeeth()
            .at(side)
            .of("free-end saddle", s)
            .add(
                (situation.arch() == Arch.LOWER
                        ? "plan an altered-cast (functional) impression"
                        : "decide whether an altered-cast (functional) impression is needed")
                    + ", taken on the framework with a tray on its mesh",
                Source.read(Literature.ABUTMENT_PREPARATION));
      }
    }
  }

  private void doubtful() {
    if (situation.design().components().isEmpty()) {
      return;
    }
    for (Tooth t : situation.chart().standing()) {
      if (situation.chart().tooth(t).doubtful()) {
        List<Component> on =
            situation.design().components().stream()
                .filter(c -> c.teeth().equals(List.of(t)))
                .toList();
        gathered
            .draft(PreparationKind.LATER, Demand.DOUBT, t)
            .of(
                situation.design().usesAsAbutment(t)
                    ? "abutment of doubtful prognosis"
                    : "tooth of doubtful prognosis",
                on.toArray(Component[]::new))
            .add(
                "plan for its addition later: metal to which a tooth can be joined, and an"
                    + " indirect retainer, a flexible clasp and a second impression once it is lost",
                Source.read(Literature.ABUTMENT_PREPARATION));
      }
    }
  }
}
