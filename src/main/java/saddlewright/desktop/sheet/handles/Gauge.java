package saddlewright.desktop.sheet.handles;

import java.util.Optional;
import saddlewright.design.ComponentId;
import saddlewright.design.Subject;
import saddlewright.desktop.Words;
import saddlewright.desktop.subject.Facts;
import saddlewright.layout.Laid;
import saddlewright.layout.Measure;
import saddlewright.rules.Credit;
import saddlewright.rules.Finding;
import saddlewright.rules.Quantity;
import saddlewright.rules.RuleBook;
import saddlewright.rules.Situation;
import saddlewright.rules.Verdict;

/**
 * A rule by which a handle is watched: what it says, in the millimetres in which it says it.
 *
 * @param rule id of the rule
 * @param asked the limit that is told where the rule is content
 * @param measure what is read off where the rule has nothing to say
 */
public record Gauge(String rule, Optional<Quantity> asked, Optional<Measure> measure) {
  static Gauge of(String rule, Quantity asked, Measure measure) {
    return new Gauge(rule, Optional.of(asked), Optional.of(measure));
  }

  static Gauge of(String rule, Quantity asked) {
    return new Gauge(rule, Optional.of(asked), Optional.empty());
  }

  static Gauge of(String rule, Measure measure) {
    return new Gauge(rule, Optional.empty(), Optional.of(measure));
  }

  static Gauge of(String rule) {
    return new Gauge(rule, Optional.empty(), Optional.empty());
  }

  /** What there is to say of a component of the design; empty where nothing is measured. */
  public Optional<Reading> read(Situation s, ComponentId id) {
    Subject subject = new Subject.OfComponent(s.arch(), id);
    Verdict verdict = RuleBook.find(rule).orElseThrow().judge(s);
    Optional<Finding> fault =
        verdict.findings().stream().filter(f -> f.subjects().contains(subject)).findFirst();
    if (fault.isPresent()) {
      return fault.map(f -> new Reading(f.sentence(), true));
    }
    return verdict.credits().stream()
        .filter(c -> c.subject().equals(subject))
        .findFirst()
        .map(c -> new Reading(content(c, s), false))
        .or(() -> measured(s, id));
  }

  private String content(Credit credit, Situation s) {
    String words = Words.capital(credit.words());
    return asked
        .map(q -> Words.of("handle.asked", words, q.amount(s.profile().limit(q))))
        .orElse(words);
  }

  private Optional<Reading> measured(Situation s, ComponentId id) {
    Optional<Laid> laid = s.layout().find(id);
    return measure.flatMap(
        m ->
            laid.flatMap(
                l ->
                    l.measures().containsKey(m)
                        ? Optional.of(new Reading(Facts.of(m, l.measures().get(m)), false))
                        : Optional.empty()));
  }
}
