package saddlewright.rules.indirect;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import saddlewright.dentition.RestSite;
import saddlewright.dentition.Tooth;
import saddlewright.design.Clasp;
import saddlewright.design.DesignEdit;
import saddlewright.design.Rest;
import saddlewright.mechanics.IndirectRetention;
import saddlewright.rules.NewRest;
import saddlewright.rules.Quantity;
import saddlewright.rules.Situation;

/**
 * A place where a rest would make a good indirect retainer.
 *
 * @param tooth the tooth
 * @param site its rest site
 * @param distance beyond the axis in mm
 */
record IndirectSite(Tooth tooth, RestSite site, double distance) {
  private static final int OFFERED = 3;

  /**
   * The best places beyond the axis, one a tooth, farthest first. Left out are incisors, which are
   * too weak to serve (Dalhousie manual; Ankara textbook, read), third molars, loose teeth, and
   * clasped teeth, which lie on the axis.
   */
  static List<IndirectSite> best(Situation s, IndirectRetention facts) {
    return all(s, facts).stream().limit(OFFERED).toList();
  }

  /** All such places, farthest first. */
  static List<IndirectSite> all(Situation s, IndirectRetention facts) {
    List<IndirectSite> out = new ArrayList<>();
    for (Tooth t : s.chart().standing()) {
      if (canServe(s, t)) {
        Stream.of(RestSite.CINGULUM, RestSite.MESIAL_OCCLUSAL, RestSite.DISTAL_OCCLUSAL)
            .filter(x -> x.existsOn(t))
            .map(x -> new IndirectSite(t, x, facts.reach(s.form().tooth(t).seat(x))))
            .max(Comparator.comparingDouble(IndirectSite::distance))
            .filter(x -> x.distance > 0)
            .ifPresent(out::add);
      }
    }
    out.sort(Comparator.comparingDouble(IndirectSite::distance).reversed());
    return out;
  }

  private static boolean canServe(Situation s, Tooth t) {
    boolean loose = s.chart().tooth(t).mobility().orElse(0) >= s.profile().limit(Quantity.MOBILITY);
    boolean clasped = s.design().stream(Clasp.class).anyMatch(c -> c.tooth() == t);
    return !t.isIncisor() && t.position() != 8 && !loose && !clasped;
  }

  String label() {
    return NewRest.label(tooth, site) + " as indirect retainer";
  }

  /** Adds the rest without marking it. */
  DesignEdit plain(Situation s) {
    return NewRest.edit(s, tooth, site);
  }

  /** Marks the rest that is already there, or adds one. */
  DesignEdit edit(Situation s) {
    return s.design().stream(Rest.class)
        .filter(r -> r.tooth() == tooth && r.site() == site)
        .findFirst()
        .<DesignEdit>map(r -> new DesignEdit.Change(r.asIndirectRetainer()))
        .orElseGet(() -> NewRest.edit(s, tooth, site, true));
  }
}
