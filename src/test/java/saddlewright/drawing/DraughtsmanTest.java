package saddlewright.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import saddlewright.archform.ArchForm;
import saddlewright.casefile.Case;
import saddlewright.casefile.json.CaseStore;
import saddlewright.dentition.Arch;
import saddlewright.dentition.Notation;
import saddlewright.design.ArchDesign;
import saddlewright.design.Component;
import saddlewright.design.ComponentId;
import saddlewright.design.GuidePlate;
import saddlewright.design.MinorConnector;
import saddlewright.layout.Laid;
import saddlewright.layout.Layout;

/** What is taken over from the layout and the drawing before an edit is as if made anew. */
class DraughtsmanTest {
  private static Case demo(String name) throws Exception {
    return CaseStore.load(Path.of("demo-cases", name + ".json"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"01-lower-class-1-rpi", "03-both-arches", "09-upper-class-2-torus"})
  void after_each_edit_all_lies_and_is_drawn_as_if_for_the_first_time(String name)
      throws Exception {
    Case whole = demo(name);
    for (Arch arch : Arch.values()) {
      ArchForm form = ArchForm.of(whole.chart(arch));
      Layout layout = Layout.of(form, whole.design(arch));
      Draughtsman draughtsman = new Draughtsman();
      for (ArchDesign design : edits(whole.design(arch))) {
        layout = layout.redesigned(design);
        Layout anew = Layout.of(form, design);
        assertThat(layout.all()).extracting(Laid::component).isEqualTo(design.components());
        for (Component c : design.components()) {
          assertThat(layout.find(c.id()).map(Laid::measures))
              .as(c.id() + " in " + design.components())
              .isEqualTo(anew.find(c.id()).map(Laid::measures));
        }
        assertThat(draughtsman.draw(layout, DrawingOptions.DEFAULT))
            .isEqualTo(ArchDrawing.of(anew, DrawingOptions.DEFAULT));
      }
    }
  }

  /** Each component away and back again; then all of them away, one after the other. */
  private static List<ArchDesign> edits(ArchDesign whole) {
    List<ArchDesign> out = new ArrayList<>();
    for (Component c : whole.components()) {
      out.add(whole.without(c.id()));
      out.add(whole);
    }
    ArchDesign left = whole;
    for (Component c : whole.components()) {
      left = left.without(c.id());
      out.add(left);
    }
    return out;
  }

  @Test
  void other_options_and_another_mouth_are_drawn_as_they_are() throws Exception {
    Case c = demo("03-both-arches");
    Layout layout = Layout.of(ArchForm.of(c.lowerChart()), c.lowerDesign());
    Layout other =
        Layout.of(
            ArchForm.of(demo("01-lower-class-1-rpi").lowerChart()), ArchDesign.empty(Arch.LOWER));
    DrawingOptions bare = new DrawingOptions(Notation.UNIVERSAL, false, false);
    Draughtsman draughtsman = new Draughtsman();
    for (Layout l : List.of(layout, other, layout)) {
      for (DrawingOptions options : List.of(DrawingOptions.DEFAULT, bare)) {
        assertThat(draughtsman.draw(l, options)).isEqualTo(ArchDrawing.of(l, options));
      }
    }
  }

  @Test
  void marks_of_what_stays_are_the_very_same() throws Exception {
    Case c = demo("03-both-arches");
    Layout before = Layout.of(ArchForm.of(c.lowerChart()), c.lowerDesign());
    ComponentId one =
        c.lowerDesign().components().stream()
            .filter(x -> !(x instanceof GuidePlate || x instanceof MinorConnector))
            .reduce((a, b) -> b)
            .orElseThrow()
            .id();
    Draughtsman draughtsman = new Draughtsman();
    Set<Mark> known = Collections.newSetFromMap(new IdentityHashMap<>());
    known.addAll(draughtsman.draw(before, DrawingOptions.DEFAULT).marks());
    Layout after = before.redesigned(c.lowerDesign().without(one));
    List<Mark> fresh =
        draughtsman.draw(after, DrawingOptions.DEFAULT).marks().stream()
            .filter(m -> !known.contains(m))
            .toList();
    assertThat(fresh).allMatch(m -> m.subject().equals(Optional.empty()));
    assertThat(fresh).hasSizeLessThan(6);
  }
}
