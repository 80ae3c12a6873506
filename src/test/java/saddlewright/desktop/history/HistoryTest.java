package saddlewright.desktop.history;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import saddlewright.casefile.Case;

class HistoryTest {
  private static final Instant NOON = Instant.parse("2026-03-02T12:00:00Z");

  private final Case blank = Case.blank("case-1");
  private final History history = new History(() -> NOON);

  private Case titled(String title) {
    return blank.withIdentity("case-1", title, "");
  }

  @Test
  void every_edit_is_kept_however_many_there_are() {
    history.begin(blank);
    for (int i = 1; i <= 5000; i++) {
      history.push("edit " + i, titled("t" + i));
    }
    assertThat(history.entries()).hasSize(5000);
    for (int i = 4999; i >= 1; i--) {
      assertThat(history.undo()).contains(titled("t" + i));
    }
    assertThat(history.undo()).contains(blank);
    assertThat(history.undo()).isEmpty();
    assertThat(history.redoName()).contains("edit 1");
  }

  @Test
  void one_can_go_to_any_state_and_a_new_edit_there_forgets_what_came_after() {
    history.begin(blank);
    history.push("a", titled("a"));
    history.push("b", titled("b"));
    history.push("c", titled("c"));
    assertThat(history.goTo(1)).contains(titled("a"));
    assertThat(history.undoName()).contains("a");
    assertThat(history.redoName()).contains("b");
    assertThat(history.goTo(3)).contains(titled("c"));
    assertThat(history.goTo(4)).isEmpty();
    assertThat(history.goTo(-1)).isEmpty();
    history.goTo(1);
    history.push("d", titled("d"));
    assertThat(history.entries()).extracting(History.Entry::name).containsExactly("a", "d");
    assertThat(history.redoName()).isEmpty();
    assertThat(history.entries().get(1).at()).isEqualTo(NOON);
  }

  @Test
  void the_edits_of_a_gesture_are_taken_back_together() {
    history.begin(blank);
    history.push("a", titled("a"));
    Gesture drag = new Gesture();
    history.push("drag", titled("b"), drag);
    history.push("drag", titled("c"), drag);
    history.push("drag", titled("d"), drag);
    assertThat(history.entries()).hasSize(2);
    assertThat(history.undo()).contains(titled("a"));
  }

  @Test
  void a_gesture_that_ends_where_it_began_leaves_no_entry() {
    history.begin(blank);
    Gesture drag = new Gesture();
    history.push("drag", titled("b"), drag);
    history.push("drag", blank, drag);
    assertThat(history.undoName()).isEqualTo(Optional.empty());
    history.push("drag", titled("c"), drag);
    assertThat(history.undo()).contains(blank);
  }

  @Test
  void another_edit_an_undo_or_a_save_ends_a_gesture() {
    history.begin(blank);
    Gesture drag = new Gesture();
    history.push("drag", titled("b"), drag);
    history.push("other", titled("c"));
    history.push("drag", titled("d"), drag);
    assertThat(history.entries()).hasSize(3);
    history.undo();
    history.push("drag", titled("e"), drag);
    assertThat(history.entries()).hasSize(3);
    history.endGesture();
    history.push("drag", titled("f"), drag);
    assertThat(history.entries()).hasSize(4);
  }
}
