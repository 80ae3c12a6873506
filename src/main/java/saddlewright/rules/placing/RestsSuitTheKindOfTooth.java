package saddlewright.rules.placing;

import java.util.List;
import saddlewright.dentition.End;
import saddlewright.dentition.RestSite;
import saddlewright.design.DesignEdit;
import saddlewright.design.Rest;
import saddlewright.design.Subject;
import saddlewright.rules.Claim;
import saddlewright.rules.Finding;
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
    found(s).forEach(on::add);
  }

  private List<Finding> found(Situation s) {
    return s.design().stream(Rest.class)
        .filter(r -> !r.site().existsOn(r.tooth()))
        .map(r -> finding(s, r))
        .toList();
  }

  private Finding finding(Situation s, Rest r) {
    RestSite site = lawful(s, r);
    Rest moved =
        new Rest(r.id(), r.tooth(), site, Rest.Form.STANDARD, r.seat(), r.indirectRetainer());
    return finding(r.tooth().toString(), Subject.of(s.arch(), r))
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
