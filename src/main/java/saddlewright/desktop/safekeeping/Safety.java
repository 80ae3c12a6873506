package saddlewright.desktop.safekeeping;

import java.time.Instant;
import java.util.Optional;

/**
 * How safe the work is that is not saved.
 *
 * @param kept when the recovery copy was written last; empty when there is none
 * @param trouble why it cannot be written; empty when nothing is wrong
 */
public record Safety(Optional<Instant> kept, Optional<String> trouble) {
  public static final Safety NOTHING_TO_KEEP = new Safety(Optional.empty(), Optional.empty());

  static Safety keptAt(Instant at) {
    return new Safety(Optional.of(at), Optional.empty());
  }

  Safety failing(String why) {
    return new Safety(kept, Optional.of(why));
  }
}
