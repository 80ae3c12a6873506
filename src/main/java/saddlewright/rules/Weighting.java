package saddlewright.rules;

import java.util.Optional;

/**
 * What a school makes of a rule that it does not weigh as usual.
 *
 * @param severity the gravest severity of its findings here; empty when the school does not teach
 *     the rule
 * @param source who says so
 */
public record Weighting(Optional<Severity> severity, Source source) {
  public static Weighting of(Severity severity, Source source) {
    return new Weighting(Optional.of(severity), source);
  }

  public static Weighting notTaught(Source source) {
    return new Weighting(Optional.empty(), source);
  }
}
