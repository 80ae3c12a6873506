package saddlewright.rules.abutments;

import saddlewright.classification.KennedyClass;
import saddlewright.dentition.Arch;
import saddlewright.design.ConnectorForm;
import saddlewright.design.DesignEdit;
import saddlewright.design.MajorConnector;
import saddlewright.design.Saddle;
import saddlewright.design.Subject;
import saddlewright.rules.AreaSupport;
import saddlewright.rules.Claim;
import saddlewright.rules.Judging;
import saddlewright.rules.Literature;
import saddlewright.rules.Naming;
import saddlewright.rules.Rule;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;

/**
 * Lower front teeth that bite alone against a complete upper denture wear away the ridge under it.
 */
public final class CombinationSyndromeIsForeseen implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "combination-syndrome-is-foreseen",
          "A lower Class I denture against a complete upper denture has full bases and a lingual"
              + " plate.",
          Severity.CONSIDER,
          Source.read("North American teaching cards; " + Literature.WESTERN_AUSTRALIA));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    boolean applies =
        s.arch() == Arch.LOWER
            && s.classification().kennedy() == KennedyClass.I
            && s.opposing().standing().isEmpty();
    if (!applies) {
      return;
    }
    for (AreaSupport a : AreaSupport.all(s)) {
      if (a.isFreeEnd()) {
        base(s, a.saddle(), on);
      }
    }
    s.design().majorConnector().ifPresent(m -> connector(s, m, on));
  }

  private static void base(Situation s, Saddle saddle, Judging on) {
    Subject subject = Subject.of(s.arch(), saddle);
    if (saddle.flange() == Saddle.Flange.FULL) {
      on.upheld("keeps up the bite behind with a fully extended base", subject);
      return;
    }
    Saddle full =
        new Saddle(
            saddle.id(), saddle.span(), saddle.base(), Saddle.Flange.FULL, saddle.lingualFinish());
    on.finding(Naming.of(saddle), subject)
        .fact("opposite a complete upper denture its base must not sink")
        .measured("a short flange", "a full flange")
        .remedy("Extend the flange fully", new DesignEdit.Change(full))
        .done();
  }

  private static void connector(Situation s, MajorConnector m, Judging on) {
    Subject subject = Subject.of(s.arch(), m);
    if (m.form() == ConnectorForm.LINGUAL_PLATE) {
      on.upheld("binds the front teeth that bite against a complete upper denture", subject);
      return;
    }
    MajorConnector plate = MajorConnector.of(m.id(), ConnectorForm.LINGUAL_PLATE, m.span());
    on.finding(Naming.of(m), subject)
        .fact("leaves front teeth unbound that bite alone against a complete upper denture")
        .measured("front teeth unbound", "a lingual plate")
        .remedy("Make it a lingual plate", new DesignEdit.Change(plate))
        .done();
  }
}
