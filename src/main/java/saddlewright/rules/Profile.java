package saddlewright.rules;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;

/**
 * A school's thresholds, each with its source beside it.
 *
 * @param id such as "uk-teaching"
 * @param title as shown
 * @param axis the line about which indirect retention is judged
 * @param limits every {@link Quantity} with its limit
 */
public record Profile(String id, String title, Axis axis, Map<Quantity, Threshold> limits) {

  /** The line about which a denture is taken to turn when a saddle lifts. */
  public enum Axis {
    /** Through the retentive tips. */
    CLASP("clasp axis"),
    /** Through the most distal rests. */
    SUPPORT("support axis");

    private final String words;

    Axis(String words) {
      this.words = words;
    }

    public String words() {
      return words;
    }
  }

  public static final Profile UK_TEACHING =
      new Profile("uk-teaching", "UK teaching", Axis.CLASP, UkTeaching.limits());

  public Profile {
    Map<Quantity, Threshold> all = new EnumMap<>(Quantity.class);
    all.putAll(limits);
    for (Quantity q : Quantity.values()) {
      if (!all.containsKey(q)) {
        throw new IllegalArgumentException("profile " + id + " sets no limit for " + q.words());
      }
    }
    limits = Collections.unmodifiableMap(all);
  }

  /** The limit in the unit of the quantity. */
  public double limit(Quantity quantity) {
    return limits.get(quantity).value();
  }

  public Source source(Quantity quantity) {
    return limits.get(quantity).source();
  }
}
