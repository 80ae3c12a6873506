package saddlewright.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import saddlewright.archform.ArchForm;
import saddlewright.archform.PlacedTooth;
import saddlewright.casefile.Case;
import saddlewright.casefile.json.CaseStore;
import saddlewright.dentition.Arch;
import saddlewright.design.ArchDesign;
import saddlewright.design.Component;
import saddlewright.design.MajorConnector;
import saddlewright.design.Subject;
import saddlewright.geometry.Box;
import saddlewright.geometry.Point;
import saddlewright.geometry.Transform;
import saddlewright.layout.Laid;
import saddlewright.layout.Layout;

/**
 * Numbers of components stand apart and clear of the drawing, and each leads to its own component.
 *
 * <p>What item references of a technical drawing should be: outside the outlines of what they name,
 * of one size, in rows, with leader lines as short as possible that do not cross (ISO 6433, from
 * memory) and end in a dot within the outline (ISO 128-22, 4).
 */
class BalloonsTest {
  /** Type of print that is still read with ease, points (from memory). */
  private static final double READABLE = 6.5;

  private record Sheet(String name, Layout layout, Drawing drawing, List<PlacedCallout> numbers) {
    static Sheet of(String name, Layout layout) {
      Drawing drawing = ArchDrawing.of(layout, DrawingOptions.DEFAULT);
      List<Callout> numbers = new ArrayList<>();
      for (Component c : layout.design().components()) {
        numbers.add(Callout.number(Subject.of(layout.form().arch(), c), numbers.size() + 1));
      }
      return new Sheet(name, layout, drawing, Callouts.of(layout, drawing, numbers));
    }

    @Override
    public String toString() {
      return name;
    }
  }

  static Stream<Sheet> sheets() throws Exception {
    List<Sheet> out = new ArrayList<>();
    try (Stream<Path> files = Files.list(Path.of("demo-cases"))) {
      for (Path f : files.filter(p -> p.toString().endsWith(".json")).sorted().toList()) {
        Case c = CaseStore.load(f);
        for (Arch arch : Arch.values()) {
          if (!c.design(arch).components().isEmpty()) {
            out.add(
                Sheet.of(
                    f.getFileName() + " " + arch,
                    Layout.of(ArchForm.of(c.chart(arch)), c.design(arch))));
          }
        }
      }
    }
    for (String crowded :
        List.of("06-lower-class-3-third-molar", "09-upper-class-2-torus", "03-both-arches")) {
      out.add(Sheet.of("40 parts from " + crowded, crowded(crowded)));
    }
    return out.stream();
  }

  /** A design with all that another has on one side on both, up to forty components. */
  private static Layout crowded(String name) throws Exception {
    Case c = CaseStore.load(Path.of("demo-cases", name + ".json"));
    Arch arch = c.upperDesign().components().isEmpty() ? Arch.LOWER : Arch.UPPER;
    ArchDesign design = c.design(arch);
    for (Component part : c.design(arch).components()) {
      if (design.components().size() < 40 && !(part instanceof MajorConnector)) {
        design = design.plus(part.mirrored(design.freshId("more")));
      }
    }
    assertThat(design.components()).hasSize(40);
    return Layout.of(ArchForm.of(c.chart(arch)), design);
  }

  @ParameterizedTest
  @MethodSource("sheets")
  void every_component_has_one_number_whose_leader_ends_on_it(Sheet sheet) {
    List<Component> components = sheet.layout().design().components();
    assertThat(sheet.numbers()).hasSameSizeAs(components);
    for (int i = 0; i < components.size(); i++) {
      PlacedCallout n = sheet.numbers().get(i);
      assertThat(n.callout().letter()).isEqualTo(Integer.toString(i + 1));
      assertThat(n.callout().subject().component()).contains(components.get(i).id());
      assertThat(distance(sheet, components.get(i), n.target().orElseThrow()))
          .as("%s of %s", n, components.get(i))
          .isLessThan(0.3);
    }
  }

  /** From a component as laid out; where it is only words, from the area that these take. */
  private static double distance(Sheet sheet, Component component, Point end) {
    Laid laid = sheet.layout().find(component.id()).orElseThrow();
    double least = laid.body().isEmpty() ? 1e9 : laid.body().distanceTo(end);
    for (saddlewright.geometry.Path p : laid.details()) {
      least = Math.min(least, p.distanceTo(end));
    }
    if (laid.centreline().isPresent()) {
      least = Math.min(least, laid.centreline().get().distanceTo(end));
    }
    for (Mark m : sheet.drawing().marks()) {
      boolean its =
          m.subject().flatMap(Subject::component).filter(component.id()::equals).isPresent();
      if (its && m instanceof Mark.Fill f) {
        for (var o : f.outlines()) {
          least = Math.min(least, o.toPath().distanceTo(end));
        }
      }
    }
    return least;
  }

