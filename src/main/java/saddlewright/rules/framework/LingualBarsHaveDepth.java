package saddlewright.rules.framework;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import saddlewright.dentition.Tooth;
import saddlewright.design.ConnectorForm;
import saddlewright.design.DesignEdit;
import saddlewright.design.MajorConnector;
import saddlewright.design.Subject;
import saddlewright.rules.Amount;
import saddlewright.rules.Claim;
import saddlewright.rules.Draft;
import saddlewright.rules.Finding;
import saddlewright.rules.Judging;
import saddlewright.rules.Literature;
import saddlewright.rules.Naming;
import saddlewright.rules.Quantity;
import saddlewright.rules.Rule;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;

/** A bar needs room between the gingival margins and the raised floor of the mouth. */
public final class LingualBarsHaveDepth implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "lingual-bars-have-depth",
          "A lingual bar is used only where the lingual sulcus is deep enough for it.",
          Severity.MUST,
          Source.read(Literature.BRITISH_NOTES + "; " + Literature.STRATTON));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    found(s).forEach(on::add);
  }

  private List<Finding> found(Situation s) {
    double good = s.profile().limit(Quantity.LINGUAL_BAR_DEPTH);
    double least = s.profile().limit(Quantity.LINGUAL_BAR_DEPTH_LEAST);
    List<Finding> out = new ArrayList<>();
    for (MajorConnector m : s.design().all(MajorConnector.class)) {
      boolean bar =
          m.form() == ConnectorForm.LINGUAL_BAR || m.form() == ConnectorForm.CONTINUOUS_BAR;
      Optional<Map.Entry<Tooth, Double>> shallowest =
          s.chart().softTissues().lingualDepth().entrySet().stream()
              .filter(e -> m.span().contains(e.getKey()))
              .min(Map.Entry.comparingByValue());
      if (bar && shallowest.isPresent() && shallowest.get().getValue() < good) {
        double depth = shallowest.get().getValue();
        boolean tooShallow = depth < least;
        Draft d =
            finding(Naming.of(m), Subject.of(s.arch(), m))
                .fact("shallow lingual sulcus at " + shallowest.get().getKey())
                .measured(Amount.mm(depth), Amount.atLeastMm(tooShallow ? least : good))
                .weighing(tooShallow ? Severity.MUST : Severity.SHOULD);
        d.remedy("Make it a lingual plate", as(m, ConnectorForm.LINGUAL_PLATE));
        if (depth >= s.profile().limit(Quantity.SUBLINGUAL_BAR_DEPTH)) {
          d.remedy("Make it a sublingual bar", as(m, ConnectorForm.SUBLINGUAL_BAR));
        }
        out.add(d.done());
      }
    }
    return out;
  }

  private static DesignEdit as(MajorConnector m, ConnectorForm form) {
    return new DesignEdit.Change(MajorConnector.of(m.id(), form, m.span()));
  }
}
