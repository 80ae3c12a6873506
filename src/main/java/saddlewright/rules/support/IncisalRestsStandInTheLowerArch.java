package saddlewright.rules.support;

import saddlewright.dentition.Arch;
import saddlewright.dentition.RestSite;
import saddlewright.design.DesignEdit;
import saddlewright.design.Rest;
import saddlewright.design.Subject;
import saddlewright.rules.Claim;
import saddlewright.rules.Judging;
import saddlewright.rules.Literature;
import saddlewright.rules.Rule;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;

/** Over an upper incisal edge the metal shows and lies in the bite. */
public final class IncisalRestsStandInTheLowerArch implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "incisal-rests-stand-in-the-lower-arch",
          "Incisal rests stand on lower front teeth only.",
          Severity.SHOULD,
          Source.read(Literature.ANKARA + "; " + Literature.STRATTON));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    for (Rest r : s.design().all(Rest.class)) {
      if (!r.site().isIncisal() || !r.tooth().isAnterior()) {
        continue;
      }
      if (s.arch() == Arch.LOWER) {
        on.upheld("is incisal on a lower tooth, where the lip hides it", Subject.of(s.arch(), r));
        continue;
      }
      on.finding(r.tooth().toString(), Subject.of(s.arch(), r))
          .fact("an incisal rest on an upper tooth shows and lies in the bite")
          .measured("incisal rest", "cingulum rest")
          .remedy(
              "Make it a cingulum rest",
              new DesignEdit.Change(r.withSite(RestSite.CINGULUM).withForm(Rest.Form.STANDARD)))
          .done();
    }
  }
}
