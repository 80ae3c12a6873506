package saddlewright.design;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import saddlewright.chart.ArchChart;
import saddlewright.dentition.End;
import saddlewright.dentition.Face;
import saddlewright.dentition.RestSite;
import saddlewright.dentition.Tooth;
import saddlewright.dentition.Zone;

/**
 * A way of holding a tooth by the undercut in one of its zones: the arm alone, or the arm with the
 * rest, strut, plate and reciprocal part that belong to it.
 */
public enum ClaspUnit {
  /** Rest, retentive arm and reciprocal arm from one body. */
  THREE_ARM,
  /** Mesial rest with its strut, distal guide plate, I-bar: releases stress at a free end. */
  RPI,
  /** The same with an occlusally approaching arm in place of the I-bar. */
  RPA,
  /** Three-arm with a wrought retentive arm. */
  COMBINATION,
  /** Arm round the tooth with a rest at each end. */
  RING,
  BACK_ACTION,
  /** Two clasps back to back over the embrasure of two standing teeth. */
  EMBRASURE_PAIR,
  /** The arm alone. */
  CIRCUMFERENTIAL,
  I_BAR,
  HALF_T,
  T_BAR,
  L_BAR;

  /**
   * The units that would reach the zone, the usual one first: an undercut away from the saddle
   * takes an arm from the saddle's side, one beside it a bar, a free-end abutment a
   * stress-releasing set (common teaching; order from it).
   */
  public static List<ClaspUnit> reaching(
      ArchChart chart, ArchDesign design, Tooth tooth, Zone zone) {
    List<ClaspUnit> order = new ArrayList<>();
    boolean buccal = zone.face() == Face.BUCCAL;
    boolean freeEnd = isFreeEndAbutment(chart, tooth);
    boolean besideSaddle =
        zone.end().map(e -> JoinedRest.facesGap(chart, design, tooth, e)).orElse(false);
    if (buccal && freeEnd) {
      if (zone == Zone.DISTOBUCCAL) {
        order.addAll(List.of(HALF_T, T_BAR));
      }
      order.addAll(List.of(RPI, COMBINATION, RPA));
    }
    if (!besideSaddle) {
      if (!touchesGap(chart, design, tooth) && !tooth.isAnterior()) {
        order.add(EMBRASURE_PAIR);
      }
      order.addAll(tooth.isAnterior() ? List.of() : List.of(THREE_ARM));
      order.add(COMBINATION);
    }
    if (buccal && !(freeEnd && zone == Zone.DISTOBUCCAL)) {
      order.addAll(List.of(I_BAR, HALF_T));
    }
    if (tooth.isMolar()) {
      order.add(besideSaddle ? 0 : order.size(), RING);
    }
    order.addAll(List.of(THREE_ARM, CIRCUMFERENTIAL, RING, BACK_ACTION, EMBRASURE_PAIR));
    if (buccal) {
      order.addAll(List.of(RPI, RPA, I_BAR, T_BAR, HALF_T, L_BAR));
    }
    return order.stream()
        .distinct()
        .filter(u -> !u.on(chart, design, tooth, zone).parts().isEmpty())
        .toList();
  }

  /** What has to be placed on the tooth for a tip in the zone; empty where the unit cannot be. */
  public Unit on(ArchChart chart, ArchDesign design, Tooth tooth, Zone zone) {
    Unit unit = Unit.in(design);
    if (!chart.stands(tooth)) {
      return unit;
    }
    End far = armOrigin(chart, design, tooth, zone);
    switch (this) {
      case THREE_ARM -> threeArm(unit, chart, design, tooth, zone, far, ClaspForm.CIRCUMFERENTIAL);
      case COMBINATION -> threeArm(unit, chart, design, tooth, zone, far, ClaspForm.COMBINATION);
      case RPI ->
          releasing(unit, chart, design, tooth, bar(tooth, ClaspForm.I_BAR, zone, End.DISTAL));
      case RPA ->
          releasing(
              unit, chart, design, tooth, bar(tooth, ClaspForm.CIRCUMFERENTIAL, zone, End.DISTAL));
      case RING -> ring(unit, chart, design, tooth, zone);
      case BACK_ACTION -> {
        if (!tooth.isAnterior()) {
          rest(unit, chart, design, tooth, far);
          unit.plus(bar(tooth, ClaspForm.BACK_ACTION, zone, far));
        }
      }
      case EMBRASURE_PAIR -> embrasure(unit, chart, design, tooth, zone);
      case CIRCUMFERENTIAL -> unit.plus(bar(tooth, ClaspForm.CIRCUMFERENTIAL, zone, far));
      case I_BAR -> unit.plus(bar(tooth, ClaspForm.I_BAR, zone, barOrigin(chart, design, tooth)));
      case HALF_T -> unit.plus(bar(tooth, ClaspForm.HALF_T, zone, barOrigin(chart, design, tooth)));
      case T_BAR -> unit.plus(bar(tooth, ClaspForm.T_BAR, zone, barOrigin(chart, design, tooth)));
      case L_BAR -> unit.plus(bar(tooth, ClaspForm.L_BAR, zone, barOrigin(chart, design, tooth)));
    }
    return unit;
  }

