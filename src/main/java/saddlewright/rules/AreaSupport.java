package saddlewright.rules;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.WeakHashMap;
import saddlewright.dentition.Tooth;
import saddlewright.design.Saddle;
import saddlewright.layout.Layout;

/**
 * Which rests carry a saddle, and at which of its ends a standing tooth bounds it.
 *
 * @param saddle the saddle
 * @param ends its bounded ends, from the patient's right to the left: two for a bounded saddle, one
 *     for a free-end saddle, none where no tooth stands
 */
public record AreaSupport(Saddle saddle, List<EndSupport> ends) {
  /** Found already, for as long as the layout is in use, which holds both chart and design. */
  private static final Map<Layout, List<AreaSupport>> KNOWN =
      Collections.synchronizedMap(new WeakHashMap<>());

  public AreaSupport {
    ends = List.copyOf(ends);
  }

  public static AreaSupport of(Situation s, Saddle saddle) {
    List<EndSupport> ends = new ArrayList<>();
    abutment(s, saddle.span().before(), -1)
        .ifPresent(t -> ends.add(EndSupport.of(s, t, t.endTowards(saddle.span().first()))));
    abutment(s, saddle.span().after(), 1)
        .ifPresent(t -> ends.add(EndSupport.of(s, t, t.endTowards(saddle.span().last()))));
    return new AreaSupport(saddle, ends);
  }

  /** The support of every saddle of a design; worked out once, since most rules ask for it. */
  public static List<AreaSupport> all(Situation s) {
    List<AreaSupport> known = KNOWN.get(s.layout());
    if (known == null) {
      known = s.design().stream(Saddle.class).map(x -> of(s, x)).toList();
      KNOWN.put(s.layout(), known);
    }
    return known;
  }

  /** The first standing tooth that counts, walking away from the saddle. */
  private static Optional<Tooth> abutment(Situation s, Optional<Tooth> start, int step) {
    if (start.isEmpty()) {
      return Optional.empty();
    }
    for (int p = start.get().place(); p >= 0 && p <= 15; p += step) {
      Tooth t = Tooth.at(s.arch(), p);
      if (s.chart().stands(t)) {
        return counts(s, t) ? Optional.of(t) : Optional.empty();
      }
    }
    return Optional.empty();
  }

  /** A standing third molar counts only when it serves as an abutment (Applegate). */
  private static boolean counts(Situation s, Tooth t) {
    return t.position() != 8 || s.chart().tooth(t).abutment() || s.design().usesAsAbutment(t);
  }

  public boolean isBounded() {
    return ends.size() == 2;
  }

  public boolean isFreeEnd() {
    return ends.size() == 1;
  }
}
