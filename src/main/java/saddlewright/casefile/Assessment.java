package saddlewright.casefile;

import java.util.List;
import java.util.Optional;
import saddlewright.dentition.Arch;
import saddlewright.rules.Profile;
import saddlewright.rules.Report;
import saddlewright.rules.Situation;

/** A case with everything that is derived from it: class, layout and findings of both arches. */
public record Assessment(Case subject, Situation upper, Situation lower, Report report) {
  public static Assessment of(Case c) {
    return of(c, Optional.empty());
  }

  /**
   * Derives everything of a case, taking over from an earlier one the arch that an edit left
   * untouched.
   */
  public static Assessment of(Case c, Optional<Assessment> earlier) {
    Situation upper = situation(c, Arch.UPPER, earlier);
    Situation lower = situation(c, Arch.LOWER, earlier);
    return new Assessment(c, upper, lower, Report.of(List.of(upper, lower), c.waivers()));
  }

  private static Situation situation(Case c, Arch arch, Optional<Assessment> earlier) {
    return earlier
        .map(a -> a.arch(arch))
        // Identity, not equality: an edit keeps the very objects that it does not change.
        .filter(s -> s.chart() == c.chart(arch) && s.design() == c.design(arch))
        .orElseGet(() -> Situation.of(c.chart(arch), c.design(arch), Profile.UK_TEACHING));
  }

  /** The assessment of another state of the case; an arch that did not change is taken over. */
  public Assessment next(Case c) {
    Situation u =
        c.upperChart().equals(upper.chart()) && c.upperDesign().equals(upper.design())
            ? upper
            : Situation.of(c.upperChart(), c.upperDesign(), upper.profile());
    Situation l =
        c.lowerChart().equals(lower.chart()) && c.lowerDesign().equals(lower.design())
            ? lower
            : Situation.of(c.lowerChart(), c.lowerDesign(), lower.profile());
    boolean judged = u == upper && l == lower && c.waivers().equals(subject.waivers());
    return new Assessment(c, u, l, judged ? report : Report.of(List.of(u, l), c.waivers()));
  }

  public Situation arch(Arch arch) {
    return arch == Arch.UPPER ? upper : lower;
  }
}
