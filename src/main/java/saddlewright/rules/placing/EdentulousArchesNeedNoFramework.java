package saddlewright.rules.placing;

import java.util.List;
import saddlewright.classification.KennedyClass;
import saddlewright.design.Component;
import saddlewright.design.DesignEdit;
import saddlewright.design.Note;
import saddlewright.design.Saddle;
import saddlewright.design.Subject;
import saddlewright.design.UnknownComponent;
import saddlewright.rules.Amount;
import saddlewright.rules.Claim;
import saddlewright.rules.Judging;
import saddlewright.rules.Rule;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;

/** A framework has nothing to rest on or to hold where no tooth stands. */
public final class EdentulousArchesNeedNoFramework implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "edentulous-arches-need-no-framework",
          "An arch without teeth gets a complete denture, not a framework.",
          Severity.MUST,
          Source.commonPractice(
              "rests and clasps need teeth; Kennedy classes are of partly dentate arches"));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    if (s.classification().kennedy() != KennedyClass.EDENTULOUS) {
      return;
    }
    List<Component> metal =
        s.design().components().stream().filter(EdentulousArchesNeedNoFramework::isMetal).toList();
    if (metal.isEmpty()) {
      on.judged();
      return;
    }
    on.finding(s.arch().code() + " arch", Subject.of(s.arch()))
        .fact("a framework is drawn where no tooth stands")
        .measured(Amount.of(metal.size(), "part") + " of a framework", "a complete denture")
        .remedy(
            "Take the framework away",
            new DesignEdit.Several(
                metal.stream().map(c -> (DesignEdit) new DesignEdit.Remove(c.id())).toList()))
        .done();
  }

  private static boolean isMetal(Component c) {
    return !(c instanceof Saddle || c instanceof Note || c instanceof UnknownComponent);
  }
}
