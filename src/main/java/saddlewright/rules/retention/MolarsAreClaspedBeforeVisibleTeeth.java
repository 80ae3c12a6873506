package saddlewright.rules.retention;

import java.util.List;
import java.util.Optional;
import saddlewright.dentition.Tooth;
import saddlewright.design.Clasp;
import saddlewright.design.DesignEdit;
import saddlewright.design.Rest;
import saddlewright.design.Subject;
import saddlewright.rules.Claim;
import saddlewright.rules.Draft;
import saddlewright.rules.Judging;
import saddlewright.rules.Naming;
import saddlewright.rules.NewClasp;
import saddlewright.rules.Rule;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;
import saddlewright.rules.StandingClasps;
import saddlewright.rules.TerminalAbutment;

/** Where a molar would hold as well, a tooth that shows is spared its clasp. */
public final class MolarsAreClaspedBeforeVisibleTeeth implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "molars-are-clasped-before-visible-teeth",
          "A tooth that shows is clasped only when the rested molars on its side are clasped.",
          Severity.CONSIDER,
          Source.commonPractice(
              "clasps are placed where they are not seen, the farther back first"));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    List<Tooth> terminal = TerminalAbutment.all(s).stream().map(TerminalAbutment::tooth).toList();
    for (Clasp c : StandingClasps.of(s)) {
      if (!Smile.shows(s, c.tooth()) || terminal.contains(c.tooth())) {
        continue;
      }
      Optional<Tooth> spare =
          s.chart().standing().stream()
              .filter(t -> t.isMolar() && t.side() == c.tooth().side())
              .filter(t -> s.design().stream(Rest.class).anyMatch(r -> r.tooth() == t))
              .filter(t -> StandingClasps.on(s, t).isEmpty())
              .findFirst();
      if (spare.isEmpty()) {
        on.judged();
        continue;
      }
      Tooth molar = spare.get();
      Draft d =
          on.finding(c.tooth().toString(), Subject.of(s.arch(), c))
              .fact("the " + Naming.of(c) + " shows, while a rested molar behind it bears no clasp")
              .measured(molar + " without a clasp", "the molar clasped first");
      NewClasp.edit(s, molar)
          .ifPresent(
              e ->
                  d.remedy(
                      NewClasp.label(molar) + " instead",
                      DesignEdit.several(new DesignEdit.Remove(c.id()), e)));
      d.done();
    }
  }
}
