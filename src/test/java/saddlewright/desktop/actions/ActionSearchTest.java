package saddlewright.desktop.actions;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class ActionSearchTest {
  private static Action action(String name, boolean ready, String... path) {
    return new Action(List.of(path), name, List.of(), ready, Optional.empty(), () -> {});
  }

  private final List<Action> all =
      List.of(
          action("New case", true, "File"),
          action("Save as…", true, "File"),
          action("Save", true, "File"),
          action("Undo", false, "Edit"),
          action("Lingual bar", true, "Design", "7  Connectors"),
          action("Sublingual bar", true, "Design", "7  Connectors"),
          action("Größe des Blatts", true, "View"));

  private List<String> found(String sought) {
    return ActionSearch.find(all, sought).stream().map(Action::name).toList();
  }

  @Test
  void nothing_sought_gives_all_with_what_is_not_ready_last() {
    assertThat(found("")).hasSize(7).endsWith("Undo").startsWith("New case");
  }

  @Test
  void part_of_a_name_finds_it_and_its_beginning_counts_most() {
    assertThat(found("ling")).containsExactly("Lingual bar", "Sublingual bar");
    assertThat(found("bar")).containsExactly("Lingual bar", "Sublingual bar");
    assertThat(found("sav")).containsExactly("Save as…", "Save");
  }

  @Test
  void several_words_may_come_in_any_order_and_the_menu_counts_too() {
    assertThat(found("bar sub")).containsExactly("Sublingual bar");
    assertThat(found("connectors lingual")).containsExactly("Lingual bar", "Sublingual bar");
    assertThat(found("file new")).containsExactly("New case");
  }

  @Test
  void accents_and_capitals_do_not_matter() {
    assertThat(found("GROSSE")).isEmpty();
    assertThat(found("große")).containsExactly("Größe des Blatts");
  }

  @Test
  void what_holds_no_such_word_is_not_found() {
    assertThat(found("zzz")).isEmpty();
    assertThat(found("save zzz")).isEmpty();
  }

  @Test
  void what_is_not_ready_is_found_but_does_nothing() {
    boolean[] done = new boolean[1];
    Action a =
        new Action(
            List.of("Edit"), "Undo", List.of(), false, Optional.empty(), () -> done[0] = true);
    a.run();
    assertThat(done[0]).isFalse();
    assertThat(ActionSearch.find(List.of(a), "undo")).containsExactly(a);
  }
}
