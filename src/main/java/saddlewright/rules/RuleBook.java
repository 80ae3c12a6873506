package saddlewright.rules;

import java.util.List;

/** Every rule, in one explicit list. */
public final class RuleBook {
  private static final List<Rule> RULES = List.of();

  private RuleBook() {}

  public static List<Rule> rules() {
    return RULES;
  }
}
