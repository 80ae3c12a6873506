package saddlewright.casefile;

import java.util.List;
import saddlewright.dentition.Arch;
import saddlewright.rules.Profile;
import saddlewright.rules.Report;
import saddlewright.rules.Situation;

/** A case with everything that is derived from it: class, layout and findings of both arches. */
public record Assessment(Case subject, Situation upper, Situation lower, Report report) {
  public static Assessment of(Case c) {
    Profile profile = Profile.UK_TEACHING;
    Situation upper = Situation.of(c.upperChart(), c.upperDesign(), profile);
    Situation lower = Situation.of(c.lowerChart(), c.lowerDesign(), profile);
    return new Assessment(
        c, upper, lower, Report.of(List.of(upper, lower), c.waivers()));
  }

  public Situation arch(Arch arch) {
    return arch == Arch.UPPER ? upper : lower;
  }
}
