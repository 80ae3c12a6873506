package saddlewright.prescription;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import saddlewright.chart.ArchChart;
import saddlewright.chart.Condition;
import saddlewright.chart.GapDecision;
import saddlewright.chart.ToothFindings;
import saddlewright.chart.ToothStatus;
import saddlewright.dentition.Notation;
import saddlewright.dentition.Tooth;

/**
 * What stands in an arch and what does not, in words: the base from which the design starts, which
 * a prescription has to give (the published audits count it as part of the design).
 *
 * @param lines one for each state; states of which no tooth is are said to be none
 */
public record ToothStates(List<Line> lines) {
  /** A state with the teeth that are in it, such as "none" or "35–37". */
  public record Line(String state, String teeth) {}

  public ToothStates {
    lines = List.copyOf(lines);
  }

  public static ToothStates of(ArchChart chart, Notation notation) {
    List<Line> out = new ArrayList<>();
    Reader r = new Reader(chart, notation, out);
    r.always("Present", f -> f.status() == ToothStatus.STANDING);
    r.always(
        "Missing, replaced",
        f -> f.status() == ToothStatus.MISSING && f.gap() == GapDecision.REPLACED);
    r.always(
        "Missing, not replaced",
        f -> f.status() == ToothStatus.MISSING && f.gap() != GapDecision.REPLACED);
    r.always("To be extracted", f -> f.status() == ToothStatus.TO_BE_EXTRACTED);
    r.always("Roots kept", f -> f.status() == ToothStatus.RETAINED_ROOT);
    r.always("Implants", f -> f.status() == ToothStatus.IMPLANT);
    r.always("Crowned", f -> f.status() == ToothStatus.STANDING && is(f, Condition.CROWNED));
    r.sometimes("Unerupted", f -> f.status() == ToothStatus.UNERUPTED);
    r.sometimes(
        "Space closed by drift",
        f -> f.status() != ToothStatus.STANDING && f.gap() == GapDecision.CLOSED);
    r.sometimes("Carious", f -> is(f, Condition.CARIOUS));
    r.sometimes("Doubtful, may be lost", ToothFindings::doubtful);
    return new ToothStates(out);
  }

  private static boolean is(ToothFindings f, Condition condition) {
    return f.condition().filter(c -> c == condition).isPresent();
  }

  private record Reader(ArchChart chart, Notation notation, List<Line> out) {
    private void always(String state, Predicate<ToothFindings> in) {
      String teeth = teeth(in);
      out.add(new Line(state, teeth.isEmpty() ? "none" : teeth));
    }

    private void sometimes(String state, Predicate<ToothFindings> in) {
      String teeth = teeth(in);
      if (!teeth.isEmpty()) {
        out.add(new Line(state, teeth));
      }
    }

    /** Whether they are neighbours of one quadrant. */
    private static boolean follows(Tooth one, Tooth next) {
      return next.place() == one.place() + 1 && next.place() != 8;
    }

    /** Neighbours that follow one another on one side are written as a range. */
    private String teeth(Predicate<ToothFindings> in) {
      List<Tooth> all = chart.where(t -> in.test(chart.tooth(t)));
      List<String> words = new ArrayList<>();
      int from = 0;
      for (int i = 1; i <= all.size(); i++) {
        if (i == all.size() || !follows(all.get(i - 1), all.get(i))) {
          if (i - from == 2) {
            words.add(notation.format(all.get(from)));
            words.add(notation.format(all.get(i - 1)));
          } else {
            words.add(ToothWords.range(all.get(from), all.get(i - 1), notation));
          }
          from = i;
        }
      }
      return String.join(", ", words);
    }
  }
}
