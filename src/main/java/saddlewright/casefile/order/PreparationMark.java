package saddlewright.casefile.order;

import java.time.LocalDate;
import java.util.Objects;
import java.util.Optional;

/**
 * What a person has noted of a preparation that the design asks for: how far it is, by whom, and
 * what they wrote over the size that follows from the design. It outlives the preparation: what has
 * been cut stays cut when the component that asked for it is taken away.
 *
 * @param key key of the preparation, as {@code prescription} makes it of what asks for it
 * @param state how far it is
 * @param on the day it was done or declined
 * @param by who did it; may be empty
 * @param checkedBy who checked it; may be empty
 * @param target own words for the target, in place of the derived; may be empty
 * @param note anything to add, such as the reason for which it was declined; may be empty
 */
public record PreparationMark(
    String key,
    State state,
    Optional<LocalDate> on,
    String by,
    String checkedBy,
    String target,
    String note) {
  /** How far a preparation is. */
  public enum State {
    PLANNED("planned"),
    DONE("done"),
    CHECKED("checked"),
    DECLINED("declined");

    private final String words;

    State(String words) {
      this.words = words;
    }

    public String words() {
      return words;
    }
  }

  public PreparationMark {
    Objects.requireNonNull(state);
    Objects.requireNonNull(on);
    Objects.requireNonNull(by);
    Objects.requireNonNull(checkedBy);
    Objects.requireNonNull(target);
    Objects.requireNonNull(note);
    if (key.isBlank()) {
      throw new IllegalArgumentException("a mark names the preparation that it belongs to");
    }
  }

  /** The mark of a preparation of which nothing has been noted. */
  public static PreparationMark planned(String key) {
    return new PreparationMark(key, State.PLANNED, Optional.empty(), "", "", "", "");
  }

  /** Whether it says nothing that would not be so without it. */
  public boolean isIdle() {
    return equals(planned(key));
  }

  public PreparationMark withState(State other) {
    return new PreparationMark(key, other, on, by, checkedBy, target, note);
  }

  public PreparationMark withOn(Optional<LocalDate> day) {
    return new PreparationMark(key, state, day, by, checkedBy, target, note);
  }

  public PreparationMark withBy(String who) {
    return new PreparationMark(key, state, on, who, checkedBy, target, note);
  }

  public PreparationMark withCheckedBy(String who) {
    return new PreparationMark(key, state, on, by, who, target, note);
  }

  public PreparationMark withTarget(String words) {
    return new PreparationMark(key, state, on, by, checkedBy, words, note);
  }

  public PreparationMark withNote(String words) {
    return new PreparationMark(key, state, on, by, checkedBy, target, words);
  }
}