  /** Whether no crown stands behind the tooth and the place behind it is to be replaced. */
  public static boolean isFreeEndAbutment(ArchChart chart, Tooth tooth) {
    Optional<Tooth> behind = tooth.neighbour(End.DISTAL);
    if (behind.isEmpty() || !chart.isReplaced(behind.get())) {
      return false;
    }
    while (behind.isPresent()) {
      // A third molar behind the gap counts only as an abutment; by itself it may be left alone.
      if (chart.stands(behind.get()) && (behind.get().position() < 8)) {
        return false;
      }
      behind = behind.get().neighbour(End.DISTAL);
    }
    return true;
  }

  private static void threeArm(
      Unit unit,
      ArchChart chart,
      ArchDesign design,
      Tooth tooth,
      Zone zone,
      End origin,
      ClaspForm form) {
    rest(unit, chart, design, tooth, origin);
    unit.plus(bar(tooth, form, zone, origin));
    unit.plus(new ReciprocalArm(Unit.id("recip"), tooth, zone.face().opposite(), origin));
  }

  private static void releasing(
      Unit unit, ArchChart chart, ArchDesign design, Tooth tooth, Clasp arm) {
    if (arm.tip().face() == Face.LINGUAL) {
      return;
    }
    Rest rest = mesialRest(tooth);
    JoinedRest.of(chart, design, rest).parts().forEach(unit::plus);
    unit.plus(new GuidePlate(Unit.id("plate"), tooth, End.DISTAL));
    unit.plus(arm);
  }

  private static void ring(Unit unit, ArchChart chart, ArchDesign design, Tooth tooth, Zone zone) {
    if (!tooth.isMolar() || zone.end().isEmpty()) {
      return;
    }
    for (End end : End.values()) {
      rest(unit, chart, design, tooth, end);
    }
    unit.plus(bar(tooth, ClaspForm.RING, zone, zone.end().get()));
  }

  private static void embrasure(
      Unit unit, ArchChart chart, ArchDesign design, Tooth tooth, Zone zone) {
    End towards = zone.end().map(End::opposite).orElse(End.MESIAL);
    Optional<Tooth> beside = tooth.neighbour(towards).filter(chart::stands);
    if (tooth.isAnterior() || beside.isEmpty() || beside.get().isAnterior()) {
      return;
    }
    Tooth other = beside.get();
    End back = other.endTowards(tooth);
    for (Rest rest : List.of(embrasureRest(tooth, towards), embrasureRest(other, back))) {
      unit.plus(rest);
    }
    JoinedRest.strut(chart, design, embrasureRest(tooth, towards)).ifPresent(unit::plus);
    Face face = zone.face();
    unit.plus(bar(tooth, ClaspForm.EMBRASURE, zone, towards));
    unit.plus(bar(other, ClaspForm.EMBRASURE, Zone.of(face, Optional.of(back.opposite())), back));
    unit.plus(new ReciprocalArm(Unit.id("recip"), tooth, face.opposite(), towards));
    unit.plus(new ReciprocalArm(Unit.id("recip"), other, face.opposite(), back));
  }

  private static Rest embrasureRest(Tooth tooth, End end) {
    return new Rest(
        Unit.id("rest"),
        tooth,
        RestSite.occlusal(end),
        Rest.Form.EMBRASURE,
        Rest.Seat.PREPARED_ENAMEL,
        false);
  }

  private static void rest(Unit unit, ArchChart chart, ArchDesign design, Tooth tooth, End end) {
    RestSite site = tooth.isAnterior() ? RestSite.CINGULUM : RestSite.occlusal(end);
    boolean rested =
        design.stream(Rest.class).anyMatch(r -> r.tooth() == tooth && r.site() == site);
    if (!rested) {
      JoinedRest.of(chart, design, Rest.of(Unit.id("rest"), tooth, site))
          .parts()
          .forEach(unit::plus);
    }
  }

  private static Rest mesialRest(Tooth tooth) {
    return Rest.of(
        Unit.id("rest"), tooth, tooth.isAnterior() ? RestSite.CINGULUM : RestSite.MESIAL_OCCLUSAL);
  }

  private static Clasp bar(Tooth tooth, ClaspForm form, Zone zone, End origin) {
    return Clasp.of(Unit.id("clasp"), tooth, form, zone, origin);
  }

  /** An arm starts at the end far from its tip; for a tip in the middle, at the saddle's side. */
  private static End armOrigin(ArchChart chart, ArchDesign design, Tooth tooth, Zone zone) {
    return zone.end().map(End::opposite).orElseGet(() -> barOrigin(chart, design, tooth));
  }

  private static End barOrigin(ArchChart chart, ArchDesign design, Tooth tooth) {
    return JoinedRest.facesGap(chart, design, tooth, End.MESIAL)
            && !JoinedRest.facesGap(chart, design, tooth, End.DISTAL)
        ? End.MESIAL
        : End.DISTAL;
  }

  private static boolean touchesGap(ArchChart chart, ArchDesign design, Tooth tooth) {
    return JoinedRest.facesGap(chart, design, tooth, End.MESIAL)
        || JoinedRest.facesGap(chart, design, tooth, End.DISTAL);
  }
}
