package saddlewright.rules;

import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Every rule, sorted by id. */
public final class RuleBook {
  /** Ids that rules had in earlier versions, with what they are called now. */
  public static final Map<String, String> FORMER_IDS =
      Map.of("tips-end-in-charted-undercuts", "tips-end-in-undercuts");

  private static final List<Rule> RULES =
      Arrays.stream(RuleGroup.values())
          .flatMap(g -> g.rules().stream())
          .sorted(Comparator.comparing(Rule::id))
          .toList();

  private static final Map<String, Rule> BY_ID = byId();

  private RuleBook() {}

  private static Map<String, Rule> byId() {
    Map<String, Rule> m = new HashMap<>();
    RULES.forEach(r -> m.put(r.id(), r));
    return m;
  }

  public static List<Rule> rules() {
    return RULES;
  }

  /** The rule with this id, or that once had it. */
  public static Optional<Rule> find(String id) {
    return Optional.ofNullable(BY_ID.get(FORMER_IDS.getOrDefault(id, id)));
  }

  /** The id that a rule has today, should it have had another when it was written down. */
  public static String currentId(String id) {
    return FORMER_IDS.getOrDefault(id, id);
  }

  /** A key of a finding as it reads today, should its rule have had another id when it was kept. */
  static String currentKey(String findingKey) {
    int at = findingKey.indexOf('@');
    if (at < 0) {
      return findingKey;
    }
    String id = findingKey.substring(0, at);
    return FORMER_IDS.getOrDefault(id, id) + findingKey.substring(at);
  }
}
