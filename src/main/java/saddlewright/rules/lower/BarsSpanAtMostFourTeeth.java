package saddlewright.rules.lower;

import java.util.List;
import saddlewright.dentition.RestSite;
import saddlewright.dentition.Tooth;
import saddlewright.design.ConnectorForm;
import saddlewright.design.DesignEdit;
import saddlewright.design.MinorConnector;
import saddlewright.rules.Claim;
import saddlewright.rules.Judging;
import saddlewright.rules.LaidConnector;
import saddlewright.rules.NewRest;
import saddlewright.rules.Quantity;
import saddlewright.rules.Rule;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;

/** A slim bar that is held far apart sags between its supports. */
public final class BarsSpanAtMostFourTeeth implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "bars-span-at-most-four-teeth",
          "A dental or continuous bar passes at most four teeth between two of its" + " supports.",
          Severity.SHOULD,
          Source.commonPractice("the four incisors between rests or struts on the canines"));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    int most = (int) Math.round(s.profile().limit(Quantity.BAR_SPAN_TEETH));
    for (LaidConnector c :
        LaidConnector.all(s, ConnectorForm.DENTAL_BAR, ConnectorForm.CONTINUOUS_BAR)) {
      BarSpans spans = BarSpans.of(s, c);
      if (spans.longest().size() > most) {
        List<Tooth> run = spans.longest();
        on.finding(c.name(), c.subject())
            .fact("long way without a support, " + run.get(0) + " to " + run.get(run.size() - 1))
            .measured(run.size() + " teeth", "at most " + most + " teeth")
            .remedy(
                c.is(ConnectorForm.DENTAL_BAR) ? "Add rests under it" : "Add struts to it",
                support(s, c, spans.supportsFor(most)))
            .done();
      } else {
        on.upheld(
            "is supported after every " + spans.longest().size() + " teeth at the most",
            c.subject());
      }
    }
  }

  private static DesignEdit support(Situation s, LaidConnector c, List<Tooth> teeth) {
    return new DesignEdit.Several(
        teeth.stream()
            .<DesignEdit>map(
                t ->
                    c.is(ConnectorForm.DENTAL_BAR)
                        ? NewRest.edit(
                            s, t, t.isAnterior() ? RestSite.CINGULUM : RestSite.MESIAL_OCCLUSAL)
                        : new DesignEdit.Place(
                            new MinorConnector(
                                s.design().freshId("minor"), t, MinorConnector.Place.LINGUAL_FACE)))
            .toList());
  }
}