  @ParameterizedTest
  @MethodSource("sheets")
  void no_balloon_touches_another_or_covers_a_crown_or_words(Sheet sheet) {
    for (PlacedCallout a : sheet.numbers()) {
      for (PlacedCallout b : sheet.numbers()) {
        if (a != b) {
          assertThat(a.at().distanceTo(b.at()))
              .as("%s and %s", a, b)
              .isGreaterThan(2 * PlacedCallout.RADIUS + 0.2);
        }
      }
      for (PlacedTooth t : sheet.layout().form().teeth()) {
        if (sheet.layout().form().chart().stands(t.tooth())) {
          assertThat(t.region().distanceTo(a.at()))
              .as("%s on %s", a, t.tooth())
              .isGreaterThan(PlacedCallout.RADIUS);
        }
      }
      for (Mark m : sheet.drawing().marks()) {
        if (m instanceof Mark.Label l) {
          assertThat(far(LeaderGround.box(l), a.at()))
              .as("%s on the words %s", a, l.text())
              .isGreaterThan(PlacedCallout.RADIUS);
        }
      }
    }
  }

  private static double far(Box b, Point p) {
    return b.distanceTo(new Box(p.x(), p.y(), p.x(), p.y()));
  }

  @ParameterizedTest
  @MethodSource("sheets")
  void no_leader_crosses_another_or_runs_under_a_balloon(Sheet sheet) {
    List<PlacedCallout> n = sheet.numbers();
    for (int i = 0; i < n.size(); i++) {
      for (int j = 0; j < n.size(); j++) {
        if (i != j) {
          Point a = n.get(i).at();
          Point b = n.get(i).target().orElseThrow();
          Point c = n.get(j).at();
          assertThat(LeaderLines.cross(a, b, c, n.get(j).target().orElseThrow()))
              .as("%s crosses %s", n.get(i), n.get(j))
              .isFalse();
          assertThat(LeaderLines.distance(a, b, c))
              .as("%s runs under %s", n.get(i), n.get(j))
              .isGreaterThan(PlacedCallout.RADIUS);
        }
      }
    }
  }

  @ParameterizedTest
  @MethodSource("sheets")
  void no_leader_runs_over_the_number_of_a_tooth(Sheet sheet) {
    for (PlacedCallout n : sheet.numbers()) {
      saddlewright.geometry.Path line =
          saddlewright.geometry.Path.of(n.at(), n.target().orElseThrow());
      for (Mark m : sheet.drawing().marks()) {
        if (m instanceof Mark.Label l
            && l.subject().filter(Subject.OfTooth.class::isInstance).isPresent()
            && l.layer() == Layer.LABELS) {
          Box words = LeaderGround.box(l);
          assertThat(line.sampled(0.2).stream().noneMatch(words::contains))
              .as("%s over %s", n, l.text())
              .isTrue();
        }
      }
    }
  }

  @ParameterizedTest
  @MethodSource("sheets")
  void numbers_are_readable_on_paper_and_lie_within_the_drawing(Sheet sheet) {
    List<Callout> numbers = sheet.numbers().stream().map(PlacedCallout::callout).toList();
    Drawing drawing = ArchDrawing.numbered(sheet.layout(), sheet.drawing(), numbers);
    for (PlacedCallout n : sheet.numbers()) {
      Box box = n.box(Transform.IDENTITY);
      assertThat(drawing.bounds().union(box)).isEqualTo(drawing.bounds());
      for (Mark m : n.sign(Transform.IDENTITY)) {
        if (m instanceof Mark.Label l) {
          assertThat(l.size() / 25.4 * 72).isGreaterThanOrEqualTo(READABLE);
          assertThat(LeaderGround.box(l).width()).isLessThan(2 * PlacedCallout.RADIUS - 0.4);
        }
      }
    }
    // The drawing grows by less than a finger's breadth on each side, so that it fits its page.
    assertThat(drawing.bounds().width()).isLessThan(sheet.drawing().bounds().width() + 12);
  }

  @Test
  void the_same_design_is_numbered_in_the_same_way() throws Exception {
    assertThat(crowdedNumbers()).isEqualTo(crowdedNumbers());
  }

  private static List<PlacedCallout> crowdedNumbers() throws Exception {
    return Sheet.of("", crowded("03-both-arches")).numbers();
  }
}
