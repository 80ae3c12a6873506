package saddlewright.rules;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The findings of a case with the waivers that answer them, gravest first.
 *
 * @param entries all findings, waived or not
 */
public record Report(List<Entry> entries) {
  /** Whether a finding still stands. */
  public enum State {
    OPEN,
    WAIVED,
    /** Waived once, for facts that have changed since: it stands again. */
    STALE
  }

  /** A finding and the waiver given for it, if any. */
  public record Entry(Finding finding, State state, Optional<Waiver> waiver) {
    public boolean stands() {
      return state != State.WAIVED;
    }
  }

  public Report {
    entries = List.copyOf(entries);
  }

  /** Judges both arches by the whole rule book; waivers do not answer a hard stop. */
  public static Report of(List<Situation> arches, List<Waiver> waivers) {
    List<Entry> out = new ArrayList<>();
    for (Situation s : arches) {
      for (Rule rule : RuleBook.rules()) {
        for (Finding f : rule.judge(s)) {
          out.add(
              rule.isHardStop() ? new Entry(f, State.OPEN, Optional.empty()) : entry(f, waivers));
        }
      }
    }
    out.sort(
        Comparator.comparing((Entry e) -> e.finding().severity())
            .thenComparing(e -> e.finding().arch())
            .thenComparing(e -> e.finding().key()));
    return new Report(out);
  }

  private static Entry entry(Finding f, List<Waiver> waivers) {
    Optional<Waiver> w = waivers.stream().filter(x -> x.findingKey().equals(f.key())).findFirst();
    State state =
        w.map(x -> x.facts().equals(f.facts()) ? State.WAIVED : State.STALE).orElse(State.OPEN);
    return new Entry(f, state, w);
  }

  public List<Finding> standing() {
    return entries.stream().filter(Entry::stands).map(Entry::finding).toList();
  }

  public long count(Severity severity) {
    return standing().stream().filter(f -> f.severity() == severity).count();
  }
}
