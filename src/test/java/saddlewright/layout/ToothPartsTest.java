package saddlewright.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import saddlewright.archform.ArchForm;
import saddlewright.archform.PlacedTooth;
import saddlewright.chart.ArchChart;
import saddlewright.chart.Undercut;
import saddlewright.dentition.Arch;
import saddlewright.dentition.CrownSize;
import saddlewright.dentition.End;
import saddlewright.dentition.Face;
import saddlewright.dentition.RestSite;
import saddlewright.dentition.Span;
import saddlewright.dentition.Tooth;
import saddlewright.dentition.Zone;
import saddlewright.design.ArchDesign;
import saddlewright.design.Clasp;
import saddlewright.design.ClaspForm;
import saddlewright.design.ClaspMaterial;
import saddlewright.design.Component;
import saddlewright.design.ComponentId;
import saddlewright.design.GuidePlane;
import saddlewright.design.GuidePlate;
import saddlewright.design.ReciprocalArm;
import saddlewright.design.Rest;
import saddlewright.design.Saddle;
import saddlewright.geometry.Point;
import saddlewright.geometry.Region;
import saddlewright.geometry.Transform;

class ToothPartsTest {
  private static final ComponentId ID = ComponentId.of("part");

  /** Sampling of crown and curve, mm. */
  private static final double SLACK = 0.06;

  private static Ground ground(ArchChart chart) {
    ArchForm form = ArchForm.of(chart);
    return Ground.of(form, () -> RidgeFrame.of(form), ArchDesign.empty(chart.arch()));
  }

  private static Laid lay(Ground ground, Component c) {
    return c.accept(new Placement(ground));
  }

  private static List<Clasp> clasps(Tooth tooth, boolean occlusal) {
    List<Clasp> out = new ArrayList<>();
    for (ClaspForm form : ClaspForm.values()) {
      if (form.isOcclusallyApproaching() == occlusal) {
        for (Zone zone : Zone.values()) {
          for (End end : End.values()) {
            out.add(Clasp.of(ID, tooth, form, zone, end));
          }
        }
      }
    }
    return out;
  }

  private static double turn(double a, double b) {
    double d = Math.abs(a - b) % 360;
    return Math.min(d, 360 - d);
  }

  @ParameterizedTest
  @EnumSource(Arch.class)
  void occlusalArmsHugTheCrownAndEndInTheirZone(Arch arch) {
    Ground ground = ground(ArchChart.full(arch));
    for (Tooth t : Tooth.in(arch)) {
      PlacedTooth tooth = ground.tooth(t);
      Region crown = tooth.outline().toRegion();
      for (Clasp c : clasps(t, true)) {
        Laid laid = lay(ground, c);
        for (Point p : laid.centreline().orElseThrow().sampled(0.4)) {
          assertThat(crown.contains(p)).as("%s inside", c).isFalse();
          assertThat(crown.distanceTo(p)).as("%s", c).isBetween(0.2 - SLACK, 0.9 + SLACK);
        }
        double at = tooth.angleOf(laid.tip().orElseThrow());
        assertThat(turn(at, PlacedTooth.degrees(c.tip()))).as("%s", c).isLessThan(22.5);
      }
    }
  }

  @ParameterizedTest
  @EnumSource(Arch.class)
  void gingivalArmsKeepClearCrossAtRightAnglesAndEndInTheirZone(Arch arch) {
    for (Tooth t : Tooth.in(arch)) {
      for (Clasp c : clasps(t, false)) {
        ArchChart chart = ArchChart.full(arch);
        ArchDesign design = ArchDesign.empty(arch);
        var beside = t.neighbour(c.origin());
        if (beside.isPresent()) {
          chart = Mouths.missing(arch, beside.get().fdi());
          design =
              design.plus(Saddle.of(ComponentId.of("saddle"), Span.of(beside.get(), beside.get())));
        }
        Layout layout = Mouths.laid(chart, design.plus(c));
        Laid laid = layout.find(ID).orElseThrow();
        PlacedTooth tooth = layout.form().tooth(t);
        // At least 3 mm: Eliason; Stratton.
        assertThat(laid.measure(Measure.MARGIN_CLEARANCE).orElseThrow())
            .as("%s", c)
            .isGreaterThanOrEqualTo(3);
        assertThat(laid.measure(Measure.CROSSING_DEGREES).orElseThrow())
            .as("%s", c)
            .isGreaterThan(85);
        Point tip = laid.tip().orElseThrow();
        assertThat(turn(tooth.angleOf(tip), PlacedTooth.degrees(c.tip())))
            .as("%s", c)
            .isLessThan(22.5);
        assertThat(tooth.outline().toRegion().distanceTo(tip)).as("%s", c).isLessThan(0.6);
      }
    }
  }

