package saddlewright.desktop.tools;

import java.util.Optional;
import saddlewright.design.Subject;

/**
 * Why a click would place nothing.
 *
 * @param words a few words, such as "36 is missing"
 * @param there what stands in the way, so that a click selects it
 */
public record Refusal(String words, Optional<Subject> there) {
  static Refusal of(String words) {
    return new Refusal(words, Optional.empty());
  }

  static Refusal there(String words, Subject subject) {
    return new Refusal(words, Optional.of(subject));
  }
}
