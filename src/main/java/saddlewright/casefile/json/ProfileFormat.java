package saddlewright.casefile.json;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import saddlewright.rules.LimitRange;
import saddlewright.rules.Profile;
import saddlewright.rules.Quantity;
import saddlewright.rules.Rule;
import saddlewright.rules.RuleBook;
import saddlewright.rules.Severity;
import saddlewright.rules.Source;
import saddlewright.rules.Threshold;
import saddlewright.rules.Weighting;

/**
 * A school profile in a file: every limit and every weight that is not the usual one, each with its
 * source.
 *
 * <p>In a case, a built-in profile is only named: text is its id in version 1, other versions are
 * named by an object with id and version. A school's own stands there in full, so that the case is
 * judged alike wherever it is opened.
 */
final class ProfileFormat {
  /** The version that is meant where a case names none. */
  private static final String FIRST_VERSION = "1";

  /** What a school makes of a rule, as the file spells it. */
  private enum Weight {
    MUST,
    SHOULD,
    CONSIDER,
    NOT_TAUGHT;

    private static Weight of(Weighting w) {
      return w.severity().map(s -> valueOf(s.name())).orElse(NOT_TAUGHT);
    }

    private Optional<Severity> severity() {
      return this == NOT_TAUGHT ? Optional.empty() : Optional.of(Severity.valueOf(name()));
    }
  }

  private ProfileFormat() {}

  /** The profile to which a case is pinned; empty when it names none. */
  static Optional<Profile> readPinned(MembersIn top) {
    return top.textOrObject(
        "profile",
        id -> Profile.named(id, FIRST_VERSION),
        m ->
            m.text("id")
                .map(id -> Profile.named(id, m.text("version").orElse(FIRST_VERSION)))
                .orElseGet(() -> read(m)));
  }

  static void writePinned(Profile p, MembersOut top) {
    if (p.standing() == Profile.Standing.OWN) {
      top.object("profile", m -> write(p, m));
    } else if (p.version().equals(FIRST_VERSION)) {
      top.text("profile", p.id());
    } else {
      top.object(
          "profile",
          m -> {
            m.text("id", p.id());
            m.text("version", p.version());
          });
    }
  }

  static Profile read(MembersIn m) {
    String name = m.requiredText("name");
    if (name.isBlank()) {
      throw Refusal.at(
          m.place().member("name"),
          "a profile without a name could not be told from others",
          "Give it the name of the school or course.");
    }
    String version = m.requiredText("version");
    String basedOn = m.text("basedOn").orElse(Profile.UK_TEACHING.id());
    Profile base = Profile.builtIn(basedOn).orElse(Profile.UK_TEACHING);
    Profile.Axis axis = m.word("axis", Profile.Axis.class).orElse(base.axis());
    Map<Quantity, Threshold> limits = m.object("limits", l -> limits(l, base)).orElse(Map.of());
    Map<String, Weighting> weights = new TreeMap<>();
    m.objectsByName("weights", ProfileFormat::weighting)
        .forEach(
            (id, w) -> {
              refuseForHardStop(id, w, m.place().member("weights").member(id));
              weights.put(RuleBook.currentId(id), w);
            });
    return Profile.own(name, version, basedOn, axis, limits, weights);
  }

  private static Map<Quantity, Threshold> limits(MembersIn m, Profile base) {
    Map<Quantity, Threshold> out = new EnumMap<>(Quantity.class);
    for (Quantity q : Quantity.values()) {
      m.object(Word.of(q), l -> limit(l, q, base)).ifPresent(t -> out.put(q, t));
    }
    return out;
  }

  private static Threshold limit(MembersIn m, Quantity q, Profile base) {
    Optional<String> unit = m.text("unit");
    if (unit.isPresent() && !unit.get().equals(q.unit())) {
      throw Refusal.at(
          m.place().member("unit"),
          "\"" + unit.get() + "\" is not the unit of this limit",
          q.unit().isEmpty() ? "It has none: remove it." : "Give it in " + q.unit() + ".");
    }
    double value = m.requiredNumber("value");
    LimitRange range = LimitRange.of(q);
    if (!range.holds(value)) {
      throw Refusal.at(
          m.place().member("value"),
          q.amount(value) + " is not plausible for " + q.words(),
          "Give a limit from " + range.words() + ".");
    }
    Threshold usual = base.limits().get(q);
    Source otherwise =
        value == usual.value() ? usual.source() : Source.commonPractice(Profile.OWN_TEACHING);
    return new Threshold(value, source(m, otherwise), m.textOrEmpty("reason"));
  }

  private static Weighting weighting(MembersIn m) {
    return new Weighting(
        m.requiredWord("weight", Weight.class).severity(),
        source(m, Source.commonPractice(Profile.OWN_TEACHING)),
        m.textOrEmpty("reason"));
  }

  private static Source source(MembersIn m, Source otherwise) {
    Optional<String> citation = m.text("source");
    Optional<Source.Evidence> evidence = m.word("evidence", Source.Evidence.class);
    return citation
        .map(c -> new Source(c, evidence.orElse(Source.Evidence.COMMON_PRACTICE)))
        .orElseGet(() -> new Source(otherwise.citation(), evidence.orElse(otherwise.evidence())));
  }

  private static void refuseForHardStop(String id, Weighting w, Place place) {
    Optional<Rule> rule = RuleBook.find(id).filter(Rule::isHardStop);
    if (rule.isPresent() && !w.severity().equals(Optional.of(rule.get().severity()))) {
      throw Refusal.at(
          place,
          "this rule guards the patient's life and no school may weigh it less",
          "Remove the entry.");
    }
  }

  static void write(Profile p, MembersOut m) {
    m.text("name", p.title());
    m.text("version", p.version());
    m.text("basedOn", p.basedOn().orElse(p.id()));
    m.word("axis", p.axis());
    m.object(
        "limits",
        l ->
            p.limits()
                .forEach(
                    (q, t) ->
                        l.object(
                            Word.of(q),
                            o -> {
                              o.number("value", t.value());
                              o.textUnlessEmpty("unit", q.unit());
                              write(t.source(), t.reason(), o);
                            })));
    m.object(
        "weights",
        l ->
            p.weights()
                .forEach(
                    (id, w) ->
                        l.object(
                            id,
                            o -> {
                              o.word("weight", Weight.of(w));
                              write(w.source(), w.reason(), o);
                            })));
  }

  private static void write(Source source, String reason, MembersOut m) {
    m.text("source", source.citation());
    m.word("evidence", source.evidence());
    m.textUnlessEmpty("reason", reason);
  }
}
