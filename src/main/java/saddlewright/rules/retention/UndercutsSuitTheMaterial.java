package saddlewright.rules.retention;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import saddlewright.chart.Undercut;
import saddlewright.design.Clasp;
import saddlewright.design.ClaspForm;
import saddlewright.design.ClaspMaterial;
import saddlewright.design.DesignEdit;
import saddlewright.design.Subject;
import saddlewright.rules.Amount;
import saddlewright.rules.Claim;
import saddlewright.rules.Draft;
import saddlewright.rules.Finding;
import saddlewright.rules.Judging;
import saddlewright.rules.Literature;
import saddlewright.rules.Naming;
import saddlewright.rules.Quantity;
import saddlewright.rules.Rule;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;

/** Each alloy has the depth of undercut in which it springs without being overstrained. */
public final class UndercutsSuitTheMaterial implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "undercuts-suit-the-material",
          "The charted undercut at a tip is as deep as the material of the arm asks for.",
          Severity.MUST,
          Source.read(Literature.BRITISH_NOTES));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    found(s).forEach(on::add);
  }

  private List<Finding> found(Situation s) {
    List<Finding> out = new ArrayList<>();
    for (Clasp c : s.design().all(Clasp.class)) {
      Undercut found = s.chart().tooth(c.tooth()).undercuts().get(c.tip());
      Optional<Double> asked = asked(s, c.material());
      if (found != null && asked.isPresent() && !suits(s, found.depth(), asked.get())) {
        boolean deep = found.depth() > asked.get();
        Draft d =
            finding(c.tooth().toString(), Subject.of(s.arch(), c))
                .fact("undercut too " + (deep ? "deep" : "shallow") + " for the " + Naming.of(c))
                .measured(Amount.mm(found.depth()), Amount.mm(asked.get()));
        if (c.form().isOcclusallyApproaching()) {
          other(s, found.depth()).ifPresent(m -> d.remedy("Change its material", change(c, m)));
        }
        out.add(d.done());
      }
    }
    return out;
  }

  private static boolean suits(Situation s, double depth, double asked) {
    return Math.abs(depth - asked) <= s.profile().limit(Quantity.UNDERCUT_LATITUDE) + 1e-9;
  }

  private static Optional<Double> asked(Situation s, ClaspMaterial material) {
    return switch (material) {
      case CAST_COBALT_CHROMIUM -> Optional.of(s.profile().limit(Quantity.UNDERCUT_CAST));
      case WROUGHT_GOLD -> Optional.of(s.profile().limit(Quantity.UNDERCUT_WROUGHT_GOLD));
      case WROUGHT_STAINLESS_STEEL ->
          Optional.of(s.profile().limit(Quantity.UNDERCUT_WROUGHT_STEEL));
      // No school's figure was found for these.
      case CAST_TITANIUM, CAST_GOLD, WROUGHT_COBALT_CHROMIUM, POLYMER -> Optional.empty();
    };
  }

  private static Optional<ClaspMaterial> other(Situation s, double depth) {
    for (ClaspMaterial m : ClaspMaterial.values()) {
      if (asked(s, m).filter(a -> suits(s, depth, a)).isPresent()) {
        return Optional.of(m);
      }
    }
    return Optional.empty();
  }

  private static DesignEdit change(Clasp c, ClaspMaterial material) {
    ClaspForm form =
        c.form() == ClaspForm.CIRCUMFERENTIAL && material.isWrought()
            ? ClaspForm.COMBINATION
            : c.form() == ClaspForm.COMBINATION && material.isCast()
                ? ClaspForm.CIRCUMFERENTIAL
                : c.form();
    return new DesignEdit.Change(new Clasp(c.id(), c.tooth(), form, c.tip(), c.origin(), material));
  }
}
