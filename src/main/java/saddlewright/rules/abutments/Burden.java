package saddlewright.rules.abutments;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import saddlewright.chart.ChartField;
import saddlewright.chart.ToothFindings;
import saddlewright.dentition.Tooth;
import saddlewright.design.Clasp;
import saddlewright.design.Component;
import saddlewright.design.Rest;
import saddlewright.design.Subject;
import saddlewright.rules.Judging;
import saddlewright.rules.Situation;

/**
 * A standing tooth that bears part of a denture.
 *
 * @param tooth the tooth
 * @param parts the rests and clasps on it
 */
record Burden(Tooth tooth, List<Component> parts) {
  Burden {
    parts = List.copyOf(parts);
  }

  /** Every tooth that a rest carries on or a clasp holds by, from right to left. */
  static List<Burden> all(Situation s) {
    List<Burden> out = new ArrayList<>();
    for (Tooth t : s.chart().standing()) {
      List<Component> parts =
          s.design().components().stream()
              .filter(c -> c instanceof Rest || c instanceof Clasp)
              .filter(c -> c.teeth().contains(t))
              .toList();
      if (!parts.isEmpty()) {
        out.add(new Burden(t, parts));
      }
    }
    return out;
  }

  boolean isClasped() {
    return parts.stream().anyMatch(Clasp.class::isInstance);
  }

  ToothFindings found(Situation s) {
    return s.chart().tooth(tooth);
  }

  /** Asks once for a value of all the teeth that lack it. */
  static void ask(List<Burden> lacking, Function<List<Tooth>, ChartField> field, Judging on) {
    if (!lacking.isEmpty()) {
      List<Tooth> teeth = lacking.stream().map(Burden::tooth).toList();
      Subject[] subjects = teeth.stream().map(Subject::of).toArray(Subject[]::new);
      on.unanswered(field.apply(teeth), subjects);
    }
  }
}
