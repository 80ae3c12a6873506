package saddlewright.rules;

import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * What a school teaches: its limits and how it weighs the rules, each with its source.
 *
 * @param id such as "uk-teaching"
 * @param title as shown
 * @param version of the profile, such as "1"
 * @param axis the line about which indirect retention is judged
 * @param limits every {@link Quantity} with its limit
 * @param weights rules that are not weighed as usual, by id
 */
public record Profile(
    String id,
    String title,
    String version,
    Axis axis,
    Map<Quantity, Threshold> limits,
    Map<String, Weighting> weights) {

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
      new Profile("uk-teaching", "UK teaching", "1", Axis.CLASP, UkTeaching.limits(), Map.of());

  public static final Profile NORTH_AMERICAN_TEACHING =
      new Profile(
          "north-american-teaching",
          "North American teaching",
          "1",
          Axis.SUPPORT,
          departing(NorthAmericanTeaching.limits()),
          NorthAmericanTeaching.weights());

  public static final Profile HYGIENE_FIRST =
      new Profile(
          "hygiene-first",
          "Hygiene first",
          "1",
          Axis.CLASP,
          departing(HygieneFirst.limits()),
          HygieneFirst.weights());

  /** The profiles that come with the program. */
  public static final List<Profile> BUILT_IN =
      List.of(UK_TEACHING, NORTH_AMERICAN_TEACHING, HYGIENE_FIRST);

  public Profile {
    Map<Quantity, Threshold> all = new EnumMap<>(Quantity.class);
    all.putAll(limits);
    for (Quantity q : Quantity.values()) {
      if (!all.containsKey(q)) {
        throw new IllegalArgumentException("profile " + id + " sets no limit for " + q.words());
      }
    }
    limits = Collections.unmodifiableMap(all);
    weights = Collections.unmodifiableMap(new TreeMap<>(weights));
  }

  /** The limits of British teaching with the departures of another school. */
  private static Map<Quantity, Threshold> departing(Map<Quantity, Threshold> departures) {
    Map<Quantity, Threshold> all = new EnumMap<>(UK_TEACHING.limits());
    all.putAll(departures);
    return all;
  }

  /** The built-in profile with this id. */
  public static Optional<Profile> builtIn(String id) {
    return BUILT_IN.stream().filter(p -> p.id().equals(id)).findFirst();
  }

  /** The limit in the unit of the quantity. */
  public double limit(Quantity quantity) {
    return limits.get(quantity).value();
  }

  public Source source(Quantity quantity) {
    return limits.get(quantity).source();
  }

  /** Whether the school judges designs by this rule at all. */
  public boolean teaches(Rule rule) {
    Weighting w = weights.get(rule.id());
    return w == null || w.severity().isPresent() || rule.isHardStop();
  }

  /** The gravest severity of the rule in this school. */
  public Severity severity(Claim claim) {
    Weighting w = weights.get(claim.id());
    return w == null ? claim.severity() : w.severity().orElse(claim.severity());
  }

  /** A finding as many steps below the school's severity as the rule put it below its own. */
  Severity severity(Claim claim, Severity weighed) {
    int below = weighed.ordinal() - claim.severity().ordinal();
    int last = Severity.values().length - 1;
    return Severity.values()[Math.min(last, Math.max(0, severity(claim).ordinal() + below))];
  }
}
