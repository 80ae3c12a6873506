package saddlewright.desktop.roll;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import saddlewright.casefile.Assessment;
import saddlewright.dentition.Notation;
import saddlewright.dentition.Tooth;
import saddlewright.dentition.ToothNames;
import saddlewright.design.Component;
import saddlewright.design.Subject;
import saddlewright.desktop.Words;
import saddlewright.desktop.subject.ComponentWords;
import saddlewright.desktop.subject.Facts;
import saddlewright.desktop.subject.Spoken;
import saddlewright.rules.Finding;
import saddlewright.rules.Severity;

/** What a line of the list says: to the eye in three parts, to the ear as one sentence. */
final class RowWords {
  /**
   * What the eye reads.
   *
   * @param mark the number of a tooth; empty for other lines
   * @param name what it is
   * @param more what else is to be said, as far as the lines below do not
   */
  record Parts(String mark, String name, String more) {}

  private final Assessment now;
  private final Notation notation;
  private final Spoken spoken;

  RowWords(Assessment now, Notation notation) {
    this.now = now;
    this.notation = notation;
    this.spoken = Spoken.of(now, notation);
  }

  /** The parts; what lies on a tooth is named in its line while the lines below it are folded. */
  Parts parts(Row row, boolean folded) {
    return switch (row.kind()) {
      case ARCH ->
          new Parts(
              "",
              Words.of("subject.arch." + row.subject().arch().code()),
              now.arch(row.subject().arch()).classification().label());
      case AREA ->
          new Parts("", Words.capital(spoken.area(((Subject.OfArea) row.subject()).span())), "");
      case TOOTH -> tooth(((Subject.OfTooth) row.subject()).tooth(), folded);
      case COMPONENT -> component(row.subject());
      case SOFT_TISSUES ->
          new Parts("", Words.of("roll.soft"), spoken.softTissues(row.subject().arch()));
    };
  }

  private Parts tooth(Tooth tooth, boolean folded) {
    // The line above says which arch it is.
    String name = ToothNames.full(tooth).substring(tooth.arch().code().length() + 1);
    List<String> more = new ArrayList<>();
    more.add(spoken.state(tooth));
    if (folded) {
      more.addAll(spoken.parts(tooth));
    }
    return new Parts(notation.format(tooth), name, String.join(", ", more));
  }

  private Parts component(Subject subject) {
    Optional<Component> c = now.subject().design(subject.arch()).find(subject.component().get());
    return new Parts("", c.map(spoken::component).orElse(""), String.join(", ", facts(subject)));
  }

  private List<String> facts(Subject subject) {
    var layout = now.arch(subject.arch()).layout();
    return subject
        .component()
        .flatMap(layout::find)
        .map(l -> Facts.chief(l, layout))
        .orElse(List.of());
  }

  /** The whole line as one sentence. */
  String sentence(Row row) {
    if (row.kind() == Row.Kind.SOFT_TISSUES) {
      return Words.of("roll.soft") + ": " + spoken.softTissues(row.subject().arch());
    }
    if (row.kind() != Row.Kind.COMPONENT) {
      return Words.capital(spoken.of(row.subject()));
    }
    List<String> out = new ArrayList<>();
    now.subject()
        .design(row.subject().arch())
        .find(row.subject().component().get())
        .ifPresent(c -> out.add(ComponentWords.full(c)));
    out.addAll(facts(row.subject()));
    spoken.findings(about(row)).ifPresent(out::add);
    return String.join(", ", out);
  }

  /** Whether a finding is counted at the line. */
  Predicate<Finding> about(Row row) {
    if (row.kind() == Row.Kind.SOFT_TISSUES) {
      return f -> false;
    }
    return row.subject() instanceof Subject.OfTooth t
        ? spoken.about(t.tooth())
        : f -> f.subjects().contains(row.subject());
  }

  /** The gravest of the findings at a line. */
  Optional<Severity> gravest(Row row) {
    return now.report().standing().stream()
        .filter(about(row))
        .map(Finding::severity)
        .min(Severity::compareTo);
  }

  /** What its findings are, in words. */
  Optional<String> findings(Row row) {
    return spoken.findings(about(row));
  }
}
