package saddlewright.rules.framework;

import java.util.ArrayList;
import java.util.List;
import saddlewright.design.Clasp;
import saddlewright.design.Component;
import saddlewright.design.DesignEdit;
import saddlewright.design.MajorConnector;
import saddlewright.design.Rest;
import saddlewright.design.Saddle;
import saddlewright.design.Subject;
import saddlewright.rules.Amount;
import saddlewright.rules.Claim;
import saddlewright.rules.Draft;
import saddlewright.rules.Judging;
import saddlewright.rules.Naming;
import saddlewright.rules.Rule;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;

/** One rigid connector joins the sides; two would leave a trap between them. */
public final class DenturesHaveOneMajorConnector implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "dentures-have-one-major-connector",
          "A denture has exactly one major connector.",
          Severity.MUST,
          Source.read("North American teaching cards on major connectors"));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    List<MajorConnector> all = s.design().all(MajorConnector.class);
    boolean started =
        s.design().components().stream()
            .anyMatch(c -> c instanceof Saddle || c instanceof Rest || c instanceof Clasp);
    if (all.size() == 1) {
      on.upheld("alone joins all parts", Subject.of(s.arch(), all.get(0)));
      return;
    }
    if (all.isEmpty() && !started) {
      return;
    }
    Draft d =
        on.finding(s.arch().code() + " denture", Subject.of(s.arch()))
            .fact(all.isEmpty() ? "nothing joins its parts" : "more than one major connector")
            .measured(Amount.of(all.size(), "major connector"), "1 major connector");
    if (all.isEmpty()) {
      DesignEdit edit = CrossArch.connector(s, s.design());
      d.remedy("Add a " + Naming.of(placed(edit)), edit);
    } else {
      for (MajorConnector kept : all) {
        List<DesignEdit> edits = new ArrayList<>();
        all.stream().filter(m -> m != kept).forEach(m -> edits.add(new DesignEdit.Remove(m.id())));
        d.remedy("Keep the " + Naming.of(kept) + " alone", new DesignEdit.Several(edits));
      }
    }
    d.done();
  }

  private static Component placed(DesignEdit edit) {
    return ((DesignEdit.Place) edit).component();
  }
}
