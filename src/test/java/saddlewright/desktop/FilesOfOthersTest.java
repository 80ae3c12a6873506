package saddlewright.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.stage.FileChooser;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import saddlewright.casefile.Case;
import saddlewright.casefile.json.CaseStore;
import saddlewright.desktop.desks.Desk;
import saddlewright.desktop.safekeeping.LeftBehind;
import saddlewright.desktop.safekeeping.PreviousVersion;

/** The window when its file was changed by another, and when work was found. */
class FilesOfOthersTest {
  private static final String REFERENCE = "SW-TEST-0001";

  @TempDir Path folder;

  private static Case titled(String title) {
    return Case.blank(REFERENCE).withIdentity(REFERENCE, title, "");
  }

  private static String held(Path file) throws Exception {
    return CaseStore.load(file).title();
  }

  private static void press(OnStage w, String within, String label) throws Exception {
    OnStage.run(
        () -> {
          buttons(w, within).stream()
              .filter(b -> b.getText().equals(label))
              .findFirst()
              .orElseThrow(() -> new AssertionError("no button " + label))
              .fire();
          return null;
        });
  }

  private static List<Button> buttons(OnStage w, String within) {
    return w.find(within, Node.class).lookupAll(".button").stream()
        .map(Button.class::cast)
        .toList();
  }

  private static String said(OnStage w) throws Exception {
    return OnStage.run(() -> w.find("notice-text", Label.class).getText());
  }

  private static void until(String what, Callable<Boolean> holds) throws Exception {
    for (int i = 0; i < 1000; i++) {
      if (OnStage.run(holds)) {
        return;
      }
      Thread.sleep(10);
    }
    throw new AssertionError(what);
  }

  private void edit(OnStage w, String title) throws Exception {
    OnStage.run(
        () -> {
          w.table().apply("Title", w.table().current().withIdentity(REFERENCE, title, ""));
          return null;
        });
  }

  @Test
  void whoever_saves_last_is_asked_and_neither_state_is_lost() throws Exception {
    Path file = folder.resolve("case.saddle");
    CaseStore.save(titled("begun"), file);
    try (OnStage w = OnStage.open(folder.resolve("settings"))) {
      OnStage.run(
          () -> {
            w.window.open(file);
            return null;
          });
      w.settle();
      edit(w, "mine");
      until("kept safe", () -> w.table().safetyProperty().get().kept().isPresent());
      assertThat(OnStage.run(() -> w.find("status-saved", Label.class).getText()))
          .matches("● Not saved · kept safe at \\d\\d:\\d\\d");

      // The watch tells of it by itself.
      CaseStore.save(titled("theirs"), file);
      until("noticed", () -> w.find("notice-text", Label.class).getText().contains("changed by"));
      press(w, "notice", "Load theirs");
      assertThat(w.table().current().title()).isEqualTo("theirs");
      assertThat(w.table().unsavedProperty().get()).isFalse();
      press(w, "notice", "Back to mine");
      assertThat(w.table().current().title()).isEqualTo("mine");
      assertThat(w.table().unsavedProperty().get()).isTrue();

      // Saving before the watch has looked asks as well.
      CaseStore.save(titled("theirs anew"), file);
      assertThat(OnStage.run(() -> w.window.files().save())).isFalse();
      assertThat(said(w)).contains("was not saved: another program or window has written to it");
      assertThat(held(file)).isEqualTo("theirs anew");
      press(w, "notice", "Keep mine and save over");
      assertThat(held(file)).isEqualTo("mine");
      assertThat(held(PreviousVersion.of(file))).isEqualTo("theirs anew");

      press(w, "notice", "Open theirs");
      EditorWindow other =
          OnStage.run(
              () ->
                  w.window.desks().all().stream()
                      .filter(d -> d != w.window)
                      .findFirst()
                      .orElseThrow());
      assertThat(other.table().current().title()).isEqualTo("theirs anew");
      assertThat(other.table().fileProperty().get()).isEmpty();
      OnStage.run(
          () -> {
            other.shut();
            return null;
          });
    }
  }

