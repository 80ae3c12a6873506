package saddlewright.desktop;

import static javafx.scene.input.KeyCode.DIGIT3;
import static javafx.scene.input.KeyCode.DIGIT4;
import static javafx.scene.input.KeyCode.DIGIT5;
import static javafx.scene.input.KeyCode.DOWN;
import static javafx.scene.input.KeyCode.ENTER;
import static javafx.scene.input.KeyCode.ESCAPE;
import static javafx.scene.input.KeyCode.F10;
import static javafx.scene.input.KeyCode.F6;
import static javafx.scene.input.KeyCode.LEFT;
import static javafx.scene.input.KeyCode.RIGHT;
import static javafx.scene.input.KeyCode.SPACE;
import static javafx.scene.input.KeyCode.TAB;
import static javafx.scene.input.KeyCode.UP;
import static org.assertj.core.api.Assertions.assertThat;
import static saddlewright.desktop.Keys.Held.ALT;
import static saddlewright.desktop.Keys.Held.SHIFT;

import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import javafx.scene.Node;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import saddlewright.casefile.json.CaseStore;
import saddlewright.dentition.Arch;
import saddlewright.dentition.RestSite;
import saddlewright.dentition.Tooth;
import saddlewright.design.Rest;
import saddlewright.design.Saddle;
import saddlewright.design.Subject;
import saddlewright.desktop.focus.FocusOrder;
import saddlewright.desktop.tools.Sites;

/**
 * The sheet is worked with the keys: teeth, their sites, what is placed there, parts of the window.
 */
class KeysOnTheSheetTest {
  private OnStage w;
  private Keys k;

  @BeforeEach
  void open(@TempDir Path settings) throws Exception {
    w = OnStage.open(settings);
    w.settle();
    k = new Keys(w);
    var c = CaseStore.load(Path.of("demo-cases", "10-fault-lower-class-2.json"));
    OnStage.run(
        () -> {
          w.table().lay(c, Optional.empty());
          w.table().stepProperty().set(Step.SUPPORT);
          w.table().shownProperty().set(Worktable.Shown.BOTH);
          return null;
        });
    w.settle();
  }

  @AfterEach
  void close() throws Exception {
    w.close();
  }

  private void select(Tooth t) throws Exception {
    OnStage.run(
        () -> {
          w.table().select(Subject.of(t));
          return null;
        });
    w.settle();
  }

  private Optional<Subject> selected() throws Exception {
    return OnStage.run(() -> w.table().selected());
  }

  @Test
  void arrows_walk_along_the_arch_and_to_the_other() throws Exception {
    select(Tooth.T45);
    k.press(RIGHT);
    assertThat(selected()).contains(Subject.of(Tooth.T44));
    k.press(UP);
    assertThat(selected()).contains(Subject.of(Tooth.T14));
    k.press(LEFT);
    assertThat(selected()).contains(Subject.of(Tooth.T15));
    k.press(DOWN);
    assertThat(selected()).contains(Subject.of(Tooth.T45));
  }

  @Test
  void what_the_sheet_says_names_tooth_state_parts_site_and_what_enter_would_place()
      throws Exception {
    select(Tooth.T45);
    k.press(LEFT);
    assertThat(k.told())
        .startsWith("Lower right first molar, 46, standing, ")
        .contains("circumferential clasp, tip distobuccal 0.25 mm")
        .contains("lingual reciprocal arm")
        .contains("the gravest: must")
        .contains(". At mesial occlusal: Rest 46, mesial occlusal");
  }

  @Test
  void enter_places_what_the_ghost_shows_and_tab_turns_to_its_alternatives() throws Exception {
    select(Tooth.T44);
    k.press(ENTER);
    assertThat(w.caption()).contains("Rest 44, mesial occlusal");
    k.press(TAB);
    assertThat(w.caption()).contains("Rest 44, distal occlusal");
    k.press(ENTER);
    Rest placed =
        w.table().current().lowerDesign().stream(Rest.class)
            .filter(r -> r.tooth() == Tooth.T44)
            .findFirst()
            .orElseThrow();
    assertThat(placed.site()).isEqualTo(RestSite.DISTAL_OCCLUSAL);
    assertThat(selected().flatMap(s -> w.table().component(s)).isPresent()).isTrue();
    k.press(ENTER);
    assertThat(w.table().current().lowerDesign().all(Rest.class))
        .extracting(Rest::tooth)
        .filteredOn(t -> t == Tooth.T44)
        .as("the other site is still free and was what Enter showed")
        .hasSize(2);
  }

  @Test
  void alt_enter_places_on_both_sides() throws Exception {
    select(Tooth.T14);
    k.press(ENTER);
    k.press(ENTER, ALT);
    assertThat(w.table().current().upperDesign().all(Rest.class))
        .extracting(Rest::tooth)
        .containsExactlyInAnyOrder(Tooth.T14, Tooth.T24);
  }

