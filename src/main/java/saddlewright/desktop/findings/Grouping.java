package saddlewright.desktop.findings;

import java.util.Optional;
import saddlewright.dentition.Tooth;
import saddlewright.design.Subject;
import saddlewright.desktop.StepOfRule;
import saddlewright.desktop.Words;
import saddlewright.desktop.Worktable;
import saddlewright.desktop.subject.ComponentWords;

/** By what the entries of the report are drawn together. */
enum Grouping {
  WEIGHT,
  STEP,
  TOOTH;

  /**
   * A group of entries.
   *
   * @param order where it stands among the others
   */
  record Group(int order, String title, String style) implements Comparable<Group> {
    @Override
    public int compareTo(Group o) {
      return order == o.order ? title.compareTo(o.title) : Integer.compare(order, o.order);
    }
  }

  private static final int QUESTIONS = 3;
  private static final int WAIVED = 4;

  Group of(ReportCard card, Worktable table) {
    return switch (this) {
      case WEIGHT -> byWeight(card);
      case STEP -> byStep(card);
      case TOOTH -> byTooth(card, table);
    };
  }

  private static Group byWeight(ReportCard card) {
    if (card instanceof FindingCard f) {
      if (!f.entry().stands()) {
        return new Group(WAIVED, Words.of("findings.waived"), "waived");
      }
      var severity = f.entry().finding().severity();
      return new Group(
          severity.ordinal(),
          Words.of("findings." + severity.code()),
          "severity-" + severity.code());
    }
    return new Group(QUESTIONS, Words.of("findings.questions"), "question");
  }

  private static Group byStep(ReportCard card) {
    if (card instanceof QuestionCard) {
      return new Group(-1, Words.of("findings.questions"), "question");
    }
    var step = StepOfRule.of(card.rules().stream().findFirst());
    return new Group(step.ordinal(), Words.of(step), "plain");
  }

  private static Group byTooth(ReportCard card, Worktable table) {
    Subject chief = card.subjects().get(0);
    Optional<Tooth> tooth = tooth(chief, table);
    if (tooth.isEmpty()) {
      return new Group(
          chief.arch().ordinal() * 100, Words.of("subject.arch." + chief.arch().code()), "plain");
    }
    Tooth t = tooth.get();
    return new Group(
        t.arch().ordinal() * 100 + 1 + t.place(),
        ComponentWords.of(Subject.of(t), table.current()),
        "plain");
  }

  private static Optional<Tooth> tooth(Subject subject, Worktable table) {
    if (subject instanceof Subject.OfTooth t) {
      return Optional.of(t.tooth());
    }
    if (subject instanceof Subject.OfArea a) {
      return Optional.of(a.span().first());
    }
    return table.component(subject).flatMap(c -> c.teeth().stream().findFirst());
  }
}
