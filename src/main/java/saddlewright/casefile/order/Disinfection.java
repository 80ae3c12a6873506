package saddlewright.casefile.order;

import java.time.LocalDate;
import java.util.Objects;
import java.util.Optional;

/**
 * How something that was in the mouth was disinfected.
 *
 * @param what the thing, such as "upper impression"
 * @param agent with what; may be empty
 * @param minutes for how long
 * @param by by whom; may be empty
 * @param on the day
 */
public record Disinfection(
    String what, String agent, Optional<Integer> minutes, String by, Optional<LocalDate> on) {
  public Disinfection {
    Objects.requireNonNull(agent);
    Objects.requireNonNull(by);
    Objects.requireNonNull(on);
    if (what.isBlank()) {
      throw new IllegalArgumentException("a disinfection names what was disinfected");
    }
    if (minutes.filter(m -> m < 0 || m > 10_000).isPresent()) {
      throw new IllegalArgumentException("the time of a disinfection is from 0 to 10,000 minutes");
    }
  }
}
