package saddlewright.rules.undercut;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import saddlewright.design.Clasp;
import saddlewright.design.Rest;
import saddlewright.design.Subject;
import saddlewright.geometry.Point;
import saddlewright.mechanics.Bearings;
import saddlewright.mechanics.RotationAxis;
import saddlewright.mechanics.SupportAxis;
import saddlewright.rules.Amount;
import saddlewright.rules.Claim;
import saddlewright.rules.Judging;
import saddlewright.rules.Literature;
import saddlewright.rules.Naming;
import saddlewright.rules.Quantity;
import saddlewright.rules.Rule;
import saddlewright.rules.Severity;
import saddlewright.rules.Situation;
import saddlewright.rules.Source;
import saddlewright.rules.StandingClasps;
import saddlewright.rules.TerminalAbutment;
import saddlewright.rules.WroughtArm;

/** In front of the axis about which a saddle sinks, a tip is pulled up into its undercut. */
public final class TipsAheadOfTheAxisAreWrought implements Rule {
  private static final Claim CLAIM =
      new Claim(
          "tips-ahead-of-the-axis-are-wrought",
          "On a denture with a free end, a tip in front of the line through the hindmost rests is"
              + " wrought.",
          Severity.SHOULD,
          Source.read(Literature.OKLAHOMA));

  @Override
  public Claim stated() {
    return CLAIM;
  }

  @Override
  public void weigh(Situation s, Judging on) {
    List<TerminalAbutment> ends = TerminalAbutment.all(s);
    if (ends.isEmpty()) {
      return;
    }
    List<Point> seats =
        s.design().stream(Rest.class)
            .filter(r -> !r.indirectRetainer() && s.chart().stands(r.tooth()))
            .map(r -> Bearings.seat(s.layout(), r))
            .toList();
    Optional<RotationAxis> axis = SupportAxis.of(seats);
    if (axis.isEmpty()) {
      return;
    }
    double slack = s.profile().limit(Quantity.TIP_AHEAD);
    for (Clasp c : StandingClasps.of(s)) {
      double ahead = ahead(s, axis.get(), ends, Bearings.tip(s.layout(), c));
      if (ahead <= slack || isAtItsPivot(s, ends, c)) {
        on.judged();
      } else if (!c.material().isCast()) {
        on.upheld(
            "gives way in front of the axis, where the sinking saddle pulls it upwards",
            Subject.of(s.arch(), c));
      } else if (!isLevered(ends, c)) {
        on.finding(c.tooth().toString(), Subject.of(s.arch(), c))
            .fact("a stiff tip in front of the axis bites as the saddle sinks")
            .measured(
                "cast " + Naming.of(c) + ", " + Amount.mm(ahead) + " in front of the axis",
                "a wrought arm there")
            .remedy(WroughtArm.of(s, c).label(), WroughtArm.of(s, c).edit())
            .done();
      }
    }
  }

  /** The farthest that the tip lies in front, seen from any free end. */
  private static double ahead(
      Situation s, RotationAxis axis, List<TerminalAbutment> ends, Point tip) {
    double most = Double.NEGATIVE_INFINITY;
    for (TerminalAbutment a : ends) {
      Point load =
          a.saddle().span().teeth().stream()
              .map(t -> Bearings.artificialTooth(s.layout(), t))
              .max(Comparator.comparingDouble(p -> Math.abs(axis.distanceTo(p))))
              .orElseThrow();
      most = Math.max(most, axis.beyond(tip, load));
    }
    return most;
  }

  /** Across the arch the tooth of the hindmost rest hardly moves against its clasp. */
  private static boolean isAtItsPivot(Situation s, List<TerminalAbutment> ends, Clasp c) {
    return ends.stream().noneMatch(a -> a.tooth() == c.tooth())
        && s.design().stream(Rest.class)
            .filter(r -> !r.indirectRetainer() && r.tooth().side() == c.tooth().side())
            .mapToInt(r -> r.tooth().position())
            .max()
            .equals(OptionalInt.of(c.tooth().position()));
  }

  /** A stiff arm with a near rest is blamed for levering its tooth, once. */
  private static boolean isLevered(List<TerminalAbutment> ends, Clasp c) {
    return c.form().isOcclusallyApproaching()
        && ends.stream().anyMatch(a -> a.tooth() == c.tooth() && a.isRestedNearOnly());
  }
}
