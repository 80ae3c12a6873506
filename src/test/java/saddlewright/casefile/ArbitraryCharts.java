package saddlewright.casefile;

import java.util.Map;
import java.util.Optional;
import java.util.Set;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import saddlewright.chart.ArchChart;
import saddlewright.chart.Condition;
import saddlewright.chart.GapDecision;
import saddlewright.chart.SoftTissues;
import saddlewright.chart.Tilt;
import saddlewright.chart.ToothFindings;
import saddlewright.chart.ToothStatus;
import saddlewright.chart.Undercut;
import saddlewright.dentition.Arch;
import saddlewright.dentition.RestSite;
import saddlewright.dentition.Side;
import saddlewright.dentition.Tooth;
import saddlewright.dentition.Zone;

/** Arbitrary charts for property tests. */
public final class ArbitraryCharts {
  private ArbitraryCharts() {}

  /** Charts of an arch, some teeth with findings and the others standing. */
  public static Arbitrary<ArchChart> charts(Arch arch) {
    Arbitrary<Map<Tooth, ToothFindings>> teeth =
        Arbitraries.maps(teeth(arch), findings()).ofMaxSize(8);
    return Combinators.combine(teeth, softTissues(arch)).as((t, s) -> new ArchChart(arch, t, s));
  }

  static Arbitrary<Tooth> teeth(Arch arch) {
    return Arbitraries.of(Tooth.in(arch));
  }

  /** Numbers of a range, round and with all digits, and its two ends. */
  static Arbitrary<Double> number(double min, double max) {
    return Arbitraries.oneOf(
            Arbitraries.of(min, max),
            Arbitraries.doubles().between(min, max).ofScale(2),
            Arbitraries.doubles().between(min, max).ofScale(14))
        .map(v -> v + 0.0); // a negative zero is a zero
  }

  static <T> Arbitrary<Optional<T>> maybe(Arbitrary<T> values) {
    return values.optional(0.5);
  }

  /** Findings of one tooth. */
  public static Arbitrary<ToothFindings> findings() {
    Arbitrary<ToothFindings> standing =
        Combinators.combine(
                Arbitraries.of(ToothStatus.class),
                Arbitraries.of(GapDecision.class),
                Arbitraries.of(true, false),
                Arbitraries.of(true, false))
            .as((s, g, a, v) -> ToothFindings.of(s, g).withAbutment(a).withVisible(v));
    Arbitrary<Map<Zone, Undercut>> undercuts =
        Arbitraries.maps(
                Arbitraries.of(Zone.class),
                Combinators.combine(number(0, 5), maybe(number(0, 15))).as(Undercut::new))
            .ofMaxSize(3);
    Arbitrary<Map<RestSite, Double>> clearances =
        Arbitraries.maps(Arbitraries.of(RestSite.class), number(0, 15)).ofMaxSize(2);
    Arbitrary<ToothFindings> leaning =
        Combinators.combine(
                standing,
                maybe(Arbitraries.of(Tilt.class)),
                maybe(number(0, 90)),
                maybe(number(-180, 180)))
            .as((f, t, d, r) -> f.withTilt(t, d).withRotation(r));
    return Combinators.combine(
            leaning,
            maybe(Arbitraries.integers().between(0, 3)),
            maybe(number(0, 100)),
            maybe(Arbitraries.of(Condition.class)),
            Combinators.combine(maybe(number(0, 20)), maybe(number(2, 16)), maybe(number(2, 16)))
                .as((h, w, d) -> ToothFindings.STANDING.withCrown(h, w, d)),
            undercuts,
            clearances,
            Combinators.combine(
                    maybe(number(0.1, 10)), maybe(number(0, 30)), Arbitraries.of(true, false))
                .as(
                    (ratio, space, doubtful) ->
                        ToothFindings.STANDING
                            .withCrownRoot(ratio)
                            .withSaddleSpace(space)
                            .withDoubtful(doubtful)))
        .as(
            (f, mobility, bone, condition, crown, u, c, outlook) -> {
              ToothFindings out =
                  f.withMobility(mobility)
                      .withBoneSupport(bone)
                      .withCondition(condition)
                      .withCrown(crown.crownHeight(), crown.mesiodistal(), crown.buccolingual())
                      .withCrownRoot(outlook.crownRoot())
                      .withSaddleSpace(outlook.saddleSpace())
                      .withDoubtful(outlook.doubtful());
              for (Map.Entry<Zone, Undercut> e : u.entrySet()) {
                out = out.withUndercut(e.getKey(), Optional.of(e.getValue()));
              }
              for (Map.Entry<RestSite, Double> e : c.entrySet()) {
                out = out.withClearance(e.getKey(), Optional.of(e.getValue()));
              }
              return out;
            });
  }

  private static Arbitrary<SoftTissues> softTissues(Arch arch) {
    Arbitrary<Map<Tooth, Double>> depths =
        Arbitraries.maps(teeth(arch), number(0, 30)).ofMaxSize(3);
    Arbitrary<Map<Tooth, Double>> undercuts =
        Arbitraries.maps(teeth(arch), number(0, 15)).ofMaxSize(3);
    Arbitrary<Set<Tooth>> frena = teeth(arch).set().ofMaxSize(3);
    Arbitrary<SoftTissues> bone =
        Combinators.combine(
                Arbitraries.of(true, false),
                Arbitraries.of(SoftTissues.Torus.class).set().ofMaxSize(3),
                maybe(Arbitraries.of(SoftTissues.PalateForm.class)),
                maybe(Arbitraries.of(SoftTissues.RidgeState.class)),
                maybe(Arbitraries.of(SoftTissues.RidgeState.class)),
                maybe(number(20, 80)))
            .as(
                (high, tori, palate, right, left, limit) ->
                    SoftTissues.UNCHARTED
                        .withHighLingualFrenum(high)
                        .withTori(tori)
                        .withPalate(palate)
                        .withRidge(Side.RIGHT, right)
                        .withRidge(Side.LEFT, left)
                        .withPalateLimit(limit));
    return Combinators.combine(depths, depths, undercuts, frena, bone)
        .as(
            (lingual, buccal, undercut, f, b) ->
                new SoftTissues(
                    lingual,
                    buccal,
                    undercut,
                    f,
                    b.highLingualFrenum(),
                    b.tori(),
                    b.palate(),
                    b.ridges(),
                    b.palateLimit()));
  }
}
