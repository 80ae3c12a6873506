package saddlewright.rules.support;

import java.util.Optional;
import saddlewright.dentition.Arch;
import saddlewright.design.ConnectorForm;
import saddlewright.design.DesignEdit;
import saddlewright.design.MajorConnector;
import saddlewright.design.Rest;
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

/** Where the mucosa carries all, it has to be all of the mucosa. */
public final class MucosaBornePlatesCoverThePalate implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "mucosa-borne-plates-cover-the-palate",
          "An upper denture without rests covers the palate with a plate.",
          Severity.SHOULD,
          Source.read(Literature.BRITISH_NOTES));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    Optional<MajorConnector> connector = s.design().majorConnector();
    if (s.arch() != Arch.UPPER
        || connector.isEmpty()
        || s.design().all(Saddle.class).isEmpty()
        || !s.design().all(Rest.class).isEmpty()) {
      return;
    }
    MajorConnector m = connector.get();
    Subject subject = Subject.of(s.arch(), m);
    if (m.form() == ConnectorForm.PALATAL_PLATE) {
      on.upheld("spreads the whole load over the palate", subject);
      return;
    }
    on.finding(Naming.of(m), subject)
        .fact("carries a denture without rests on part of the palate")
        .measured("a " + Naming.of(m), "a palatal plate, or rests")
        .remedy(
            "Make it a plate",
            new DesignEdit.Change(MajorConnector.of(m.id(), ConnectorForm.PALATAL_PLATE, m.span())))
        .done();
  }
}
