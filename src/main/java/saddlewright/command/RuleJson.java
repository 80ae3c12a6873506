package saddlewright.command;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import saddlewright.rules.Profile;
import saddlewright.rules.Rule;
import saddlewright.rules.RuleGroup;
import saddlewright.rules.RulePage;
import saddlewright.rules.Source;

/** The rule book as JSON for programs. */
final class RuleJson {
  private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

  private RuleJson() {}

  static String book(Profile school) {
    ObjectNode root = NODES.objectNode();
    root.put("format", "saddlewright-rules");
    root.put("formatVersion", 1);
    root.set("profile", CheckJson.profile(school));
    ArrayNode rules = root.putArray("rules");
    for (RuleGroup group : RuleGroup.values()) {
      group.rules().forEach(r -> rules.add(rule(r, school)));
    }
    return CheckJson.pretty(root);
  }

  static String page(Rule r, Profile school) {
    ObjectNode n = rule(r, school);
    ArrayNode sections = n.putArray("page");
    for (RulePage.Section s : RulePage.of(r).sections()) {
      ObjectNode o = sections.addObject();
      o.put("title", s.title());
      ArrayNode paragraphs = o.putArray("paragraphs");
      s.paragraphs().forEach(paragraphs::add);
    }
    return CheckJson.pretty(n);
  }

  private static ObjectNode rule(Rule r, Profile school) {
    ObjectNode n = NODES.objectNode();
    n.put("id", r.id());
    n.put("group", RuleGroup.of(r).title());
    n.put("claim", r.claim());
    n.put("weight", RuleText.weight(r, school).replace(' ', '-'));
    n.put("usualWeight", r.severity().code());
    n.put("hardStop", r.isHardStop());
    Source s = r.source();
    n.put("source", s.citation());
    n.put("evidence", s.evidence().name().toLowerCase(java.util.Locale.ROOT).replace('_', '-'));
    return n;
  }
}
