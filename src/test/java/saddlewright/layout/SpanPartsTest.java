package saddlewright.layout;

import static org.assertj.core.api.Assertions.assertThat;

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
import saddlewright.chart.ArchChart;
import saddlewright.dentition.Arch;
import saddlewright.dentition.Span;
import saddlewright.dentition.Tooth;
import saddlewright.design.ArchDesign;
import saddlewright.design.Backing;
import saddlewright.design.Component;
import saddlewright.design.ComponentId;
import saddlewright.design.ConnectorForm;
import saddlewright.design.FinishLine;
import saddlewright.design.MajorConnector;
import saddlewright.design.MinorConnector;
import saddlewright.design.MinorConnector.Place;
import saddlewright.design.Plating;
import saddlewright.design.PostDam;
import saddlewright.design.Relief;
import saddlewright.design.RetentionMesh;
import saddlewright.design.Saddle;
import saddlewright.design.TissueStop;
import saddlewright.geometry.Region;
import saddlewright.geometry.Transform;

class SpanPartsTest {
  @Provide
  Arbitrary<ArchChart> upper() {
    return Mouths.any(Arch.UPPER);
  }

  @Provide
  Arbitrary<ArchChart> lower() {
    return Mouths.any(Arch.LOWER);
  }

  @Property(tries = 25)
  void everythingCanBeLaidAnywhereInTheUpperArch(
      @ForAll("upper") ArchChart chart,
      @ForAll @IntRange(max = 15) int a,
      @ForAll @IntRange(max = 15) int b) {
    assertEverythingIsLaid(chart, Span.of(Tooth.at(Arch.UPPER, a), Tooth.at(Arch.UPPER, b)));
  }

  @Property(tries = 25)
  void everythingCanBeLaidAnywhereInTheLowerArch(
      @ForAll("lower") ArchChart chart,
      @ForAll @IntRange(max = 15) int a,
      @ForAll @IntRange(max = 15) int b) {
    assertEverythingIsLaid(chart, Span.of(Tooth.at(Arch.LOWER, a), Tooth.at(Arch.LOWER, b)));
  }

  private static void assertEverythingIsLaid(ArchChart chart, Span span) {
    for (ConnectorForm form : ConnectorForm.values()) {
      if (form.arch() == span.arch()) {
        ArchDesign design = ArchDesign.empty(span.arch());
        for (Component c : all(span, form)) {
          design = design.plus(c);
        }
        Layout layout = Mouths.laid(chart, design);
        assertThat(layout.all()).hasSameSizeAs(design.components());
        assertThat(layout.find(ComponentId.of("major")).orElseThrow().body().isEmpty()).isFalse();
      }
    }
  }

  private static List<Component> all(Span span, ConnectorForm form) {
    List<Component> out = new ArrayList<>();
    out.add(Saddle.of(ComponentId.of("saddle"), span));
    out.add(
        new Saddle(
            ComponentId.of("metal"),
            span,
            Saddle.Base.METAL,
            Saddle.Flange.GUM_FITTED,
            Saddle.Finish.METAL));
    for (RetentionMesh.Form mesh : RetentionMesh.Form.values()) {
      out.add(new RetentionMesh(ComponentId.of("mesh-" + mesh.name()), span, mesh));
    }
    out.add(new FinishLine(ComponentId.of("finish"), span, FinishLine.Level.BOTH));
    out.add(new TissueStop(ComponentId.of("stop"), span.first()));
    out.add(new Backing(ComponentId.of("backing"), span.last()));
    out.add(new Plating(ComponentId.of("plating"), span));
    out.add(MajorConnector.of(ComponentId.of("major"), form, span));
    for (Place place : Place.values()) {
      out.add(new MinorConnector(ComponentId.of("minor-" + place.name()), span.first(), place));
    }
    for (PostDam.Extent extent : PostDam.Extent.values()) {
      out.add(new PostDam(ComponentId.of("dam-" + extent.name()), extent));
    }
    for (Relief.Area area : Relief.Area.values()) {
      out.add(new Relief(ComponentId.of("relief-" + area.name()), area, 0.3));
    }
    return out;
  }

  /** Crossing of the margin at 90 degrees: US and UK teaching. */
  @Property(tries = 25)
  void minorConnectorsCrossTheMarginAtARightAngle(@ForAll("lower") ArchChart chart) {
    ArchDesign design = Mouths.designed(chart, ConnectorForm.LINGUAL_BAR);
    for (Tooth t : chart.standing()) {
      for (Place place : Place.values()) {
        design = design.plus(new MinorConnector(design.freshId("minor"), t, place));
      }
    }
    for (Laid l : Mouths.laid(chart, design).all(MinorConnector.class)) {
      l.measure(Measure.CROSSING_DEGREES).ifPresent(d -> assertThat(d).isBetween(75.0, 90.0));
    }
  }

