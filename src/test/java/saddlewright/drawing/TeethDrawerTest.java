package saddlewright.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import saddlewright.archform.ArchForm;
import saddlewright.archform.MirroredCharts;
import saddlewright.chart.ArchChart;
import saddlewright.chart.GapDecision;
import saddlewright.chart.Tilt;
import saddlewright.chart.ToothFindings;
import saddlewright.chart.ToothStatus;
import saddlewright.chart.Undercut;
import saddlewright.dentition.Arch;
import saddlewright.dentition.Notation;
import saddlewright.dentition.Tooth;
import saddlewright.dentition.Zone;
import saddlewright.design.ArchDesign;
import saddlewright.design.Subject;
import saddlewright.geometry.Path;
import saddlewright.geometry.Point;
import saddlewright.geometry.Region;
import saddlewright.geometry.Transform;
import saddlewright.layout.Layout;

/** What a design sheet shows of each tooth (hatched, crossed and dashed: common practice). */
class TeethDrawerTest {
  private static final Tooth TOOTH = Tooth.T36;

  private static Layout layout(ArchChart chart) {
    return Layout.of(ArchForm.of(chart), ArchDesign.empty(chart.arch()));
  }

  private static Layout lower(ToothFindings findings) {
    return layout(ArchChart.full(Arch.LOWER).with(TOOTH, findings));
  }

  private static List<Mark> of(Layout layout, Tooth tooth) {
    return TeethDrawer.marks(layout.form(), DrawingOptions.DEFAULT).stream()
        .filter(m -> m.subject().equals(Optional.of(Subject.of(tooth))))
        .toList();
  }

  private static Stream<Mark.Stroke> strokes(List<Mark> marks, Ink ink) {
    return marks.stream()
        .filter(m -> m.ink() == ink)
        .filter(Mark.Stroke.class::isInstance)
        .map(Mark.Stroke.class::cast);
  }

  private static List<String> words(List<Mark> marks) {
    return marks.stream()
        .filter(Mark.Label.class::isInstance)
        .map(m -> ((Mark.Label) m).text())
        .toList();
  }

  @ParameterizedTest
  @EnumSource(Tooth.class)
  void everyCrownHasAnOutlineDetailsAndItsNumber(Tooth tooth) {
    List<Mark> marks = of(layout(ArchChart.full(tooth.arch())), tooth);
    assertThat(marks).anyMatch(m -> m instanceof Mark.Fill && m.ink() == Ink.ENAMEL);
    assertThat(marks).anyMatch(m -> m.ink() == Ink.FISSURE);
    assertThat(words(marks)).containsExactly(tooth.toString());
    // An incisal edge belongs to front teeth only.
    boolean edge = strokes(marks, Ink.TOOTH_LINE).anyMatch(s -> s.paths().size() == 2);
    assertThat(edge).isEqualTo(tooth.isAnterior());
  }

  @Test
  void aReplacedToothIsHatchedInsideItsOutlineOnly() {
    Layout layout = lower(ToothFindings.of(ToothStatus.MISSING, GapDecision.REPLACED));
    Region crown = layout.form().tooth(TOOTH).region().grown(0.01);
    List<Path> hatch =
        strokes(of(layout, TOOTH), Ink.FAINT)
            .filter(s -> s.paths().size() > 6)
            .flatMap(s -> s.paths().stream())
            .toList();
    assertThat(hatch).hasSizeGreaterThan(6);
    assertThat(hatch).allMatch(p -> crown.contains(p.start()) && crown.contains(p.end()));
  }

  @Test
  void aToothNotReplacedIsAFaintDashedOutlineAndNothingElse() {
    List<Mark> marks =
        of(lower(ToothFindings.of(ToothStatus.MISSING, GapDecision.NOT_REPLACED)), TOOTH);
    assertThat(marks).hasSize(2).allMatch(m -> m.ink() == Ink.FAINT);
    assertThat(strokes(marks, Ink.FAINT)).singleElement().matches(s -> !s.dash().isEmpty());
    assertThat(words(marks)).containsExactly("36");
  }

  @Test
  void aClosedSpaceHasATickButNeitherCrownNorNumber() {
    List<Mark> marks = of(lower(ToothFindings.of(ToothStatus.MISSING, GapDecision.CLOSED)), TOOTH);
    assertThat(marks).hasSize(1);
    assertThat(words(marks)).isEmpty();
  }

  @Test
  void aToothToBeExtractedKeepsItsCrownAndBearsACross() {
    List<Mark> marks =
        of(lower(ToothFindings.of(ToothStatus.TO_BE_EXTRACTED, GapDecision.REPLACED)), TOOTH);
    assertThat(strokes(marks, Ink.EXTRACTION)).singleElement().matches(s -> s.paths().size() == 2);
    assertThat(marks).anyMatch(m -> m.ink() == Ink.ENAMEL);
  }

