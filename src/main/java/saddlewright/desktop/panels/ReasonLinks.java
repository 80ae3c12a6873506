package saddlewright.desktop.panels;

import java.util.List;
import java.util.Optional;
import saddlewright.design.Subject;
import saddlewright.desktop.Words;
import saddlewright.desktop.Worktable;
import saddlewright.rules.Credit;

/** The design's own argument for one subject: each line opens the page of the rule it answers. */
final class ReasonLinks {
  private ReasonLinks() {}

  /** Adds the lines under a heading; nothing where there are none. Whether there were any. */
  static boolean add(Form form, Worktable table, Subject subject, String heading) {
    List<Credit> credits = table.assessment().report().creditsOf(subject);
    if (credits.isEmpty()) {
      return false;
    }
    form.heading(Words.of(heading));
    for (Credit c : credits) {
      form.link(Words.capital(c.words()), () -> table.pageProperty().set(Optional.of(c.ruleId())));
    }
    return true;
  }
}
