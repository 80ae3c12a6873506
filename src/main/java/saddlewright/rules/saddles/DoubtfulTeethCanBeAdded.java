package saddlewright.rules.saddles;

import java.util.ArrayList;
import java.util.List;
import saddlewright.dentition.Span;
import saddlewright.dentition.Tooth;
import saddlewright.design.Component;
import saddlewright.design.ComponentId;
import saddlewright.design.ConnectorForm;
import saddlewright.design.DesignEdit;
import saddlewright.design.MajorConnector;
import saddlewright.design.Plating;
import saddlewright.design.Saddle;
import saddlewright.design.Subject;
import saddlewright.rules.Claim;
import saddlewright.rules.Judging;
import saddlewright.rules.Literature;
import saddlewright.rules.Rule;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;

/**
 * A tooth that may go is planned for now: the denture outlives it if a new tooth has something to
 * hold.
 */
public final class DoubtfulTeethCanBeAdded implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "doubtful-teeth-can-be-added",
          "Metal or a saddle lies beside every tooth of doubtful outlook, so that it can be added later.",
          Severity.SHOULD,
          Source.read(Literature.MCCRACKEN_NOTES + "; " + Literature.BRITISH_NOTES));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    if (s.design().majorConnector().isEmpty()) {
      return;
    }
    for (Tooth t : s.chart().standing()) {
      if (!s.chart().tooth(t).doubtful()) {
        continue;
      }
      List<Component> near = beside(s, t);
      if (near.isEmpty()) {
        on.finding(t.toString(), Subject.of(t))
            .fact("of doubtful outlook, with nothing beside it to take its successor")
            .measured("no metal or saddle beside it", "plating or a saddle beside it")
            .remedy(
                "Plate " + t,
                new DesignEdit.Place(new Plating(ComponentId.of("plating-1"), Span.of(t))))
            .done();
      } else {
        Component c = near.get(0);
        on.upheld("lets " + t + " be added when it is lost", Subject.of(s.arch(), c));
      }
    }
  }

  private static List<Component> beside(Situation s, Tooth t) {
    List<Component> out = new ArrayList<>();
    for (Component c : s.design().components()) {
      if (c instanceof Plating p && p.span().contains(t)
          || c instanceof MajorConnector m && isPlate(m) && m.span().contains(t)
          || c instanceof Saddle x && touches(x, t)) {
        out.add(c);
      }
    }
    return out;
  }

  private static boolean isPlate(MajorConnector m) {
    return m.form() == ConnectorForm.LINGUAL_PLATE || m.form() == ConnectorForm.PALATAL_PLATE;
  }

  private static boolean touches(Saddle saddle, Tooth t) {
    return saddle.span().before().filter(x -> x == t).isPresent()
        || saddle.span().after().filter(x -> x == t).isPresent();
  }
}
