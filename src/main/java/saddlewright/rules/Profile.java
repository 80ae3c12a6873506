package saddlewright.rules;

import java.text.Normalizer;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * What a school teaches: its limits and how it weighs the rules, each with its source.
 *
 * @param standing how it came to be known
 * @param id such as "uk-teaching"
 * @param title as shown
 * @param version of the profile, such as "1"
 * @param basedOn id of the built-in profile from which it departs; empty for the first of all
 * @param axis the line about which indirect retention is judged
 * @param limits every {@link Quantity} with its limit
 * @param weights rules that are not weighed as usual, by id
 */
public record Profile(
    Standing standing,
    String id,
    String title,
    String version,
    Optional<String> basedOn,
    Axis axis,
    Map<Quantity, Threshold> limits,
    Map<String, Weighting> weights) {

  /** How a profile came to be known. */
  public enum Standing {
    /** It comes with the program and is named by its id. */
    BUILT_IN,
    /** A school wrote it; it is carried in full wherever it goes. */
    OWN,
    /** Named by an id, or a version, that this program does not have; another stands in for it. */
    UNKNOWN
  }

  /** The line about which a denture is taken to turn when a saddle lifts. */
  public enum Axis {
    /** Through the retentive tips. */
    CLASP(
        "clasp axis",
        Source.fromMemory(Literature.BDJ_INDIRECT),
        "the clasps hold their teeth while a saddle lifts"),
    /** Through the most distal rests. */
    SUPPORT(
        "support axis",
        Source.read(Literature.OKLAHOMA),
        "the denture is taken to turn about the rests that carry it");

    private final String words;
    private final Source source;
    private final String reason;

    Axis(String words, Source source, String reason) {
      this.words = words;
      this.source = source;
      this.reason = reason;
    }

    public String words() {
      return words;
    }

    /** Who teaches it so. */
    public Source source() {
      return source;
    }

    public String reason() {
      return reason;
    }

    /** The line that other schools look at. */
    public Axis other() {
      return this == CLASP ? SUPPORT : CLASP;
    }
  }

  /** The source of what a school sets without citing anyone. */
  public static final String OWN_TEACHING = "the school's own teaching";

  private static final String FIRST_VERSION = "1";

  public static final Profile UK_TEACHING =
      new Profile(
          Standing.BUILT_IN,
          "uk-teaching",
          "UK teaching",
          FIRST_VERSION,
          Optional.empty(),
          Axis.CLASP,
          UkTeaching.limits(),
          Map.of());

  public static final Profile NORTH_AMERICAN_TEACHING =
      departing(
          "north-american-teaching",
          "North American teaching",
          Axis.SUPPORT,
          NorthAmericanTeaching.limits(),
          NorthAmericanTeaching.weights());

  public static final Profile HYGIENE_FIRST =
      departing(
          "hygiene-first",
          "Hygiene first",
          Axis.CLASP,
          HygieneFirst.limits(),
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

  /** A built-in profile, told by its departures from British teaching. */
  private static Profile departing(
      String id,
      String title,
      Axis axis,
      Map<Quantity, Threshold> departures,
      Map<String, Weighting> weights) {
    Map<Quantity, Threshold> all = new EnumMap<>(UK_TEACHING.limits());
    all.putAll(departures);
    return new Profile(
        Standing.BUILT_IN,
        id,
        title,
        FIRST_VERSION,
        Optional.of(UK_TEACHING.id()),
        axis,
        all,
        weights);
  }

  /** The built-in profile with this id. */
  public static Optional<Profile> builtIn(String id) {
    return BUILT_IN.stream().filter(p -> p.id().equals(id)).findFirst();
  }

  /** The profile that a case names; British teaching stands in for one that is not known here. */
  public static Profile named(String id, String version) {
    Optional<Profile> known = builtIn(id);
    if (known.filter(p -> p.version().equals(version)).isPresent()) {
      return known.get();
    }
    Profile standIn = known.orElse(UK_TEACHING);
    return new Profile(
        Standing.UNKNOWN,
        id,
        id,
        version,
        Optional.of(standIn.id()),
        standIn.axis(),
        standIn.limits(),
        standIn.weights());
  }

  /**
   * A school's own profile.
   *
   * @param basedOn the built-in one whose limits and weights hold where the school sets none
   */
  public static Profile own(
      String title,
      String version,
      String basedOn,
      Axis axis,
      Map<Quantity, Threshold> limits,
      Map<String, Weighting> weights) {
    Profile base = builtIn(basedOn).orElse(UK_TEACHING);
    Map<Quantity, Threshold> allLimits = new EnumMap<>(base.limits());
    allLimits.putAll(limits);
    Map<String, Weighting> allWeights = new TreeMap<>(base.weights());
    allWeights.putAll(weights);
    return new Profile(
        Standing.OWN,
        idOf(title),
        title,
        version,
        Optional.of(basedOn),
        axis,
        allLimits,
        allWeights);
  }

  /** The title in kebab case, never the id of a built-in profile. */
  private static String idOf(String title) {
    String plain = Normalizer.normalize(title, Normalizer.Form.NFD).toLowerCase(Locale.ROOT);
    String id =
        plain.replaceAll("\\p{M}", "").replaceAll("[^\\p{L}\\p{N}]+", "-").replaceAll("^-|-$", "");
    return id.isEmpty() || builtIn(id).isPresent() ? (id + "-own").replaceAll("^-", "") : id;
  }

  /** The built-in profile from which this one departs; itself when it departs from none. */
  public Profile base() {
    return basedOn.isEmpty() ? this : builtIn(basedOn.get()).orElse(UK_TEACHING);
  }

  /** What it holds otherwise than the profile on which it is based. */
  public List<Departure> departures() {
    return standing == Standing.UNKNOWN ? List.of() : Departure.between(this, base());
  }

  /** A school's own profile to start from: this one as it is, based on the built-in one. */
  public Profile asOwn() {
    if (standing == Standing.OWN) {
      return this;
    }
    Profile start = standing == Standing.UNKNOWN ? base() : this;
    return own(
        "Our teaching, after " + start.title(), "1", start.id(), start.axis(), limits, weights);
  }

  public Profile withName(String newTitle, String newVersion) {
    Profile p = asOwn();
    return own(newTitle, newVersion, p.basedOn.get(), p.axis, p.limits, p.weights);
  }

  public Profile with(Axis other) {
    Profile p = asOwn();
    return own(p.title, p.version, p.basedOn.get(), other, p.limits, p.weights);
  }

  public Profile with(Quantity quantity, Threshold limit) {
    Profile p = asOwn();
    Map<Quantity, Threshold> changed = new EnumMap<>(p.limits);
    changed.put(quantity, limit);
    return own(p.title, p.version, p.basedOn.get(), p.axis, changed, p.weights);
  }

  public Profile with(String ruleId, Weighting weight) {
    Profile p = asOwn();
    Map<String, Weighting> changed = new TreeMap<>(p.weights);
    changed.put(ruleId, weight);
    return own(p.title, p.version, p.basedOn.get(), p.axis, p.limits, changed);
  }

  /** The profile with a rule weighed again as the built-in one weighs it. */
  public Profile withBaseWeight(String ruleId) {
    Profile p = asOwn();
    Map<String, Weighting> changed = new TreeMap<>(p.weights);
    changed.remove(ruleId);
    return own(p.title, p.version, p.basedOn.get(), p.axis, p.limits, changed);
  }

  /** The name with the version, and what judges instead where it is not known here. */
  public String label() {
    String name = title + ", version " + version;
    return standing == Standing.UNKNOWN
        ? name
            + " (not known here; judged by "
            + base().title()
            + ", version "
            + base().version()
            + ")"
        : name;
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
