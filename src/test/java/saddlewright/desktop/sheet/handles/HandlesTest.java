package saddlewright.desktop.sheet.handles;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import saddlewright.casefile.Assessment;
import saddlewright.casefile.json.CaseStore;
import saddlewright.dentition.Arch;
import saddlewright.dentition.RestSite;
import saddlewright.design.ArchDesign;
import saddlewright.design.Component;
import saddlewright.design.ConnectorForm;
import saddlewright.design.ConnectorShape;
import saddlewright.design.MajorConnector;
import saddlewright.design.MinorConnector;
import saddlewright.design.Rest;
import saddlewright.design.RetentionMesh;
import saddlewright.design.Saddle;
import saddlewright.design.Subject;
import saddlewright.geometry.Point;
import saddlewright.geometry.Vector;
import saddlewright.rules.Finding;
import saddlewright.rules.RuleBook;
import saddlewright.rules.Situation;

/** Handles on the demo cases: where they stand, what they set, and that they say what rules say. */
class HandlesTest {
  private static final Path FOLDER = Path.of("demo-cases");

  static List<Path> cases() throws IOException {
    try (Stream<Path> files = Files.list(FOLDER)) {
      return files.filter(f -> f.toString().endsWith(".json")).sorted().toList();
    }
  }

  private static List<Situation> arches(Path file) throws Exception {
    Assessment a = Assessment.of(CaseStore.load(file));
    return List.of(a.upper(), a.lower());
  }

  static Situation after(Situation s, Stop stop) {
    return s.next(s.chart(), s.opposing(), stop.edit().applyTo(s.design()), s.profile());
  }

  private static List<Handle> handles(Situation s) {
    List<Handle> out = new ArrayList<>();
    for (Component c : s.design().components()) {
      out.addAll(Handles.of(s, c));
    }
    return out;
  }

  @ParameterizedTest
  @MethodSource("cases")
  void put_down_where_it_stands_a_handle_changes_nothing(Path file) throws Exception {
    for (Situation s : arches(file)) {
      for (Handle h : handles(s)) {
        if (h.track() instanceof Steps steps) {
          ArchDesign same = steps.stops().get(steps.now()).edit().applyTo(s.design());
          assertThat(same).as("%s of %s", h.id(), h.component()).isEqualTo(s.design());
        }
      }
    }
  }

  @ParameterizedTest
  @MethodSource("cases")
  void every_place_that_a_handle_offers_can_be_laid_out_and_is_gone_to_by_pointing(Path file)
      throws Exception {
    for (Situation s : arches(file)) {
      for (Handle h : handles(s)) {
        for (Stop stop : places(h.track())) {
          Situation next = after(s, stop);
          assertThat(next.layout().find(h.component())).as("%s", h.id()).isPresent();
          assertThat(h.track().nearest(stop.at(), true).edit().applyTo(s.design()))
              .as("%s of %s at %s", h.id(), h.component(), stop.words())
              .isEqualTo(next.design());
        }
      }
    }
  }

  private static List<Stop> places(Track track) {
    if (track instanceof Steps steps) {
      return steps.stops();
    }
    List<Stop> out = new ArrayList<>();
    for (int mm = -6; mm <= 6; mm += 3) {
      Vector way = track instanceof Slide l ? l.along() : new Vector(0.6, 0.8);
      out.add(track.nearest(track.here().plus(way.times(mm)), false));
    }
    return out;
  }

  /** A border is set to half millimetres, and finely to tenths. */
  @Test
  void lengths_snap_to_the_grid_and_stay_within_what_the_component_can_have() throws Exception {
    Situation lower = arches(FOLDER.resolve("01-lower-class-1-rpi.json")).get(1);
    Handle height = find(lower, "height");
    Slide slide = (Slide) height.track();
    Point p = slide.here().plus(slide.along().times(1.234));
    assertThat(slide.nearest(p, false).words()).isEqualTo("5 mm");
    assertThat(slide.nearest(p, true).words()).isEqualTo("5.2 mm");
    assertThat(slide.nearest(slide.here().plus(slide.along().times(-99)), false).words())
        .isEqualTo("1 mm");
    assertThat(slide.nearest(slide.here().plus(slide.along().times(99)), false).words())
        .isEqualTo("25 mm");
  }

  @Test
  void arrows_go_half_a_millimetre_and_finely_a_tenth() throws Exception {
    Situation lower = arches(FOLDER.resolve("01-lower-class-1-rpi.json")).get(1);
    Slide slide = (Slide) find(lower, "height").track();
    assertThat(slide.words()).isEqualTo("4 mm");
    assertThat(slide.next(slide.along(), false).map(Stop::words)).hasValue("4.5 mm");
    assertThat(slide.next(slide.along(), true).map(Stop::words)).hasValue("4.1 mm");
    assertThat(slide.next(slide.along().negated(), false).map(Stop::words)).hasValue("3.5 mm");
  }

  @Test
  void arrows_go_from_place_to_place_and_stop_at_the_last() throws Exception {
    for (Path file : cases()) {
      for (Situation s : arches(file)) {
        for (Handle h : handles(s)) {
          if (h.track() instanceof Steps steps) {
            Set<String> reached = new TreeSet<>();
            walk(steps, reached);
            assertThat(reached)
                .as("%s of %s by the arrow keys", h.id(), h.component())
                .containsAll(steps.stops().stream().map(x -> x.words()).toList());
          }
        }
      }
    }
  }

  private static void walk(Steps steps, Set<String> reached) {
    if (!reached.add(steps.words())) {
      return;
    }
    for (Vector way :
        List.of(new Vector(1, 0), new Vector(-1, 0), new Vector(0, 1), new Vector(0, -1))) {
      steps
          .next(way, false)
          .ifPresent(
              s ->
                  walk(new Steps(steps.stops(), steps.stops().indexOf(s), steps.round()), reached));
    }
  }

