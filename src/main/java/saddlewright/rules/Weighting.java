package saddlewright.rules;

import java.util.Optional;

/**
 * What a school makes of a rule that it does not weigh as usual.
 *
 * @param severity the gravest severity of its findings here; empty when the school does not teach
 *     the rule
 * @param source who says so
 * @param reason why the school weighs it so; may be empty
 */
public record Weighting(Optional<Severity> severity, Source source, String reason) {
  public static Weighting of(Severity severity, Source source) {
    return new Weighting(Optional.of(severity), source, "");
  }

  public static Weighting notTaught(Source source) {
    return new Weighting(Optional.empty(), source, "");
  }

  /** The same weight with the reason why it is given. */
  public Weighting because(String why) {
    return new Weighting(severity, source, why);
  }

  /** Such as "must" or "not taught". */
  public String words() {
    return severity.map(Severity::code).orElse("not taught");
  }
}
