package saddlewright.rules;

/**
 * A fact set against what the rule asks for; texts are ready to show, with their unit.
 *
 * @param actual such as "2.1 mm", "0 rests"
 * @param required such as "at least 3 mm", "1 rest at each end"
 */
public record Comparison(String actual, String required) {}