  private static Handle find(Situation s, String id) {
    return handles(s).stream().filter(h -> h.id().equals(id)).findFirst().orElseThrow();
  }

  /**
   * A handle in every place that it can have says of its component what the report says there: the
   * same sentences with the same millimetres, and nothing that the report does not say.
   */
  @ParameterizedTest
  @MethodSource("cases")
  void handles_say_the_millimetres_of_the_findings(Path file) throws Exception {
    for (Situation s : arches(file)) {
      for (Handle h : handles(s)) {
        for (Stop stop : places(h.track())) {
          Situation next = after(s, stop);
          Set<String> watched = new HashSet<>();
          h.gauges().forEach(g -> watched.add(g.rule()));
          List<String> found = new ArrayList<>();
          for (String rule : watched) {
            RuleBook.find(rule).orElseThrow().judge(next).findings().stream()
                .filter(
                    f -> f.subjects().contains(new Subject.OfComponent(s.arch(), h.component())))
                .map(Finding::sentence)
                .forEach(found::add);
          }
          List<Reading> readings = h.readings(next);
          assertThat(readings.stream().filter(Reading::warning).map(Reading::words).toList())
              .as("%s of %s at %s", h.id(), h.component(), stop.words())
              .allMatch(found::contains);
          assertThat(readings.stream().anyMatch(Reading::warning)).isEqualTo(!found.isEmpty());
        }
      }
    }
  }

  /** Each kind of component has the handles of what can be moved of it. */
  @Test
  void each_kind_of_component_has_its_handles() throws Exception {
    Map<String, Set<String>> kinds = new TreeMap<>();
    for (Path file : cases()) {
      for (Situation s : arches(file)) {
        for (Component c : s.design().components()) {
          Set<String> ids =
              kinds.computeIfAbsent(c.getClass().getSimpleName(), k -> new TreeSet<>());
          Handles.of(s, c).forEach(h -> ids.add(h.id()));
        }
      }
    }
    assertThat(kinds.get("Saddle")).containsExactly("left-end", "right-end");
    assertThat(kinds.get("RetentionMesh")).contains("left-end", "right-end");
    assertThat(kinds.get("Rest")).containsExactly("site");
    assertThat(kinds.get("Clasp")).containsExactly("origin", "tip");
    assertThat(kinds.get("ReciprocalArm")).containsExactly("arm-end");
    assertThat(kinds.get("MinorConnector")).containsExactly("strut");
    assertThat(kinds.get("MajorConnector"))
        .contains(
            "anterior",
            "posterior",
            "opening-front",
            "opening-back",
            "side-limbs",
            "clearance",
            "height",
            "left-end",
            "right-end");
  }

  @Test
  void a_rest_that_moves_takes_its_strut_along() throws Exception {
    Situation lower = arches(FOLDER.resolve("01-lower-class-1-rpi.json")).get(1);
    var rest =
        lower.design().stream(Rest.class)
            .filter(r -> r.site() == RestSite.MESIAL_OCCLUSAL)
            .findFirst()
            .orElseThrow();
    Handle h = Handles.of(lower, rest).get(0);
    Stop distal =
        ((Steps) h.track())
            .stops().stream().filter(x -> x.words().contains("distal")).findFirst().orElseThrow();
    ArchDesign next = distal.edit().applyTo(lower.design());
    assertThat(struts(next, rest)).as("beside the saddle none is needed").isZero();
    assertThat(struts(lower.design(), rest)).isEqualTo(1);
  }

  private static long struts(ArchDesign d, Rest rest) {
    return d.stream(MinorConnector.class).filter(m -> m.tooth() == rest.tooth()).count();
  }

  @Test
  void a_saddle_takes_its_mesh_and_finish_line_along() throws Exception {
    Situation lower = arches(FOLDER.resolve("01-lower-class-1-rpi.json")).get(1);
    var saddle = lower.design().all(Saddle.class).get(0);
    Handle h =
        Handles.of(lower, saddle).stream()
            .filter(x -> ((Steps) x.track()).stops().size() > 2)
            .findFirst()
            .orElseThrow();
    Steps steps = (Steps) h.track();
    Stop shorter = steps.stops().get(steps.now() == 0 ? 1 : 0);
    ArchDesign next = shorter.edit().applyTo(lower.design());
    var span = ((Saddle) next.find(saddle.id()).orElseThrow()).span();
    assertThat(span.size()).isNotEqualTo(saddle.span().size());
    assertThat(next.all(RetentionMesh.class))
        .filteredOn(m -> m.span().overlaps(span))
        .allMatch(m -> m.span().equals(span));
  }

  @Test
  void every_connector_form_has_what_it_is_shaped_by() throws Exception {
    Situation upper = arches(FOLDER.resolve("03-both-arches.json")).get(0);
    var c = upper.design().majorConnector().orElseThrow();
    for (ConnectorForm form : ConnectorForm.values()) {
      if (form.arch() == Arch.UPPER) {
        var other = new MajorConnector(c.id(), form, c.span(), ConnectorShape.DEFAULT);
        Situation s =
            upper.next(
                upper.chart(), upper.opposing(), upper.design().with(other), upper.profile());
        List<String> ids = Handles.of(s, other).stream().map(Handle::id).toList();
        assertThat(ids).as("%s", form).contains("anterior");
        assertThat(Optional.of(ids.contains("posterior")))
            .as("%s", form)
            .hasValue(form != ConnectorForm.HORSESHOE);
      }
    }
  }
}