  @Test
  void lowerMolarRootsAreTwoAndUpperOnesThree() {
    ToothFindings root = ToothFindings.of(ToothStatus.RETAINED_ROOT, GapDecision.REPLACED);
    assertThat(canals(of(lower(root), TOOTH))).isEqualTo(2);
    Layout upper = layout(ArchChart.full(Arch.UPPER).with(Tooth.T16, root));
    assertThat(canals(of(upper, Tooth.T16))).isEqualTo(3);
  }

  private static int canals(List<Mark> marks) {
    return marks.stream()
        .filter(Mark.Dots.class::isInstance)
        .mapToInt(m -> ((Mark.Dots) m).points().size())
        .sum();
  }

  @Test
  void surveyShowsUndercutTiltAndMobilityUnlessSwitchedOff() {
    ToothFindings found =
        ToothFindings.STANDING
            .withUndercut(Zone.DISTOBUCCAL, Optional.of(Undercut.of(0.25)))
            .withTilt(Optional.of(Tilt.MESIAL), Optional.of(10.0))
            .withMobility(Optional.of(2));
    Layout layout = lower(found);
    List<Mark> marks = of(layout, TOOTH);
    assertThat(words(marks)).containsExactlyInAnyOrder("0.25", "II", "36");
    assertThat(marks).anyMatch(m -> m.layer() == Layer.SURVEY && m instanceof Mark.Fill);
    assertThat(
            TeethDrawer.marks(layout.form(), new DrawingOptions(Notation.FDI, true, false)).stream()
                .filter(m -> m.layer() == Layer.SURVEY))
        .isEmpty();
  }

  @ParameterizedTest
  @EnumSource(Arch.class)
  void numbersStandApartOutsideTheSulcusAndOnTheSheet(Arch arch) {
    Layout layout = layout(ArchChart.full(arch));
    List<Point> places = Tooth.in(arch).stream().map(t -> layout.form().labelPlace(t)).toList();
    for (int i = 0; i < places.size(); i++) {
      Point p = places.get(i);
      assertThat(layout.form().buccalSulcus().distanceTo(p)).isBetween(1.7, 3.6);
      assertThat(layout.form().box().contains(p)).isTrue();
      for (int k = i + 1; k < places.size(); k++) {
        assertThat(p.distanceTo(places.get(k))).isGreaterThan(5);
      }
    }
  }

  @Test
  void numbersFollowTheNotation() {
    Layout layout = layout(ArchChart.full(Arch.LOWER));
    List<Mark> marks =
        TeethDrawer.marks(layout.form(), new DrawingOptions(Notation.UNIVERSAL, true, true));
    // Lower left third molar is 17, right one 32 (ADA numbering, from memory).
    assertThat(words(marks)).contains("17", "32").doesNotContain("38");
  }

  @Test
  void aMirroredChartGivesMirroredMarks() {
    ArchChart chart =
        ArchChart.full(Arch.LOWER)
            .with(Tooth.T36, ToothFindings.of(ToothStatus.MISSING, GapDecision.REPLACED))
            .with(Tooth.T44, ToothFindings.STANDING.withRotation(Optional.of(25.0)))
            .with(Tooth.T47, ToothFindings.of(ToothStatus.MISSING, GapDecision.CLOSED));
    assertThat(inked(layout(MirroredCharts.mirrored(chart)), Transform.IDENTITY))
        .isEqualTo(inked(layout(chart), Transform.MIRROR_X));
  }

  /** Lengths of line by ink and the middle of each, rounded to 0.1 mm, in no order. */
  private static List<String> inked(Layout layout, Transform t) {
    return TeethDrawer.marks(layout.form(), DrawingOptions.DEFAULT).stream()
        .filter(m -> m instanceof Mark.Fill)
        .map(m -> ((Mark.Fill) m.transformed(t)))
        .map(f -> f.ink() + place(f.outlines().get(0).centroid()))
        .sorted()
        .toList();
  }

  private static String place(Point p) {
    return " " + Math.round(10 * p.x()) + " " + Math.round(10 * p.y());
  }

  @Test
  void anatomyCanBeSwitchedOff() {
    ArchForm form = ArchForm.of(ArchChart.full(Arch.UPPER));
    assertThat(AnatomyDrawer.marks(form, DrawingOptions.DEFAULT)).isNotEmpty();
    assertThat(AnatomyDrawer.marks(form, new DrawingOptions(Notation.FDI, false, true))).isEmpty();
  }

  @ParameterizedTest
  @EnumSource(Arch.class)
  void anatomyLiesBelowTheSaddles(Arch arch) {
    assertThat(AnatomyDrawer.marks(ArchForm.of(ArchChart.full(arch)), DrawingOptions.DEFAULT))
        .allMatch(m -> m.layer().compareTo(Layer.SADDLES) < 0);
  }
}
