package saddlewright.rules.support;

import java.util.Optional;
import saddlewright.classification.KennedyClass;
import saddlewright.dentition.Arch;
import saddlewright.design.ConnectorForm;
import saddlewright.design.DesignEdit;
import saddlewright.design.MajorConnector;
import saddlewright.design.Subject;
import saddlewright.rules.Claim;
import saddlewright.rules.Judging;
import saddlewright.rules.Literature;
import saddlewright.rules.Naming;
import saddlewright.rules.Quantity;
import saddlewright.rules.Rule;
import saddlewright.rules.SaddleTeeth;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;

/** A long front saddle lies in front of its rests, so the palate has to take part of the bite. */
public final class ClassFourPalatesShareTheLoad implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "class-four-palates-share-the-load",
          "Under a long front saddle the upper connector spreads over the palate.",
          Severity.SHOULD,
          Source.read(Literature.AMERICAN_CARDS + "; " + Literature.STEWART_NOTES));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    Optional<MajorConnector> connector = s.design().majorConnector();
    if (s.arch() != Arch.UPPER
        || s.classification().kennedy() != KennedyClass.IV
        || connector.isEmpty()) {
      return;
    }
    int teeth = s.classification().areas().get(0).replaced().size();
    double span = s.profile().limit(Quantity.LONG_SPAN);
    if (teeth < span) {
      return;
    }
    MajorConnector m = connector.get();
    Subject subject = Subject.of(s.arch(), m);
    if (m.form() == ConnectorForm.PALATAL_BAR || m.form() == ConnectorForm.PALATAL_STRAP) {
      on.finding(Naming.of(m), subject)
          .fact("leaves the front of the palate out, under " + SaddleTeeth.count(teeth))
          .measured("a " + Naming.of(m), "a ring, plate or horseshoe")
          .remedy("Make it a ring", form(m, ConnectorForm.PALATAL_RING))
          .remedy("Make it a plate", form(m, ConnectorForm.PALATAL_PLATE))
          .done();
    } else {
      on.upheld("lets the palate share the load of the long front saddle", subject);
    }
  }

  private static DesignEdit form(MajorConnector m, ConnectorForm form) {
    return new DesignEdit.Change(MajorConnector.of(m.id(), form, m.span()));
  }
}
