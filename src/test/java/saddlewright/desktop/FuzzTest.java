package saddlewright.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.stream.Stream;
import javafx.stage.FileChooser;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import saddlewright.casefile.Assessment;
import saddlewright.casefile.Case;
import saddlewright.casefile.json.CaseCodec;
import saddlewright.casefile.json.CaseStore;
import saddlewright.dentition.Arch;
import saddlewright.rules.Finding;

/**
 * Random gestures, as somebody makes them in an hour who tries everything: nothing is thrown, undo
 * leads back to the start and redo to the end, the file holds the case byte for byte, and what
 * stands on the desk is what a fresh assessment says.
 *
 * <p>{@code -Dsaddlewright.fuzz=10} goes on for ten minutes with new seeds; {@code
 * -Dsaddlewright.fuzz.seed=4711} repeats the one burst that failed.
 */
class FuzzTest {
  private static final int SECONDS = 20;
  private static final int BURST = 80;
  private static final long FIRST_SEED = 20_240_517;

  private final List<Throwable> thrown = new ArrayList<>();
  private final List<String> done = new ArrayList<>();

  private static final FileQuestion.Answering NOBODY =
      new FileQuestion.Answering() {
        @Override
        public Optional<Path> toOpen(FileChooser question) {
          return Optional.empty();
        }

        @Override
        public Optional<Path> toSave(FileChooser question) {
          return Optional.empty();
        }
      };

  @Test
  void nothing_breaks_and_all_can_be_taken_back(@TempDir Path folder) throws Exception {
    double minutes = Double.parseDouble(System.getProperty("saddlewright.fuzz", "0"));
    Optional<Long> only = Optional.ofNullable(Long.getLong("saddlewright.fuzz.seed"));
    long first = only.orElse(minutes > 0 ? System.currentTimeMillis() : FIRST_SEED);
    long span = minutes > 0 ? (long) (minutes * 60_000) : TimeUnit.SECONDS.toMillis(SECONDS);
    List<Case> starts = starts();
    int gestures = 0;
    int edits = 0;
    int bursts = 0;
    Thread.UncaughtExceptionHandler before =
        OnStageThread.handleBy((thread, failure) -> thrown.add(failure));
    FileQuestion.answerBy(Optional.of(NOBODY));
    try (OnStage w = OnStage.open(folder.resolve("settings"))) {
      w.settle();
      OnStage.run(
          () -> {
            // What is painted between the gestures is small, so that more of them fit.
            w.window.stage().setWidth(960);
            w.window.stage().setHeight(640);
            return null;
          });
      long end = System.currentTimeMillis() + span;
      do {
        long seed = first + bursts;
        edits += burst(w, seed, starts.get((int) Math.floorMod(seed, starts.size())), folder);
        gestures += done.size();
        bursts++;
      } while (only.isEmpty() && System.currentTimeMillis() < end);
    } finally {
      FileQuestion.answerBy(Optional.empty());
    }
    OnStageThread.handleBy(before);
    System.out.println(
        gestures
            + " random gestures in "
            + bursts
            + " bursts made "
            + edits
            + " edits; first seed "
            + first);
    assertThat(edits).as("the gestures do something").isGreaterThan(gestures / 20);
  }

  private static List<Case> starts() throws Exception {
    List<Case> out = new ArrayList<>();
    out.add(Case.blank("case-1"));
    try (Stream<Path> files = java.nio.file.Files.list(Path.of("demo-cases"))) {
      for (Path p : files.filter(f -> f.toString().endsWith(".json")).sorted().toList()) {
        out.add(CaseStore.load(p));
      }
    }
    return out;
  }

  /** One burst from a case that is laid on the desk; how many edits it made. */
  private int burst(OnStage w, long seed, Case start, Path folder) throws Exception {
    done.clear();
    RandomHand hand = new RandomHand(w, seed);
    try {
      OnStage.run(
          () -> {
            w.table().lay(start, Optional.empty());
            w.table().stepProperty().set(Step.CHART);
            return null;
          });
      while (done.size() < BURST) {
        w.settle();
        done.addAll(OnStage.run(hand::gestures));
        assertThat(thrown).isEmpty();
        assertThat(w.table().noticeProperty().get().filter(FuzzTest::isFailure)).isEmpty();
      }
      OnStage.run(
          () -> {
            hand.rest();
            return null;
          });
      return held(w, start, folder);
    } catch (Throwable failure) {
      throw new AssertionError(
          "repeat with -Dsaddlewright.fuzz.seed="
              + seed
              + "; after:\n"
              + String.join("\n", done)
              + "\nand "
              + hand.last()
              + (failure instanceof TimeoutException
                  ? "\nhanging in\n    " + OnStageThread.whereItStands()
                  : ""),
          failure);
    }
  }

  private static boolean isFailure(String notice) {
    String words = Words.of("notice.cannot-lay-out", "|");
    return notice.startsWith(words.substring(0, words.indexOf('|')));
  }

  private int held(OnStage w, Case start, Path folder) throws Exception {
    Worktable table = w.table();
    Case end = table.current();
    assertThat(keys(table.assessment())).isEqualTo(keys(Assessment.of(end)));
    for (Arch arch : Arch.values()) {
      assertThat(DrawingText.of(table.assessment().arch(arch).layout()))
          .isEqualTo(DrawingText.of(Assessment.of(end).arch(arch).layout()));
    }

    byte[] bytes = CaseCodec.toBytes(end);
    Case read = CaseCodec.fromBytes(bytes, "fuzz");
    assertThat(read).isEqualTo(end);
    assertThat(CaseCodec.toBytes(read)).isEqualTo(bytes);
    Path file = folder.resolve("fuzz.json");
    CaseStore.save(end, file);
    assertThat(java.nio.file.Files.readAllBytes(file)).isEqualTo(bytes);
    assertThat(CaseStore.load(file)).isEqualTo(end);

    int edits = table.editsProperty().get().size();
    int standing = table.standingProperty().get();
    OnStage.run(
        () -> {
          for (int i = 0; i < standing; i++) {
            assertThat(table.undoNameProperty().get()).isPresent();
            table.undo();
          }
          return null;
        });
    assertThat(table.current()).as("all is taken back").isEqualTo(start);
    assertThat(table.undoNameProperty().get()).isEmpty();
    assertThat(table.unsavedProperty().get()).isFalse();
    assertThat(keys(table.assessment())).isEqualTo(keys(Assessment.of(start)));
    OnStage.run(
        () -> {
          for (int i = 0; i < standing; i++) {
            table.redo();
          }
          return null;
        });
    assertThat(table.current()).as("all is done again").isEqualTo(end);
    assertThat(thrown).isEmpty();
    return edits;
  }

  /** The class and the findings, as far as they are told. */
  private static List<String> keys(Assessment a) {
    List<String> out = new ArrayList<>();
    for (Arch arch : Arch.values()) {
      out.add(arch + " " + a.arch(arch).classification().label());
    }
    a.report().entries().forEach(e -> out.add(e.state() + " " + key(e.finding())));
    return out;
  }

  private static String key(Finding f) {
    return f.key() + ": " + f.facts();
  }
}
