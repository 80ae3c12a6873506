package saddlewright.rules.placing;

import saddlewright.dentition.End;
import saddlewright.dentition.RestSite;
import saddlewright.design.DesignEdit;
import saddlewright.design.Rest;
import saddlewright.design.Subject;
import saddlewright.rules.Claim;
import saddlewright.rules.Judging;
import saddlewright.rules.Naming;
import saddlewright.rules.Rule;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;

/** Occlusal rests need an occlusal surface, cingulum and incisal rests a front tooth. */
public final class RestsSuitTheKindOfTooth implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "rests-suit-the-kind-of-tooth",
          "Occlusal rests lie on premolars and molars, cingulum and incisal rests on front teeth.",
          Severity.MUST,
          Source.commonPractice("anatomy of the crown"));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    for (Rest r : s.design().all(Rest.class)) {
      if (r.site().existsOn(r.tooth())) {
        on.judged();
      } else {
        find(s, r, on);
      }
    }
  }

  private static void find(Situation s, Rest r, Judging on) {
    Rest moved = r.withSite(lawful(s, r)).withForm(Rest.Form.STANDARD);
    on.finding(r.tooth().toString(), Subject.of(s.arch(), r))
        .fact(Naming.of(r) + ", but this tooth has no such place")
        .measured(
            surface(r.site()),
            r.tooth().isAnterior() ? "cingulum or incisal edge" : "occlusal surface")
        .remedy("Make it a " + Naming.of(moved), new DesignEdit.Change(moved))
        .done();
  }

  private static RestSite lawful(Situation s, Rest r) {
    if (r.tooth().isAnterior()) {
      return RestSite.CINGULUM;
    }
    End end =
        r.site()
            .end()
            .orElseGet(
                () ->
                    r.tooth()
                            .neighbour(End.DISTAL)
                            .filter(t -> s.design().saddleAt(t).isPresent())
                            .isPresent()
                        ? End.DISTAL
                        : End.MESIAL);
    return RestSite.occlusal(end);
  }

  private static String surface(RestSite site) {
    return site.isOcclusal() ? "occlusal surface" : site.isIncisal() ? "incisal edge" : "cingulum";
  }
}