  /** Every site of a tooth that any tool tells apart can be walked to from the first of them. */
  @Test
  void shift_and_arrows_reach_every_site() throws Exception {
    for (KeyCode step : List.of(DIGIT4, DIGIT5)) {
      k.press(step);
      Sites sites = step == DIGIT4 ? Sites.SEATS : Sites.ZONES;
      for (Tooth t : List.of(Tooth.T16, Tooth.T13, Tooth.T21, Tooth.T27, Tooth.T44, Tooth.T31)) {
        select(t);
        k.press(ENTER);
        Set<String> reached = new HashSet<>();
        Deque<String> open = new ArrayDeque<>();
        reached.add(site());
        open.add(site());
        while (!open.isEmpty()) {
          String from = open.poll();
          for (KeyCode way : List.of(UP, DOWN, LEFT, RIGHT)) {
            k.toSite(from);
            k.press(way, SHIFT);
            if (reached.add(site())) {
              open.add(site());
            }
          }
        }
        List<String> all =
            OnStage.run(
                () ->
                    sites.on(w.table().assessment().arch(t.arch()).form(), t).stream()
                        .map(Sites.Site::name)
                        .toList());
        assertThat(reached).as(t.toString()).containsExactlyInAnyOrderElementsOf(all);
        k.press(ESCAPE);
      }
    }
  }

  private String site() throws Exception {
    String told = k.told();
    int at = told.indexOf(". At ");
    return told.substring(at + 5, told.indexOf(':', at));
  }

  @Test
  void shift_and_right_extend_a_saddle_over_places() throws Exception {
    OnStage.run(
        () -> {
          w.table().lay(saddlewright.casefile.Case.blank("case-1"), Optional.empty());
          w.table().stepProperty().set(Step.CHART);
          return null;
        });
    select(Tooth.T34);
    for (int i = 0; i < 4; i++) {
      k.press(RIGHT);
      k.press(ENTER);
    }
    k.press(DIGIT3);
    select(Tooth.T36);
    k.press(ENTER);
    k.press(RIGHT, SHIFT);
    assertThat(w.caption()).contains("36–37");
    k.press(ENTER);
    assertThat(w.table().current().lowerDesign().all(Saddle.class))
        .extracting(s -> s.span().toString())
        .containsExactly("36–37");
  }

  @Test
  void escape_takes_the_mark_away_and_tab_then_leaves_the_sheet() throws Exception {
    select(Tooth.T44);
    k.press(ENTER);
    Node sheet = OnStage.run(() -> w.window.sheet());
    k.press(TAB);
    assertThat(k.focused()).isSameAs(sheet);
    k.press(ESCAPE);
    assertThat(w.caption()).isEmpty();
    assertThat(OnStage.run(() -> w.find("site-cursor", Node.class).isVisible())).isFalse();
    k.press(TAB);
    assertThat(k.focused()).isNotSameAs(sheet);
    k.press(ESCAPE);
    assertThat(k.focused()).isSameAs(sheet);
  }

  @Test
  void space_and_the_menu_key_open_all_that_can_be_done() throws Exception {
    select(Tooth.T44);
    k.press(SPACE);
    assertThat(k.lines())
        .contains("Mesial occlusal", "Distal occlusal", "State of the tooth")
        .contains("Go to its survey values");
    k.press(ESCAPE);
    assertThat(k.lines()).isEmpty();
    k.press(F10, SHIFT);
    assertThat(k.lines()).contains("State of the tooth");
    k.press(ESCAPE);
  }

  @Test
  void f6_goes_through_all_parts_of_the_window_and_back() throws Exception {
    OnStage.run(
        () -> {
          w.table().preferences().listShownProperty().set(true);
          w.window.sheet().requestFocus();
          return null;
        });
    w.settle();
    List<String> parts =
        List.of("sheet", "subject", "findings", "status", "order", "roll", "tools", "sheet");
    List<String> there = new ArrayList<>();
    there.add("sheet");
    for (int i = 1; i < parts.size(); i++) {
      k.press(F6);
      there.add(part(parts));
    }
    assertThat(there).isEqualTo(parts);
    List<String> back = new ArrayList<>();
    back.add("sheet");
    for (int i = 1; i < parts.size(); i++) {
      k.press(F6, SHIFT);
      back.add(0, part(parts));
    }
    assertThat(back).isEqualTo(parts);
  }

  private String part(List<String> parts) throws Exception {
    Node focused = k.focused();
    return OnStage.run(
        () ->
            parts.stream()
                .filter(p -> FocusOrder.isWithin(focused, w.find(p, Node.class)))
                .findFirst()
                .orElse(String.valueOf(focused)));
  }

  @Test
  void arrows_choose_steps_and_tools_as_clicks_do() throws Exception {
    OnStage.run(
        () -> {
          w.find("step-SUPPORT", Node.class).requestFocus();
          return null;
        });
    k.press(DOWN);
    assertThat(w.table().stepProperty().get()).isEqualTo(Step.RETENTION);
    OnStage.run(
        () -> {
          w.find("tool-clasp-proposed", Node.class).requestFocus();
          return null;
        });
    k.press(RIGHT);
    select(Tooth.T44);
    OnStage.run(
        () -> {
          w.window.sheet().requestFocus();
          return null;
        });
    k.press(ENTER);
    k.toSite("mesiobuccal");
    assertThat(w.caption()).contains("Three-arm 44");
  }

  @Test
  void an_arch_that_is_not_shown_is_not_walked_to() throws Exception {
    OnStage.run(
        () -> {
          w.table().shownProperty().set(Worktable.Shown.LOWER);
          return null;
        });
    select(Tooth.T44);
    k.press(UP);
    assertThat(selected().map(Subject::arch)).contains(Arch.LOWER);
  }
}