  @ParameterizedTest
  @EnumSource(ConnectorForm.class)
  void aSoundDesignHangsTogether(ConnectorForm form) {
    boolean upper = form.arch() == Arch.UPPER;
    ArchChart chart =
        upper
            ? Mouths.missing(Arch.UPPER, 15, 16, 25, 26)
            : Mouths.missing(Arch.LOWER, 35, 36, 37, 38, 45, 46, 47, 48);
    ArchDesign design = Mouths.designed(chart, form);
    design =
        design
            .plus(new MinorConnector(ComponentId.of("a"), four(upper, 1), Place.MESIAL_EMBRASURE))
            .plus(new MinorConnector(ComponentId.of("b"), four(upper, 2), Place.MESIAL_EMBRASURE))
            .plus(new MinorConnector(ComponentId.of("c"), four(upper, 2), Place.DISTAL_EMBRASURE));
    Layout layout = Mouths.laid(chart, design);
    for (Laid l : layout.all()) {
      if (l.substance() != Substance.NONE) {
        assertThat(layout.framework().isJoined(l.component().id()))
            .as("%s", l.component().id())
            .isTrue();
      }
    }
  }

  private static Tooth four(boolean upper, int quadrant) {
    return Tooth.of((upper ? quadrant : 5 - quadrant) * 10 + 4);
  }

  @Property(tries = 40)
  void theMirroredDesignIsLaidOutMirrored(@ForAll("lower") ArchChart chart) {
    ArchDesign design = Mouths.designed(chart, ConnectorForm.LINGUAL_BAR);
    ArchDesign other = ArchDesign.empty(Arch.LOWER);
    for (Component c : design.components()) {
      other = other.plus(c.mirrored(c.id()));
    }
    Layout here = Mouths.laid(chart, design);
    Layout there = Mouths.laid(Mouths.mirrored(chart), other);
    for (Laid l : here.all()) {
      Region a = l.body();
      Region b =
          there.find(l.component().id()).orElseThrow().body().transformed(Transform.MIRROR_X);
      double apart = a.area() + b.area() - 2 * a.intersection(b).area();
      assertThat(apart).as("%s", l.component()).isLessThan(0.02 * a.area() + 0.3);
    }
  }

  /** Two thirds of the ridge for a lower free end: common practice. */
  @Test
  void aLowerFreeEndMeshCoversTwoThirdsOfTheRidge() {
    ArchChart chart = Mouths.missing(Arch.LOWER, 36, 37, 38);
    Layout layout = Mouths.laid(chart, Mouths.saddles(chart));
    double mesh =
        layout.find(ComponentId.of("mesh-1")).orElseThrow().measure(Measure.LENGTH).getAsDouble();
    double saddle =
        layout.find(ComponentId.of("saddle-1")).orElseThrow().measure(Measure.LENGTH).getAsDouble();
    assertThat(mesh / saddle).isBetween(0.58, 0.68);
  }

  @Test
  void theUsualSpanOfALowerBarEndsAtTheFirstToothOfEachSaddle() {
    ArchChart chart = Mouths.missing(Arch.LOWER, 35, 36, 37, 38, 46, 47, 48);
    assertThat(ConnectorChoice.span(ConnectorForm.LINGUAL_BAR, chart, Mouths.saddles(chart)))
        .isEqualTo(Span.of(46, 35));
  }

  @Test
  void theUsualSpanOfAnUpperConnectorTakesInTheSaddlesAsAWhole() {
    ArchChart chart = Mouths.missing(Arch.UPPER, 15, 16, 25, 26, 27, 28);
    assertThat(ConnectorChoice.span(ConnectorForm.PALATAL_STRAP, chart, Mouths.saddles(chart)))
        .isEqualTo(Span.of(16, 28));
  }

  @Test
  void spacingIsTheWindowBetweenTwoMinorConnectors() {
    ArchChart chart = ArchChart.full(Arch.LOWER);
    ArchDesign design =
        ArchDesign.empty(Arch.LOWER)
            .plus(
                MajorConnector.of(ComponentId.of("m"), ConnectorForm.LINGUAL_BAR, Span.of(46, 36)))
            .plus(new MinorConnector(ComponentId.of("a"), Tooth.T34, Place.MESIAL_EMBRASURE))
            .plus(new MinorConnector(ComponentId.of("b"), Tooth.T35, Place.DISTAL_EMBRASURE));
    Laid a = Mouths.laid(chart, design).find(ComponentId.of("a")).orElseThrow();
    // Two premolars of 7 mm stand between the struts, each some 2 mm wide; the inner arc is
    // shorter.
    assertThat(a.measure(Measure.SPACING).getAsDouble()).isBetween(8.0, 13.0);
  }
}
