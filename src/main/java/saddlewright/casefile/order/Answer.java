package saddlewright.casefile.order;

import java.time.LocalDate;
import java.util.Objects;
import java.util.Optional;

/**
 * What stands in a field: nothing yet, words, or one of the three ways to say that there are none.
 *
 * @param state which of these
 * @param text the words; empty unless given
 * @param by the day on which it follows; only for what is to follow
 */
public record Answer(State state, String text, Optional<LocalDate> by) {
  /** How a field is answered. */
  public enum State {
    BLANK,
    GIVEN,
    NONE,
    NOT_APPLICABLE,
    TO_FOLLOW
  }

  public static final Answer BLANK = new Answer(State.BLANK, "", Optional.empty());
  public static final Answer NONE = new Answer(State.NONE, "", Optional.empty());
  public static final Answer NOT_APPLICABLE =
      new Answer(State.NOT_APPLICABLE, "", Optional.empty());

  public Answer {
    Objects.requireNonNull(state);
    if ((state == State.GIVEN) == text.isBlank()) {
      throw new IllegalArgumentException(
          state == State.GIVEN
              ? "an answer that is given has words"
              : "an answer that is not given has no words");
    }
    if (state != State.TO_FOLLOW && by.isPresent()) {
      throw new IllegalArgumentException("only what is to follow has a day by which it follows");
    }
  }

  /** The words, or blank when there are none. */
  public static Answer of(String text) {
    return text.isBlank() ? BLANK : new Answer(State.GIVEN, text, Optional.empty());
  }

  /** What follows, on a day when that is known. */
  public static Answer toFollow(Optional<LocalDate> by) {
    return new Answer(State.TO_FOLLOW, "", by);
  }

  public boolean isBlank() {
    return state == State.BLANK;
  }
}
