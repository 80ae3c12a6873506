package saddlewright.archform;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import saddlewright.casefile.ArbitraryCharts;
import saddlewright.chart.ArchChart;
import saddlewright.dentition.Arch;
import saddlewright.dentition.Face;
import saddlewright.dentition.Side;
import saddlewright.geometry.Path;
import saddlewright.geometry.Point;
import saddlewright.geometry.Transform;

/** What holds of the arch form of any chart, likely or not. */
class ArchFormPropertiesTest {

  @Provide
  Arbitrary<ArchChart> charts() {
    return Arbitraries.of(Arch.values()).flatMap(ArbitraryCharts::charts);
  }

  @Property(tries = 100)
  void aMirroredChartHasTheMirroredForm(@ForAll("charts") ArchChart chart) {
    ArchForm form = ArchForm.of(chart);
    ArchForm other = ArchForm.of(MirroredCharts.mirrored(chart));
    for (PlacedTooth t : form.teeth()) {
      same(
          other.tooth(t.tooth().mirrored()).outline().points(),
          t.outline().transformed(Transform.MIRROR_X).points());
    }
    List<Function<ArchForm, Path>> curves =
        List.of(
            ArchForm::buccalMargin,
            ArchForm::lingualMargin,
            ArchForm::ridgeCrest,
            ArchForm::buccalSulcus,
            ArchForm::lingualSulcus,
            ArchForm::palateLimit);
    for (Function<ArchForm, Path> curve : curves) {
      Path a = curve.apply(form).transformed(Transform.MIRROR_X).reversed();
      Path b = curve.apply(other);
      for (int i = 0; i <= 40; i++) {
        assertThat(a.at(a.length() * i / 40).distanceTo(b.at(b.length() * i / 40)))
            .isLessThan(0.05);
      }
    }
  }

  @Property(tries = 100)
  void longCurvesRunFromRightToLeftAndEveryLandmarkIsThere(@ForAll("charts") ArchChart chart) {
    ArchForm form = ArchForm.of(chart);
    for (Path p : List.of(form.buccalSulcus(), form.ridgeCrest(), form.palateLimit())) {
      assertThat(p.start().x()).isNegative();
      assertThat(p.end().x()).isPositive();
    }
    assertThat(form.pad(Side.RIGHT).centroid().x()).isNegative();
    assertThat(form.pad(Side.LEFT).centroid().x()).isPositive();
    boolean upper = form.arch() == Arch.UPPER;
    assertThat(form.rugae()).hasSize(upper ? 6 : 0);
    assertThat(form.papilla().isPresent()).isEqualTo(upper);
    assertThat(form.raphe().isPresent()).isEqualTo(upper);
    assertThat(form.lingualFrenum().isPresent()).isEqualTo(!upper);
    assertThat(form.foveae()).hasSize(upper ? 2 : 0);
    form.frena();
    form.chartedFrena();
    form.vault();
    assertThat(form.box().contains(form.buccalSulcus().start())).isTrue();
  }

  @Property(tries = 60)
  void marginsDoNotCrossThemselves(@ForAll("plainLoss") ArchChart chart) {
    ArchForm form = ArchForm.of(chart);
    assertThat(crossings(form.lingualMargin())).isEmpty();
    assertThat(crossings(form.buccalMargin())).isEmpty();
    assertThat(crossings(form.lingualSulcus())).isEmpty();
    assertThat(crossings(form.buccalSulcus())).isEmpty();
  }

  @Property(tries = 60)
  void marginsRunOutsideEveryStandingCrownAndCloseToIt(@ForAll("plainLoss") ArchChart chart) {
    ArchForm form = ArchForm.of(chart);
    for (Face face : Face.values()) {
      Path margin = face == Face.BUCCAL ? form.buccalMargin() : form.lingualMargin();
      double before = -1;
      for (PlacedTooth t : form.teeth()) {
        if (!chart.stands(t.tooth())) {
          continue;
        }
        Point rim = t.rim(t.degreesAcross(face));
        assertThat(margin.distanceTo(rim)).isBetween(0.3, 0.6);
        double arc = margin.arcNearest(rim);
        assertThat(arc).isGreaterThan(before);
        before = arc;
        // At a papilla the margin touches the crown; 0.1 mm is the width of the line drawn.
        assertThat(t.region().grown(-0.1).distanceTo(margin))
            .as("margin inside " + t.tooth())
            .isPositive();
      }
    }
  }

  @Property(tries = 60)
  void theFloorOfTheMouthKeepsToItsSide(@ForAll("plainLoss") ArchChart chart) {
    Path floor = ArchForm.of(chart).lingualSulcus();
    int changes = 0;
    for (int i = 1; i < floor.points().size(); i++) {
      if ((floor.points().get(i - 1).x() < 0) != (floor.points().get(i).x() < 0)) {
        changes++;
      }
    }
    assertThat(changes).isEqualTo(1);
  }

  @Provide
  Arbitrary<ArchChart> plainLoss() {
    return new NeighboursTest().partlyLost();
  }

  private static void same(List<Point> a, List<Point> b) {
    assertThat(a).hasSameSizeAs(b);
    for (int i = 0; i < a.size(); i++) {
      assertThat(a.get(i).distanceTo(b.get(i))).isLessThan(1e-9);
    }
  }

  private static List<Point> crossings(Path path) {
    List<Point> p = path.points();
    List<Point> out = new ArrayList<>();
    for (int i = 0; i + 1 < p.size(); i++) {
      for (int k = i + 2; k + 1 < p.size(); k++) {
        if (cross(p.get(i), p.get(i + 1), p.get(k), p.get(k + 1))) {
          out.add(p.get(i));
        }
      }
    }
    return out;
  }

  private static boolean cross(Point a, Point b, Point c, Point d) {
    double s1 = a.to(b).cross(a.to(c));
    double s2 = a.to(b).cross(a.to(d));
    double s3 = c.to(d).cross(c.to(a));
    double s4 = c.to(d).cross(c.to(b));
    return s1 * s2 < 0 && s3 * s4 < 0;
  }
}
