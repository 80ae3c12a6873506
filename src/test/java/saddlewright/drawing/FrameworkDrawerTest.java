package saddlewright.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import saddlewright.archform.ArchForm;
import saddlewright.chart.ArchChart;
import saddlewright.chart.GapDecision;
import saddlewright.chart.ToothFindings;
import saddlewright.chart.ToothStatus;
import saddlewright.dentition.Arch;
import saddlewright.dentition.Span;
import saddlewright.dentition.Tooth;
import saddlewright.design.ArchDesign;
import saddlewright.design.ComponentId;
import saddlewright.design.ConnectorForm;
import saddlewright.design.FinishLine;
import saddlewright.design.MajorConnector;
import saddlewright.design.MinorConnector;
import saddlewright.design.RetentionMesh;
import saddlewright.design.Saddle;
import saddlewright.design.Subject;
import saddlewright.design.TissueStop;
import saddlewright.geometry.Outline;
import saddlewright.geometry.Path;
import saddlewright.geometry.Point;
import saddlewright.geometry.Region;
import saddlewright.layout.Laid;
import saddlewright.layout.Layout;

class FrameworkDrawerTest {

  @ParameterizedTest
  @EnumSource(
      value = ConnectorForm.class,
      names = {"LINGUAL_BAR", "SUBLINGUAL_BAR", "LINGUAL_PLATE", "CONTINUOUS_BAR", "DENTAL_BAR"})
  void theCastingIsOneShape(ConnectorForm form) {
    List<Mark.Fill> castings = new ArrayList<>();
    for (Mark m : FrameworkDrawer.marks(FrameworkDrawer.parts(layout(form)))) {
      if (m instanceof Mark.Fill f && f.opacity() == 1) {
        castings.add(f);
      }
    }
    assertThat(castings).hasSize(1);
    List<Outline> rings = castings.get(0).outlines();
    Region outer = rings.stream().map(Outline::toRegion).reduce(Region.EMPTY, Region::plus);
    assertThat(outer.pieces()).hasSize(1);
  }

  @Test
  void theBarIsDashedWhereAcrylicCoversIt() {
    List<Mark.Stroke> dashed = new ArrayList<>();
    for (Mark m : FrameworkDrawer.marks(FrameworkDrawer.parts(layout(ConnectorForm.LINGUAL_BAR)))) {
      if (m instanceof Mark.Stroke s && !s.dash().isEmpty()) {
        dashed.add(s);
      }
    }
    assertThat(dashed).hasSize(1);
    Layout layout = layout(ConnectorForm.LINGUAL_BAR);
    Region acrylic =
        Region.union(layout.all(Saddle.class).stream().map(Laid::body).toList()).grown(0.05);
    for (Path p : dashed.get(0).paths()) {
      for (Point q : p.points()) {
        assertThat(acrylic.contains(q)).isTrue();
      }
    }
  }

  @Test
  void everyComponentCanBePickedByAFillOfItsOwn() {
    Layout layout = layout(ConnectorForm.LINGUAL_BAR);
    Drawing drawing = ArchDrawing.of(layout, DrawingOptions.DEFAULT);
    for (Laid l : layout.all()) {
      Optional<Subject> subject = Optional.of(Subject.of(Arch.LOWER, l.component()));
      assertThat(drawing.marks())
          .as("%s", l.component().id())
          .anyMatch(
              m ->
                  m instanceof Mark.Fill
                      && m.layer() == Layer.COMPONENTS
                      && m.subject().equals(subject));
    }
  }

  @Test
  void hatchAndStippleStayInsideAndClearOfHoles() {
    Region ring =
        Outline.ellipse(new Point(3, 4), 12, 8, 0.3)
            .toRegion()
            .minus(Outline.ellipse(new Point(3, 4), 6, 3, 0.3).toRegion());
    List<Path> lines = Texture.hatch(ring, 45, 1);
    // Lines at a distance of 1 mm cover an area as long as they are altogether.
    double total = lines.stream().mapToDouble(Path::length).sum();
    assertThat(total).isBetween(0.97 * ring.area(), 1.03 * ring.area());
    Region near = ring.grown(0.01);
    for (Path p : lines) {
      assertThat(near.contains(p.at(p.length() / 2))).isTrue();
      assertThat(near.contains(p.start())).isTrue();
    }
    List<Point> dots = Texture.stipple(ring, 1);
    assertThat(dots).hasSizeBetween(100, 330).allMatch(ring::contains);
  }

  private static Layout layout(ConnectorForm form) {
    ArchChart chart = ArchChart.full(Arch.LOWER);
    for (int fdi : new int[] {35, 36, 37, 38, 45, 46, 47, 48}) {
      chart =
          chart.with(Tooth.of(fdi), ToothFindings.of(ToothStatus.MISSING, GapDecision.REPLACED));
    }
    ArchDesign design = ArchDesign.empty(Arch.LOWER);
    for (Span span : List.of(Span.of(48, 45), Span.of(35, 38))) {
      design =
          design
              .plus(Saddle.of(design.freshId("saddle"), span))
              .plus(new RetentionMesh(design.freshId("mesh"), span, RetentionMesh.Form.LATTICE))
              .plus(new FinishLine(design.freshId("finish"), span, FinishLine.Level.BOTH));
    }
    design =
        design
            .plus(MajorConnector.of(ComponentId.of("major"), form, Span.of(45, 35)))
            .plus(new TissueStop(ComponentId.of("stop"), Tooth.T37));
    for (Tooth t : List.of(Tooth.T34, Tooth.T44)) {
      design =
          design.plus(
              new MinorConnector(
                  design.freshId("minor"), t, MinorConnector.Place.MESIAL_EMBRASURE));
    }
    return Layout.of(ArchForm.of(chart), design);
  }
}
