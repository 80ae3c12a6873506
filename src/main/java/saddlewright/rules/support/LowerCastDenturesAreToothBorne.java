package saddlewright.rules.support;

import java.util.ArrayList;
import java.util.List;
import saddlewright.dentition.Arch;
import saddlewright.dentition.Tooth;
import saddlewright.design.DesignEdit;
import saddlewright.design.Subject;
import saddlewright.rules.Amount;
import saddlewright.rules.AreaSupport;
import saddlewright.rules.Claim;
import saddlewright.rules.EndSupport;
import saddlewright.rules.Judging;
import saddlewright.rules.Literature;
import saddlewright.rules.NewRest;
import saddlewright.rules.Rule;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;
import saddlewright.rules.ToothList;

/** A lower framework without rests sinks along the teeth and strips the gums. */
public final class LowerCastDenturesAreToothBorne implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "lower-cast-dentures-are-tooth-borne",
          "A lower cast denture is carried by teeth.",
          Severity.SHOULD,
          Source.read(Literature.BRITISH_NOTES + "; " + Literature.DAYA));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    List<AreaSupport> areas = AreaSupport.all(s);
    if (s.arch() != Arch.LOWER || areas.isEmpty() || s.design().majorConnector().isEmpty()) {
      return;
    }
    List<EndSupport> ends = areas.stream().flatMap(a -> a.ends().stream()).toList();
    boolean carried = ends.stream().anyMatch(e -> e.isRested() || !e.nextRests().isEmpty());
    if (carried || ends.isEmpty()) {
      on.judged();
      return;
    }
    List<DesignEdit> edits = new ArrayList<>();
    List<Tooth> teeth = new ArrayList<>();
    for (AreaSupport a : areas) {
      for (EndSupport e : a.ends()) {
        if (!teeth.contains(e.abutment())) {
          teeth.add(e.abutment());
          edits.add(NewRest.edit(s, e.abutment(), a.isFreeEnd() ? e.farSite() : e.facingSite()));
        }
      }
    }
    on.finding("lower denture", Subject.of(s.arch()))
        .fact("a framework that lies on mucosa alone")
        .measured("0 of " + Amount.of(areas.size(), "saddle") + " rested", "rests on the abutments")
        .remedy("Rest " + ToothList.of(teeth), new DesignEdit.Several(edits))
        .done();
  }
}
