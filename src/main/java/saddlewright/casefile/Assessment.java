package saddlewright.casefile;

import java.util.List;
import saddlewright.dentition.Arch;
import saddlewright.rules.Judgement;
import saddlewright.rules.Profile;
import saddlewright.rules.Report;
import saddlewright.rules.Situation;

/** A case with everything that is derived from it: class, layout and findings of both arches. */
public record Assessment(Case subject, Judgement ofUpper, Judgement ofLower, Report report) {
  public static Assessment of(Case c) {
    Profile p = c.profile();
    return of(
        c,
        Judgement.of(Situation.of(c.upperChart(), c.lowerChart(), c.upperDesign(), p)),
        Judgement.of(Situation.of(c.lowerChart(), c.upperChart(), c.lowerDesign(), p)));
  }

  private static Assessment of(Case c, Judgement upper, Judgement lower) {
    return new Assessment(c, upper, lower, Report.upon(List.of(upper, lower), c.waivers()));
  }

  /** The assessment of another state of the case; what did not change is taken over. */
  public Assessment next(Case c) {
    Profile p = c.profile();
    Judgement u = ofUpper.next(upper().next(c.upperChart(), c.lowerChart(), c.upperDesign(), p));
    Judgement l = ofLower.next(lower().next(c.lowerChart(), c.upperChart(), c.lowerDesign(), p));
    return u == ofUpper && l == ofLower && c.waivers().equals(subject.waivers())
        ? with(c, report)
        : of(c, u, l);
  }

  /** The same mouths and designs, otherwise reported on. */
  public Assessment with(Report other) {
    return with(subject, other);
  }

  private Assessment with(Case c, Report r) {
    return new Assessment(c, ofUpper, ofLower, r);
  }

  public Situation upper() {
    return ofUpper.situation();
  }

  public Situation lower() {
    return ofLower.situation();
  }

  /**
   * Whether mouths, designs and findings were taken over from another state, so that only what is
   * written beside them can have changed.
   */
  public boolean sharesDesignWith(Assessment other) {
    return upper() == other.upper() && lower() == other.lower() && report == other.report;
  }

  public Situation arch(Arch arch) {
    return arch == Arch.UPPER ? upper() : lower();
  }
}
