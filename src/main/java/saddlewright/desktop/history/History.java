package saddlewright.desktop.history;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;
import saddlewright.casefile.Case;

/**
 * The states of a case that one can go back to and forward again, each with what led away from it.
 */
public final class History {
  /** Cases share all that did not change, so that a state costs little. */
  private static final int DEPTH = 500;

  /** A state, and the name of the edit between it and its neighbour. */
  private record Step(String name, Case state) {}

  private final Deque<Step> past = new ArrayDeque<>();
  private final Deque<Step> future = new ArrayDeque<>();

  /** Notes that an edit of this name leads away from the state. */
  public void push(String name, Case before) {
    past.push(new Step(name, before));
    future.clear();
    if (past.size() > DEPTH) {
      past.removeLast();
    }
  }

  public void clear() {
    past.clear();
    future.clear();
  }

  /** Name of the edit that undo would take back. */
  public Optional<String> undoName() {
    return Optional.ofNullable(past.peek()).map(Step::name);
  }

  public Optional<String> redoName() {
    return Optional.ofNullable(future.peek()).map(Step::name);
  }

  /** The state before the last edit; empty when there is none. */
  public Optional<Case> undo(Case now) {
    return move(past, future, now);
  }

  /** The state after the edit that was taken back last. */
  public Optional<Case> redo(Case now) {
    return move(future, past, now);
  }

  private static Optional<Case> move(Deque<Step> from, Deque<Step> to, Case now) {
    if (from.isEmpty()) {
      return Optional.empty();
    }
    Step step = from.pop();
    to.push(new Step(step.name(), now));
    return Optional.of(step.state());
  }
}
