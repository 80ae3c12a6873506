package saddlewright.rules.indirect;

import java.util.List;
import saddlewright.classification.KennedyClass;
import saddlewright.design.Rest;
import saddlewright.design.Subject;
import saddlewright.rules.Claim;
import saddlewright.rules.Draft;
import saddlewright.rules.Judging;
import saddlewright.rules.Literature;
import saddlewright.rules.Naming;
import saddlewright.rules.Rule;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;

/** Two lifting saddles each pull on their own side; a retainer on one side lets the other twist. */
public final class ClassOneIndirectRetainersStandOnBothSides implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "class-one-indirect-retainers-stand-on-both-sides",
          "In Class I an indirect retainer stands on each side.",
          Severity.SHOULD,
          Source.read(Literature.ANKARA + "; " + Literature.INDIRECT_SLIDES));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    if (s.classification().kennedy() != KennedyClass.I) {
      return;
    }
    List<LiftingSaddle> all = LiftingSaddle.all(s);
    boolean any = all.stream().anyMatch(x -> !x.serving().isEmpty());
    for (LiftingSaddle lifting : all) {
      List<Rest> own =
          lifting.serving().stream().filter(r -> r.tooth().side() == lifting.side()).toList();
      own.forEach(
          r ->
              on.upheld(
                  "keeps " + Naming.of(lifting.saddle()) + " down on its own side",
                  Subject.of(s.arch(), r)));
      if (own.isEmpty() && any) {
        bare(s, lifting, on);
      }
    }
  }

  private static void bare(Situation s, LiftingSaddle lifting, Judging on) {
    Draft d =
        on.finding(Naming.of(lifting.saddle()), Subject.of(s.arch(), lifting.saddle()))
            .fact("its side has no indirect retainer beyond the " + s.profile().axis().words())
            .measured("0 on this side", "1 on each side");
    IndirectSite.all(s, lifting.facts()).stream()
        .filter(x -> x.tooth().side() == lifting.side())
        .limit(2)
        .forEach(x -> d.remedy(x.label(), x.edit(s)));
    d.done();
  }
}
