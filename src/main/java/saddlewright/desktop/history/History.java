package saddlewright.desktop.history;

import java.time.Instant;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import saddlewright.casefile.Case;

/**
 * The states through which a case has come since it was laid on the desk, each with the edit that
 * led to it; one can go to any of them.
 */
public final class History {
  /**
   * An edit that was made.
   *
   * @param name what undo calls it
   * @param at when it was made
   */
  public record Entry(String name, Instant at) {}

  private record State(Optional<Entry> entry, Case subject) {}

  // Cases share all that an edit leaves as it was, so that a state costs little; there is no limit.
  private final List<State> states = new ArrayList<>();
  private final InstantSource clock;
  private int now;
  private Optional<Gesture> underWay = Optional.empty();

  public History() {
    this(InstantSource.system());
  }

  public History(InstantSource clock) {
    this.clock = clock;
  }

  /** Forgets all, and begins with a state. */
  public void begin(Case first) {
    states.clear();
    states.add(new State(Optional.empty(), first));
    now = 0;
    underWay = Optional.empty();
  }

  /** Notes that an edit of this name led to the state; what had been taken back is forgotten. */
  public void push(String name, Case next) {
    states.subList(now + 1, states.size()).clear();
    states.add(new State(Optional.of(new Entry(name, clock.instant())), next));
    now++;
    underWay = Optional.empty();
  }

  /**
   * The same; edits of one gesture that follow each other are one entry, by the name of the last,
   * and none when the gesture ends where it began.
   */
  public void push(String name, Case next, Gesture gesture) {
    if (!underWay.equals(Optional.of(gesture))) {
      push(name, next);
      underWay = Optional.of(gesture);
      return;
    }
    states.remove(now);
    now--;
    if (next.equals(states.get(now).subject())) {
      underWay = Optional.empty();
    } else {
      push(name, next);
      underWay = Optional.of(gesture);
    }
  }

  /** The gesture under way is over: what it does further is another entry. */
  public void endGesture() {
    underWay = Optional.empty();
  }

  /** Name of the edit that undo would take back. */
  public Optional<String> undoName() {
    return now == 0 ? Optional.empty() : name(now);
  }

  public Optional<String> redoName() {
    return now + 1 < states.size() ? name(now + 1) : Optional.empty();
  }

  private Optional<String> name(int state) {
    return states.get(state).entry().map(Entry::name);
  }

  /** The state before the last edit; empty when there is none. */
  public Optional<Case> undo() {
    return goTo(now - 1);
  }

  /** The state after the edit that was taken back last. */
  public Optional<Case> redo() {
    return goTo(now + 1);
  }

  /**
   * Goes to a state: 0 is the case as it was laid on the desk, n as it was after the nth edit.
   *
   * @return the state; empty when there is none of that number
   */
  public Optional<Case> goTo(int state) {
    if (state < 0 || state >= states.size()) {
      return Optional.empty();
    }
    now = state;
    underWay = Optional.empty();
    return Optional.of(states.get(now).subject());
  }

  /** The edits in order, also those that have been taken back. */
  public List<Entry> entries() {
    return states.stream().flatMap(s -> s.entry().stream()).toList();
  }

  /** How many of the edits stand: the number of the present state. */
  public int standing() {
    return now;
  }

  /** The case after the nth edit. */
  public Case state(int n) {
    return states.get(n).subject();
  }
}
