package saddlewright.rules;

/**
 * What a rule holds of a sound design, and on whose word.
 *
 * @param id stable, the class name of the rule in kebab case; also names its page
 * @param sentence the claim in one sentence
 * @param severity how much a breach weighs at most
 * @param source who says so
 */
public record Claim(String id, String sentence, Severity severity, Source source) {}
