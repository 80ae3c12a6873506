package saddlewright.casefile.order;

import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import saddlewright.dentition.Arch;
import saddlewright.design.ComponentId;

/**
 * What a coursework sheet carries besides the design.
 *
 * @param candidate the candidate's number; never a name
 * @param justified whether the schedule has a column for the justification of each component
 * @param stepwise whether the design is shown once more as it grows, step by step
 * @param sealed whether the PDF is handed in without the case inside it
 * @param justifications words of justification by arch and component, such as {@code lower/clasp-1}
 */
public record Coursework(
    String candidate,
    boolean justified,
    boolean stepwise,
    boolean sealed,
    Map<String, String> justifications) {
  public static final Coursework EMPTY = new Coursework("", false, false, false, Map.of());

  public Coursework {
    Objects.requireNonNull(candidate);
    Map<String, String> kept = new TreeMap<>(justifications);
    kept.values().removeIf(String::isBlank);
    justifications = java.util.Collections.unmodifiableMap(kept);
  }

  /** The key under which the justification of a component stands. */
  public static String key(Arch arch, ComponentId component) {
    return arch.code() + "/" + component;
  }

  public Coursework withCandidate(String number) {
    return new Coursework(number, justified, stepwise, sealed, justifications);
  }

  public Coursework withJustified(boolean on) {
    return new Coursework(candidate, on, stepwise, sealed, justifications);
  }

  public Coursework withStepwise(boolean on) {
    return new Coursework(candidate, justified, on, sealed, justifications);
  }

  public Coursework withSealed(boolean on) {
    return new Coursework(candidate, justified, stepwise, on, justifications);
  }

  public Coursework withJustification(String component, String words) {
    Map<String, String> next = new TreeMap<>(justifications);
    next.put(component, words);
    return new Coursework(candidate, justified, stepwise, sealed, next);
  }
}
