package saddlewright.rules;

import java.util.ArrayList;
import java.util.List;
import saddlewright.dentition.Tooth;
import saddlewright.design.Saddle;

/** The artificial teeth that a saddle carries. */
public final class SaddleTeeth {
  private SaddleTeeth() {}

  /** The places of its span that get an artificial tooth, in the order of the arch. */
  public static List<Tooth> of(Situation s, Saddle saddle) {
    List<Tooth> out = new ArrayList<>();
    for (Tooth t : saddle.span().teeth()) {
      if (s.chart().isReplaced(t)) {
        out.add(t);
      }
    }
    return out;
  }

  /** Such as "4 teeth". */
  public static String count(long teeth) {
    return teeth == 1 ? "1 tooth" : teeth + " teeth";
  }
}
