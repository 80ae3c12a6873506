package saddlewright.rules;

import java.util.List;
import saddlewright.rules.abutments.AbutmentRules;
import saddlewright.rules.bracing.BracingRules;
import saddlewright.rules.clasping.ClaspingRules;
import saddlewright.rules.framework.FrameworkRules;
import saddlewright.rules.hygiene.HygieneRules;
import saddlewright.rules.indirect.IndirectRules;
import saddlewright.rules.lower.LowerConnectorRules;
import saddlewright.rules.placing.PlacingRules;
import saddlewright.rules.retention.RetentionRules;
import saddlewright.rules.saddles.SaddleRules;
import saddlewright.rules.support.SupportRules;
import saddlewright.rules.undercut.UndercutRules;
import saddlewright.rules.upper.UpperConnectorRules;

/** The chapters of the rule book, in the order in which one designs. */
public enum RuleGroup {
  PLACING("Placing", PlacingRules.ALL),
  SADDLES("Saddles", SaddleRules.ALL),
  SUPPORT("Support", SupportRules.ALL),
  RETENTION("Retention", RetentionRules.ALL),
  CLASPING("Choice of clasp", ClaspingRules.ALL),
  UNDERCUT("Undercuts and arms", UndercutRules.ALL),
  BRACING("Bracing and reciprocation", BracingRules.ALL),
  FRAMEWORK("Framework", FrameworkRules.ALL),
  UPPER_CONNECTOR("Upper major connector", UpperConnectorRules.ALL),
  LOWER_CONNECTOR("Lower major connector", LowerConnectorRules.ALL),
  HYGIENE("Minor connectors and gingival hygiene", HygieneRules.ALL),
  INDIRECT("Indirect retention", IndirectRules.ALL),
  ABUTMENTS("Abutments and occlusion", AbutmentRules.ALL);

  private final String title;
  private final List<Rule> rules;

  RuleGroup(String title, List<Rule> rules) {
    this.title = title;
    this.rules = rules;
  }

  public String title() {
    return title;
  }

  /** The rules of the chapter, sorted by name. */
  public List<Rule> rules() {
    return rules;
  }

  /** The chapter in which a rule stands. */
  public static RuleGroup of(Rule rule) {
    for (RuleGroup g : values()) {
      if (g.rules.contains(rule)) {
        return g;
      }
    }
    throw new IllegalArgumentException("rule " + rule.id() + " stands in no chapter");
  }
}
