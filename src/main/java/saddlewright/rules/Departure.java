package saddlewright.rules;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * One thing that a school teaches otherwise than the built-in profile on which its own is based.
 *
 * @param what the quantity, or the claim of the rule, or the axis
 * @param here what this school holds
 * @param there what the other holds
 * @param source who says so
 * @param reason why; may be empty
 */
public record Departure(String what, String here, String there, Source source, String reason) {

  /** Every difference between two profiles: the axis, then limits, then weights. */
  static List<Departure> between(Profile school, Profile base) {
    List<Departure> out = new ArrayList<>();
    if (school.axis() != base.axis()) {
      out.add(
          new Departure(
              "indirect retention is judged about",
              "the " + school.axis().words(),
              "the " + base.axis().words(),
              school.axis().source(),
              school.axis().reason()));
    }
    for (Quantity q : Quantity.values()) {
      Threshold t = school.limits().get(q);
      if (t.value() != base.limit(q)) {
        out.add(
            new Departure(
                q.words(), q.amount(t.value()), q.amount(base.limit(q)), t.source(), t.reason()));
      }
    }
    Set<String> rules = new TreeSet<>(school.weights().keySet());
    rules.addAll(base.weights().keySet());
    for (String id : rules) {
      String here = weight(school, id);
      String there = weight(base, id);
      if (!here.equals(there)) {
        Optional<Weighting> w = Optional.ofNullable(school.weights().get(id));
        Source source =
            w.map(Weighting::source)
                .or(() -> RuleBook.find(id).map(Rule::source))
                .orElse(Source.commonPractice(Profile.OWN_TEACHING));
        out.add(new Departure(claim(id), here, there, source, w.map(Weighting::reason).orElse("")));
      }
    }
    return List.copyOf(out);
  }

  private static String weight(Profile p, String id) {
    return Optional.ofNullable(p.weights().get(id))
        .map(Weighting::words)
        .or(() -> RuleBook.find(id).map(r -> r.severity().code()))
        .orElse("not known");
  }

  private static String claim(String id) {
    return RuleBook.find(id).map(r -> r.claim().replaceFirst("\\.$", "")).orElse("rule " + id);
  }

  /** Such as "lower connector clear of gingival margins: 4 mm, not 3 mm". */
  public String words() {
    return what + ": " + here + ", not " + there;
  }
}
