package saddlewright.desktop.sheet;

import java.util.ArrayList;
import java.util.List;
import saddlewright.casefile.Assessment;
import saddlewright.design.Component;
import saddlewright.desktop.subject.ComponentWords;
import saddlewright.desktop.subject.Facts;
import saddlewright.desktop.tools.Proposal;
import saddlewright.rules.Situation;

/** What a proposal would bring, as it would measure. */
final class NewParts {
  private NewParts() {}

  /** The arch as the proposal would make it. */
  static Situation situation(Proposal proposal, Assessment now) {
    Situation old = now.arch(proposal.arch());
    return old.next(
        proposal.next().chart(proposal.arch()),
        old.opposing(),
        proposal.next().design(proposal.arch()),
        old.profile());
  }

  /** The chief facts of each component that would be new or changed, one line for each. */
  static List<String> facts(Situation old, Situation then) {
    List<String> out = new ArrayList<>();
    for (Component c : then.design().components()) {
      if (old.design().find(c.id()).filter(c::equals).isEmpty()) {
        List<String> facts =
            then.layout().find(c.id()).map(l -> Facts.chief(l, then.layout())).orElse(List.of());
        if (!facts.isEmpty()) {
          out.add(ComponentWords.brief(c) + ": " + String.join(", ", facts));
        }
      }
    }
    return out;
  }
}
