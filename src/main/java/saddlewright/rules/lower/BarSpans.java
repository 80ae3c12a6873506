package saddlewright.rules.lower;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import saddlewright.dentition.Tooth;
import saddlewright.design.ConnectorForm;
import saddlewright.design.MinorConnector;
import saddlewright.design.Rest;
import saddlewright.rules.LaidConnector;
import saddlewright.rules.Situation;

/**
 * The ways that a bar on the teeth goes between its supports.
 *
 * @param row the standing teeth under the bar, in arch order
 * @param supports those that bear a rest or a strut
 */
record BarSpans(List<Tooth> row, Set<Tooth> supports) {
  /** The upper limb of a continuous bar goes as far as the first premolars. */
  private static final int LAST_POSITION = 4;

  static BarSpans of(Situation s, LaidConnector c) {
    List<Tooth> row =
        c.standing().stream()
            .filter(t -> c.is(ConnectorForm.DENTAL_BAR) || t.position() <= LAST_POSITION)
            .toList();
    Set<Tooth> supports = new TreeSet<>();
    s.design().stream(Rest.class).map(Rest::tooth).filter(row::contains).forEach(supports::add);
    s.design().stream(MinorConnector.class)
        .map(MinorConnector::tooth)
        .filter(row::contains)
        .forEach(supports::add);
    if (c.is(ConnectorForm.CONTINUOUS_BAR) && row.size() > 1) {
      // It is joined to the lower limb at both of its ends.
      supports.add(row.get(0));
      supports.add(row.get(row.size() - 1));
    }
    return new BarSpans(row, supports);
  }

  /** The longest run of teeth without a support; empty where every tooth bears one. */
  List<Tooth> longest() {
    return longest(supports);
  }

  private List<Tooth> longest(Set<Tooth> held) {
    List<Tooth> best = List.of();
    List<Tooth> run = new ArrayList<>();
    for (Tooth t : row) {
      if (held.contains(t)) {
        run = new ArrayList<>();
      } else {
        run.add(t);
        best = run.size() > best.size() ? List.copyOf(run) : best;
      }
    }
    return best;
  }

  /** The teeth that should bear a support too: the canines, and after that the middles of runs. */
  List<Tooth> supportsFor(int most) {
    Set<Tooth> held = new TreeSet<>(supports);
    List<Tooth> added = new ArrayList<>();
    if (longest(held).size() > most) {
      row.stream().filter(t -> t.isCanine() && held.add(t)).forEach(added::add);
    }
    while (longest(held).size() > most) {
      List<Tooth> run = longest(held);
      Tooth middle = run.get(run.size() / 2);
      held.add(middle);
      added.add(middle);
    }
    return added;
  }
}
