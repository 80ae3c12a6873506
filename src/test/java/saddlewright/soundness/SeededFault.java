package saddlewright.soundness;

import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import saddlewright.rules.Finding;
import saddlewright.rules.Report;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;

/**
 * A sound design with one mistake in it.
 *
 * @param kind the kind of mistake
 * @param what the case and what was done to it, as in "w02: mesial rest on 34"
 * @param sound the design before
 * @param faulty the design after
 * @param right what a finding must be about
 */
record SeededFault(
    FaultKind kind, String what, Situation sound, Supplier<Situation> faulty, RightSubject right) {

  /**
   * The findings that answer it: new, or graver than before, and about the right subject. A
   * question is no finding.
   *
   * @param before the findings of the sound design by key
   */
  List<Finding> answers(Map<String, Severity> before) {
    Situation after = faulty.get();
    return findings(after).stream()
        .filter(f -> isNew(f, before))
        .filter(f -> right.is(f, after.design()))
        .toList();
  }

  private static boolean isNew(Finding f, Map<String, Severity> before) {
    Severity was = before.get(f.key());
    return was == null || f.severity() != was && f.severity().isAtLeast(was);
  }

  static List<Finding> findings(Situation s) {
    return Report.of(List.of(s), List.of()).standing();
  }

  static Map<String, Severity> weights(Situation s) {
    return findings(s).stream()
        .collect(
            Collectors.toMap(Finding::key, Finding::severity, (a, b) -> a.isAtLeast(b) ? a : b));
  }
}