  /** A third to a half of the buccolingual width (Stratton; lecture notes), base 2.5 mm or more. */
  @ParameterizedTest
  @EnumSource(Arch.class)
  void restsHaveTheProportionsOfTheirSeatsAndLieOnTheCrown(Arch arch) {
    Ground ground = ground(ArchChart.full(arch));
    for (Tooth t : Tooth.in(arch)) {
      PlacedTooth tooth = ground.tooth(t);
      Region crown = tooth.outline().toRegion();
      for (RestSite site : RestSite.values()) {
        for (Rest.Form form : Rest.Form.values()) {
          if (site.existsOn(t) && (site.isOcclusal() || form == Rest.Form.STANDARD)) {
            Rest rest = new Rest(ID, t, site, form, Rest.Seat.PREPARED_ENAMEL, false);
            Laid laid = lay(ground, rest);
            assertThat(laid.body().minus(crown.grown(0.6)).area()).as("%s", rest).isZero();
            assertThat(laid.body().intersects(crown)).isTrue();
            if (site.isOcclusal()) {
              double width = laid.measure(Measure.WIDTH).orElseThrow();
              assertThat(width / (2 * tooth.halfDepth())).isBetween(0.33, 0.51);
              assertThat(width).isGreaterThan(2.5);
            } else if (site == RestSite.CINGULUM) {
              // 2.5–3 mm by 2 mm (McCracken), less only on the smallest teeth.
              assertThat(laid.measure(Measure.LENGTH).orElseThrow()).isBetween(2.5, 3.0);
              assertThat(laid.measure(Measure.WIDTH).orElseThrow()).isCloseTo(2, within(0.26));
            }
          }
        }
      }
    }
  }

  @Test
  void anExtendedRestPassesTheCentreAndADoubleOneReachesBothRidges() {
    Ground ground = ground(ArchChart.full(Arch.LOWER));
    for (Tooth t : List.of(Tooth.T36, Tooth.T47, Tooth.T44)) {
      Point centre = ground.tooth(t).centre();
      for (Rest.Form form : Rest.Form.values()) {
        Region body =
            lay(
                    ground,
                    new Rest(
                        ID, t, RestSite.MESIAL_OCCLUSAL, form, Rest.Seat.PREPARED_ENAMEL, false))
                .body();
        boolean past = form == Rest.Form.EXTENDED || form == Rest.Form.DOUBLE;
        assertThat(body.contains(centre)).as("%s", form).isEqualTo(past);
        double toFarRidge = body.distanceTo(ground.tooth(t).rim(180));
        assertThat(toFarRidge < 0.3).as("%s", form).isEqualTo(form == Rest.Form.DOUBLE);
      }
    }
  }

  /** A clasp unit holds the tooth over more than half its girth (common practice). */
  @Test
  void aRetentiveAndAReciprocalArmEncloseMoreThanHalfTheTooth() {
    Ground ground = ground(ArchChart.full(Arch.UPPER));
    Laid arm =
        lay(
            ground,
            Clasp.of(ID, Tooth.T16, ClaspForm.CIRCUMFERENTIAL, Zone.DISTOBUCCAL, End.MESIAL));
    Laid brace = lay(ground, new ReciprocalArm(ID, Tooth.T16, Face.LINGUAL, End.MESIAL));
    assertThat(
            arm.measure(Measure.ENCIRCLEMENT_DEGREES).orElseThrow()
                + brace.measure(Measure.ENCIRCLEMENT_DEGREES).orElseThrow())
        .isGreaterThan(180);
  }

