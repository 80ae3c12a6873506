package saddlewright.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import saddlewright.archform.ArchForm;
import saddlewright.casefile.Case;
import saddlewright.casefile.json.CaseStore;
import saddlewright.dentition.Arch;
import saddlewright.dentition.Tooth;
import saddlewright.design.Clasp;
import saddlewright.design.Component;
import saddlewright.design.Rest;
import saddlewright.design.Subject;
import saddlewright.geometry.Box;
import saddlewright.geometry.Point;
import saddlewright.geometry.Transform;
import saddlewright.layout.Laid;
import saddlewright.layout.Layout;

/** Signs on the sheet stand beside what they speak of, clear of it and of each other. */
class CalloutsTest {
  private static final Path CASE = Path.of("demo-cases/10-fault-lower-class-2.json");

  private static Layout layout() throws Exception {
    Case c = CaseStore.load(CASE);
    return Layout.of(ArchForm.of(c.lowerChart()), c.lowerDesign());
  }

  private static List<PlacedCallout> signs(Layout layout) {
    List<Callout> all = new ArrayList<>();
    for (Component c : layout.design().components()) {
      all.add(new Callout(Subject.of(Arch.LOWER, c), Callout.Form.OCTAGON, false, "M", "1"));
      all.add(new Callout(Subject.of(Arch.LOWER, c), Callout.Form.SQUARE, false, "?", ""));
    }
    all.add(new Callout(Subject.of(Arch.LOWER), Callout.Form.TRIANGLE, false, "S", "12"));
    all.add(new Callout(Subject.of(Tooth.T46), Callout.Form.CIRCLE, true, "W", ""));
    return Callouts.of(layout, ArchDrawing.of(layout, DrawingOptions.DEFAULT), all);
  }

  @Test
  void no_sign_covers_another() throws Exception {
    List<PlacedCallout> signs = signs(layout());
    assertThat(signs).hasSizeGreaterThan(15);
    for (PlacedCallout a : signs) {
      for (PlacedCallout b : signs) {
        if (a != b) {
          assertThat(a.box(Transform.IDENTITY).overlaps(b.box(Transform.IDENTITY)))
              .as("%s and %s", a, b)
              .isFalse();
        }
      }
    }
  }

  @Test
  void no_sign_covers_a_clasp_a_rest_or_the_number_of_a_tooth() throws Exception {
    Layout layout = layout();
    Drawing drawing = ArchDrawing.of(layout, DrawingOptions.DEFAULT);
    for (PlacedCallout s : signs(layout)) {
      for (Laid laid : layout.all()) {
        boolean small = laid.component() instanceof Clasp || laid.component() instanceof Rest;
        if (small) {
          assertThat(laid.body().contains(s.at())).as("%s on %s", s, laid.component()).isFalse();
        }
      }
      Box box = s.box(Transform.IDENTITY);
      for (Mark m : drawing.marks()) {
        if (m instanceof Mark.Label l && l.layer() == Layer.LABELS) {
          assertThat(box.contains(l.at())).as("%s on the number %s", s, l.text()).isFalse();
        }
      }
    }
  }

  @Test
  void a_sign_stands_near_its_subject_and_points_at_it() throws Exception {
    Layout layout = layout();
    for (PlacedCallout s : signs(layout)) {
      Optional<Laid> laid = s.callout().subject().component().flatMap(layout::find);
      if (laid.isPresent() && !laid.get().body().isEmpty()) {
        Point target = s.target().orElseThrow();
        assertThat(laid.get().body().distanceTo(target)).isLessThan(0.01);
        assertThat(s.at().distanceTo(target)).isLessThan(20);
      }
    }
  }

  @Test
  void shapes_letters_and_numbers_are_upright_on_a_lower_arch() throws Exception {
    Transform page = Transform.scaling(1, -1);
    PlacedCallout s =
        signs(layout()).stream()
            .filter(x -> x.callout().form() == Callout.Form.TRIANGLE)
            .findFirst()
            .orElseThrow();
    Mark.Fill shape =
        s.sign(page).stream()
            .filter(Mark.Fill.class::isInstance)
            .map(Mark.Fill.class::cast)
            .findFirst()
            .orElseThrow();
    List<Point> corners = shape.outlines().get(0).points();
    double middle = page.apply(s.at()).y();
    assertThat(corners.stream().filter(p -> p.y() < middle)).as("one corner on top").hasSize(1);
    assertThat(s.sign(page).stream().filter(Mark.Label.class::isInstance))
        .extracting(m -> ((Mark.Label) m).text())
        .containsExactly("S", "12");
  }

  @Test
  void what_was_accepted_is_hollow_and_only_must_is_filled() throws Exception {
    Layout layout = layout();
    Subject tooth = Subject.of(Tooth.T43);
    List<Callout> two =
        List.of(
            new Callout(tooth, Callout.Form.OCTAGON, false, "M", ""),
            new Callout(tooth, Callout.Form.OCTAGON, true, "W", ""));
    List<Ink> fills =
        Callouts.of(layout, ArchDrawing.of(layout, DrawingOptions.DEFAULT), two).stream()
            .flatMap(c -> c.sign(Transform.IDENTITY).stream())
            .filter(Mark.Fill.class::isInstance)
            .map(Mark::ink)
            .toList();
    assertThat(fills).containsExactly(Ink.FINDING, Ink.PAPER);
  }

  @Test
  void the_key_names_the_signs_that_are_used() throws Exception {
    Layout layout = layout();
    List<Callout> signs =
        List.of(new Callout(Subject.of(Tooth.T43), Callout.Form.SQUARE, false, "?", "3"));
    List<String> words =
        SheetDrawing.of(Optional.empty(), Optional.of(layout), DrawingOptions.DEFAULT, signs)
            .drawing()
            .marks()
            .stream()
            .filter(Mark.Label.class::isInstance)
            .map(m -> ((Mark.Label) m).text())
            .toList();
    assertThat(words).contains("not judged").doesNotContain("must be put right");
  }
}
