package saddlewright.rules.placing;

import java.util.ArrayList;
import java.util.List;
import saddlewright.classification.EdentulousArea;
import saddlewright.dentition.Span;
import saddlewright.dentition.Tooth;
import saddlewright.design.DesignEdit;
import saddlewright.design.Saddle;
import saddlewright.design.Subject;
import saddlewright.rules.Amount;
import saddlewright.rules.Claim;
import saddlewright.rules.Judging;
import saddlewright.rules.Rule;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;

/** A seam in a saddle is weak and holds food, and each half has one abutment only. */
public final class SaddlesRunFromAbutmentToAbutment implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "saddles-run-from-abutment-to-abutment",
          "One saddle fills an edentulous area from abutment to abutment, or to the end of the ridge.",
          Severity.SHOULD,
          Source.commonPractice(
              "first step of design: outline the saddles from abutment to abutment"));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    for (EdentulousArea area : s.classification().areas()) {
      List<Saddle> in = s.design().saddlesIn(area.span());
      if (in.isEmpty()) {
        continue;
      }
      if (in.size() == 1 || overlap(in)) {
        on.judged();
        continue;
      }
      Saddle first = in.get(0);
      Span whole = first.span();
      List<DesignEdit> edits = new ArrayList<>();
      for (Saddle x : in.subList(1, in.size())) {
        whole = joined(whole, x.span());
        edits.add(new DesignEdit.Remove(x.id()));
      }
      edits.add(0, new DesignEdit.Change(first.withSpan(whole)));
      on.finding(area.span().toString(), in.stream().map(x -> Subject.of(s.arch(), x)).toList())
          .fact("one edentulous area is cut up into several saddles")
          .measured(Amount.of(in.size(), "saddle"), "1 saddle")
          .remedy("Make it one saddle " + whole, new DesignEdit.Several(edits))
          .done();
    }
  }

  private static boolean overlap(List<Saddle> saddles) {
    for (int i = 0; i < saddles.size(); i++) {
      for (int j = i + 1; j < saddles.size(); j++) {
        if (saddles.get(i).span().overlaps(saddles.get(j).span())) {
          return true;
        }
      }
    }
    return false;
  }

  private static Span joined(Span a, Span b) {
    Tooth first = a.first().place() < b.first().place() ? a.first() : b.first();
    Tooth last = a.last().place() > b.last().place() ? a.last() : b.last();
    return Span.of(first, last);
  }
}
