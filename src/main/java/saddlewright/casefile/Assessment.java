package saddlewright.casefile;

import java.util.List;
import saddlewright.dentition.Arch;
import saddlewright.rules.Profile;
import saddlewright.rules.Report;
import saddlewright.rules.Situation;

/** A case with everything that is derived from it: class, layout and findings of both arches. */
public record Assessment(Case subject, Situation upper, Situation lower, Report report) {
  public static Assessment of(Case c) {
    Profile p = c.profile();
    Situation upper = Situation.of(c.upperChart(), c.lowerChart(), c.upperDesign(), p);
    Situation lower = Situation.of(c.lowerChart(), c.upperChart(), c.lowerDesign(), p);
    return new Assessment(c, upper, lower, Report.of(List.of(upper, lower), c.waivers()));
  }

  /** The assessment of another state of the case; what did not change is taken over. */
  public Assessment next(Case c) {
    Profile p = c.profile();
    Situation u = upper.next(c.upperChart(), c.lowerChart(), c.upperDesign(), p);
    Situation l = lower.next(c.lowerChart(), c.upperChart(), c.lowerDesign(), p);
    boolean judged = u == upper && l == lower && c.waivers().equals(subject.waivers());
    return new Assessment(c, u, l, judged ? report : Report.of(List.of(u, l), c.waivers()));
  }

  /**
   * Whether mouths, designs and findings were taken over from another state, so that only what is
   * written beside them can have changed.
   */
  public boolean sharesDesignWith(Assessment other) {
    return upper == other.upper && lower == other.lower && report == other.report;
  }

  public Situation arch(Arch arch) {
    return arch == Arch.UPPER ? upper : lower;
  }
}
