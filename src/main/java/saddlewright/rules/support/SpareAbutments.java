package saddlewright.rules.support;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import saddlewright.dentition.RestSite;
import saddlewright.dentition.Tooth;
import saddlewright.design.DesignEdit;
import saddlewright.design.Rest;
import saddlewright.geometry.Point;
import saddlewright.mechanics.Bearings;
import saddlewright.rules.Draft;
import saddlewright.rules.NewRest;
import saddlewright.rules.Outlook;
import saddlewright.rules.Situation;

/** Sound teeth without a rest that could take one: canines, premolars, first and second molars. */
final class SpareAbutments {
  private SpareAbutments() {}

  static List<Tooth> of(Situation s) {
    Set<Tooth> rested = EnumSet.noneOf(Tooth.class);
    for (Rest r : s.design().all(Rest.class)) {
      rested.add(r.tooth());
    }
    return s.chart().standing().stream()
        .filter(
            t -> !t.isIncisor() && t.position() < 8 && !rested.contains(t) && !Outlook.isPoor(s, t))
        .toList();
  }

  /** The usual site of a rest that faces no saddle. */
  static RestSite site(Tooth tooth) {
    return tooth.isAnterior() ? RestSite.CINGULUM : RestSite.MESIAL_OCCLUSAL;
  }

  static Point seat(Situation s, Tooth tooth) {
    return s.form().tooth(tooth).seat(site(tooth));
  }

  /** Spare teeth in turn, each the farthest from the rests and teeth chosen so far. */
  private static List<Tooth> farApart(Situation s, int wanted) {
    List<Point> seats = new ArrayList<>();
    for (Rest r : s.design().all(Rest.class)) {
      seats.add(Bearings.seat(s.layout(), r));
    }
    List<Tooth> spare = new ArrayList<>(of(s));
    List<Tooth> out = new ArrayList<>();
    while (out.size() < wanted && !spare.isEmpty()) {
      Tooth next =
          Collections.max(
              spare, Comparator.comparingDouble((Tooth t) -> nearest(seats, seat(s, t))));
      out.add(next);
      spare.remove(next);
      seats.add(seat(s, next));
    }
    return out;
  }

  /** Offers the rests that a denture lacks, where there are teeth for all of them. */
  static void offer(Situation s, int wanted, Draft d) {
    List<Tooth> more = farApart(s, wanted);
    if (more.size() == wanted) {
      d.remedy(
          more.stream().map(t -> NewRest.label(t, site(t))).collect(Collectors.joining("; ")),
          new DesignEdit.Several(more.stream().map(t -> NewRest.edit(s, t, site(t))).toList()));
    }
  }

  private static double nearest(List<Point> seats, Point p) {
    return seats.stream().mapToDouble(p::distanceTo).min().orElse(0);
  }
}