  @Test
  void where_it_cannot_be_saved_it_is_saved_elsewhere_and_kept_meanwhile() throws Exception {
    Path gone = Files.createDirectory(folder.resolve("stick"));
    Path file = gone.resolve("case.saddle");
    CaseStore.save(titled("begun"), file);
    try (OnStage w = OnStage.open(folder.resolve("settings"))) {
      OnStage.run(
          () -> {
            w.window.open(file);
            return null;
          });
      edit(w, "mine");
      until("kept safe", () -> w.table().safetyProperty().get().kept().isPresent());
      Files.delete(file);
      Files.delete(gone);
      assertThat(OnStage.run(() -> w.window.files().save())).isFalse();
      assertThat(said(w)).contains("does not exist").contains("The work is kept safe meanwhile");
      Path elsewhere = folder.resolve("elsewhere.saddle");
      FileQuestion.answerBy(
          Optional.of(
              new FileQuestion.Answering() {
                @Override
                public Optional<Path> toOpen(FileChooser question) {
                  return Optional.empty();
                }

                @Override
                public Optional<Path> toSave(FileChooser question) {
                  return Optional.of(elsewhere);
                }
              }));
      try {
        press(w, "notice", "Save mine elsewhere…");
      } finally {
        FileQuestion.answerBy(Optional.empty());
      }
      assertThat(held(elsewhere)).isEqualTo("mine");
      until("no copy is left", () -> w.table().safetyProperty().get().kept().isEmpty());
    }
  }

  @Test
  void the_welcome_page_offers_what_was_found_and_lays_it_on_the_desk() throws Exception {
    Path settings = folder.resolve("settings");
    Path file = folder.resolve("case.saddle");
    CaseStore.save(titled("as saved"), file);
    Path entry =
        LeftBehind.in(settings.resolve("state"), titled("not saved"), Optional.of(file), "Plating");
    try (OnStage w = OnStage.open(settings)) {
      until("offered", () -> w.find("recovery", Node.class).isVisible());
      OnStage.run(
          () -> {
            w.find("recovery", Node.class).getScene().getRoot().layout();
            return null;
          });
      assertThat(w.texts("recovery"))
          .anyMatch(t -> t.equals("not saved"))
          .anyMatch(t -> t.contains("case.saddle, in "))
          .anyMatch(t -> t.matches("Last edit today at \\d\\d:\\d\\d: Plating"));
      press(w, "recovery", "Discard");
      assertThat(entry).doesNotExist();
      press(w, "recovery", "Take back");
      assertThat(entry).exists();
      press(w, "recovery", "Open this work");
      w.settle();
      assertThat(w.table().current().title()).isEqualTo("not saved");
      assertThat(w.table().fileProperty().get()).contains(file);
      assertThat(w.table().unsavedProperty().get()).isTrue();
      assertThat(said(w)).startsWith("The work on case.saddle is back as it stood today at ");
      assertThat(held(file)).isEqualTo("as saved");
      assertThat(OnStage.run(() -> w.find("recovery", Node.class).isVisible())).isFalse();
      press(w, "notice", "Save now");
      assertThat(held(file)).isEqualTo("not saved");
      assertThat(held(PreviousVersion.of(file))).isEqualTo("as saved");
      until("no copy is left", () -> w.table().safetyProperty().get().kept().isEmpty());
      try (var left = Files.list(settings.resolve("state/recovery"))) {
        assertThat(left.filter(p -> p.toString().endsWith(".recovery"))).isEmpty();
      }
    }
  }

  @Test
  void work_on_a_file_that_was_changed_since_is_laid_beside_it() throws Exception {
    Path settings = folder.resolve("settings");
    Path file = folder.resolve("case.saddle");
    CaseStore.save(titled("as saved"), file);
    LeftBehind.in(settings.resolve("state"), titled("not saved"), Optional.of(file), "Plating");
    CaseStore.save(titled("theirs"), file);
    try (OnStage w = OnStage.open(settings)) {
      until("offered", () -> w.find("recovery", Node.class).isVisible());
      press(w, "recovery", "Open this work");
      w.settle();
      // Longer than the watch takes to look: what is said must not be taken back by it.
      Thread.sleep(2500);
      assertThat(said(w)).contains("so saving will ask first");
      press(w, "notice", "Open the file too");
      List<String> titles =
          OnStage.run(
              () ->
                  w.window.desks().all().stream()
                      .map(d -> d.table().current().title())
                      .sorted()
                      .toList());
      assertThat(titles).containsExactly("not saved", "theirs");
      assertThat(OnStage.run(() -> w.window.files().save())).isFalse();
      assertThat(held(file)).isEqualTo("theirs");
      OnStage.run(
          () -> {
            w.window.desks().all().stream().filter(d -> d != w.window).toList().forEach(Desk::shut);
            return null;
          });
    }
  }
}
