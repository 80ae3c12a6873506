package saddlewright.rules.support;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import saddlewright.dentition.RestSite;
import saddlewright.dentition.Tooth;
import saddlewright.design.DesignEdit;
import saddlewright.design.Rest;
import saddlewright.design.Saddle;
import saddlewright.design.Subject;
import saddlewright.geometry.Point;
import saddlewright.mechanics.Bearings;
import saddlewright.rules.Amount;
import saddlewright.rules.Claim;
import saddlewright.rules.Draft;
import saddlewright.rules.Judging;
import saddlewright.rules.Literature;
import saddlewright.rules.NewRest;
import saddlewright.rules.Outlook;
import saddlewright.rules.Quantity;
import saddlewright.rules.Rule;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;

/** Two rests make a line to rock on; three make a triangle to stand on. */
public final class DenturesHaveThreeRests implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "dentures-have-three-rests",
          "A denture has at least three rests; four are better.",
          Severity.SHOULD,
          Source.read(Literature.EXAM_NOTES + "; " + Literature.ANKARA));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    long rests = s.design().stream(Rest.class).filter(r -> s.chart().stands(r.tooth())).count();
    double least = s.profile().limit(Quantity.RESTS_PER_DENTURE);
    boolean started = !s.design().all(Saddle.class).isEmpty() && rests > 0;
    if (!started || s.chart().standing().size() < least) {
      return;
    }
    if (rests >= least) {
      on.judged();
      return;
    }
    Draft d =
        on.finding(s.arch().code() + " denture", Subject.of(s.arch()))
            .fact("few rests to stand on")
            .measured(Amount.of(rests, "rest"), "at least " + Amount.of((long) least, "rest"));
    List<Tooth> more = farApart(s, (int) Math.round(least - rests));
    if (more.size() == Math.round(least - rests)) {
      d.remedy(
          more.stream().map(t -> NewRest.label(t, site(t))).collect(Collectors.joining("; ")),
          new DesignEdit.Several(more.stream().map(t -> NewRest.edit(s, t, site(t))).toList()));
    }
    d.done();
  }

  /** Sound teeth without a rest, each as far as possible from the rests so far. */
  private static List<Tooth> farApart(Situation s, int wanted) {
    List<Point> seats = new ArrayList<>();
    Set<Tooth> taken = EnumSet.noneOf(Tooth.class);
    for (Rest r : s.design().all(Rest.class)) {
      seats.add(Bearings.seat(s.layout(), r));
      taken.add(r.tooth());
    }
    List<Tooth> out = new ArrayList<>();
    while (out.size() < wanted) {
      Optional<Tooth> next =
          s.chart().standing().stream()
              .filter(
                  t ->
                      !t.isIncisor()
                          && t.position() < 8
                          && !taken.contains(t)
                          && !Outlook.isPoor(s, t))
              .max(Comparator.comparingDouble(t -> nearest(seats, seat(s, t))));
      if (next.isEmpty()) {
        return out;
      }
      out.add(next.get());
      taken.add(next.get());
      seats.add(seat(s, next.get()));
    }
    return out;
  }

  private static double nearest(List<Point> seats, Point p) {
    return seats.stream().mapToDouble(p::distanceTo).min().orElse(0);
  }

  private static Point seat(Situation s, Tooth t) {
    return s.form().tooth(t).seat(site(t));
  }

  private static RestSite site(Tooth t) {
    return t.isAnterior() ? RestSite.CINGULUM : RestSite.MESIAL_OCCLUSAL;
  }
}