  /** Length in space: the plan length and half the height of the crown at a right angle. */
  @Test
  void theLengthOfAnArmIsThatOfItsDrawnLineWithItsDrop() {
    Ground ground = ground(ArchChart.full(Arch.LOWER));
    for (Tooth t : Tooth.in(Arch.LOWER)) {
      Laid laid =
          lay(ground, Clasp.of(ID, t, ClaspForm.CIRCUMFERENTIAL, Zone.DISTOBUCCAL, End.MESIAL));
      double plan = laid.centreline().orElseThrow().length();
      double half = CrownSize.mean(t).height() / 2;
      assertThat(laid.measure(Measure.ARM_LENGTH).orElseThrow())
          .isCloseTo(Math.sqrt(plan * plan + half * half), within(1e-9));
    }
  }

  @Test
  void theChartedUndercutIsReadAtTheTip() {
    ArchChart full = ArchChart.full(Arch.LOWER);
    ArchChart chart =
        full.with(
            Tooth.T45,
            full.tooth(Tooth.T45)
                .withUndercut(Zone.DISTOBUCCAL, java.util.Optional.of(Undercut.of(0.25))));
    Clasp bar = Clasp.of(ID, Tooth.T45, ClaspForm.I_BAR, Zone.DISTOBUCCAL, End.DISTAL);
    assertThat(lay(ground(chart), bar).measure(Measure.UNDERCUT)).hasValue(0.25);
    assertThat(lay(ground(full), bar).measure(Measure.UNDERCUT)).isEmpty();
  }

  @Provide
  Arbitrary<ArchChart> upper() {
    return Mouths.any(Arch.UPPER);
  }

  @Provide
  Arbitrary<ArchChart> lower() {
    return Mouths.any(Arch.LOWER);
  }

  @Property(tries = 25)
  void everyPartCanBeLaidOnAnyPlaceOfAnUpperArch(
      @ForAll("upper") ArchChart chart, @ForAll @IntRange(max = 15) int place) {
    assertLaid(chart, Tooth.at(Arch.UPPER, place));
  }

  @Property(tries = 25)
  void everyPartCanBeLaidOnAnyPlaceOfALowerArch(
      @ForAll("lower") ArchChart chart, @ForAll @IntRange(max = 15) int place) {
    assertLaid(chart, Tooth.at(Arch.LOWER, place));
  }

  /** Mirrored mouths with mirrored parts give mirrored bodies. */
  private static void assertLaid(ArchChart chart, Tooth tooth) {
    Ground here = ground(chart);
    Ground there = ground(Mouths.mirrored(chart));
    ArchDesign saddles = Mouths.saddles(chart);
    Ground among = here.withSaddles(Mouths.laid(chart, saddles).all(Saddle.class));
    for (Component c : every(tooth)) {
      assertThat(lay(among, c).component()).isEqualTo(c);
      Laid laid = lay(here, c);
      Laid other = lay(there, c.mirrored(ID));
      if (!(c instanceof GuidePlane)) {
        assertThat(laid.body().isEmpty()).as("%s", c).isFalse();
        Region back = other.body().transformed(Transform.MIRROR_X);
        double slack = 0.05;
        assertThat(back.area()).as("%s", c).isCloseTo(laid.body().area(), within(slack));
        assertThat(back.intersection(laid.body()).area())
            .as("%s", c)
            .isCloseTo(laid.body().area(), within(slack));
      }
    }
  }

  private static List<Component> every(Tooth t) {
    List<Component> out = new ArrayList<>(clasps(t, true));
    out.addAll(clasps(t, false));
    for (ClaspMaterial m : ClaspMaterial.values()) {
      out.add(new Clasp(ID, t, ClaspForm.RING, Zone.MESIOLINGUAL, End.MESIAL, m));
    }
    for (RestSite site : RestSite.values()) {
      for (Rest.Form form : Rest.Form.values()) {
        out.add(new Rest(ID, t, site, form, Rest.Seat.UNPREPARED, true));
      }
    }
    for (End end : End.values()) {
      out.add(new GuidePlate(ID, t, end));
      for (Face face : Face.values()) {
        out.add(new ReciprocalArm(ID, t, face, end));
      }
    }
    for (GuidePlane.Surface s : GuidePlane.Surface.values()) {
      out.add(new GuidePlane(ID, t, s));
    }
    return out;
  }
}
