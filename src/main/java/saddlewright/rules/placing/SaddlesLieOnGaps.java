package saddlewright.rules.placing;

import java.util.ArrayList;
import java.util.List;
import saddlewright.dentition.Span;
import saddlewright.dentition.Tooth;
import saddlewright.design.DesignEdit;
import saddlewright.design.Saddle;
import saddlewright.design.Subject;
import saddlewright.rules.Claim;
import saddlewright.rules.Judging;
import saddlewright.rules.Literature;
import saddlewright.rules.Naming;
import saddlewright.rules.Rule;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;

/**
 * A saddle replaces lost teeth; it cannot lie where a tooth stands or where drift left no space.
 */
public final class SaddlesLieOnGaps implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "saddles-lie-on-gaps",
          "Saddles cover places where teeth are lost and space is left, never a standing tooth.",
          Severity.MUST,
          Source.read(Literature.ANKARA + ": spaces to be restored"));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    for (Saddle saddle : s.design().all(Saddle.class)) {
      List<Tooth> standing = saddle.span().teeth().stream().filter(s.chart()::stands).toList();
      boolean endsOnClosed =
          s.chart().isClosed(saddle.span().first()) || s.chart().isClosed(saddle.span().last());
      if (standing.isEmpty() && !endsOnClosed) {
        on.judged();
      } else {
        find(s, saddle, standing, on);
      }
    }
  }

  private static void find(Situation s, Saddle saddle, List<Tooth> standing, Judging on) {
    List<Span> lawful = gaps(s, saddle.span());
    Tooth t =
        !standing.isEmpty()
            ? standing.get(0)
            : s.chart().isClosed(saddle.span().first())
                ? saddle.span().first()
                : saddle.span().last();
    on.finding(t.toString(), Subject.of(s.arch(), saddle))
        .fact(
            Naming.of(saddle)
                + (standing.isEmpty()
                    ? " covers a space that is closed"
                    : " covers a standing tooth"))
        .measured(standing.isEmpty() ? "no space" : standing.size() + " standing", "gaps only")
        .remedy(
            lawful.isEmpty() ? "Remove the saddle" : "Fit it to the gaps", fitted(saddle, lawful))
        .done();
  }

  /** Runs of the span without standing teeth, with no closed place at their ends. */
  private static List<Span> gaps(Situation s, Span span) {
    List<Span> out = new ArrayList<>();
    Tooth first = null;
    Tooth last = null;
    for (Tooth t : span.teeth()) {
      if (s.chart().stands(t)) {
        if (first != null) {
          out.add(Span.of(first, last));
        }
        first = null;
      } else if (!s.chart().isClosed(t)) {
        first = first == null ? t : first;
        last = t;
      }
    }
    if (first != null) {
      out.add(Span.of(first, last));
    }
    return out;
  }

  private static DesignEdit fitted(Saddle saddle, List<Span> lawful) {
    if (lawful.isEmpty()) {
      return new DesignEdit.Remove(saddle.id());
    }
    List<DesignEdit> edits = new ArrayList<>();
    edits.add(new DesignEdit.Change(on(saddle, lawful.get(0))));
    lawful.stream().skip(1).forEach(x -> edits.add(new DesignEdit.Place(on(saddle, x))));
    return new DesignEdit.Several(edits);
  }

  private static Saddle on(Saddle saddle, Span span) {
    return saddle.withSpan(span);
  }
}
