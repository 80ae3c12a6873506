package saddlewright.desktop.safekeeping;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import saddlewright.casefile.Case;
import saddlewright.casefile.CaseFileException;
import saddlewright.desktop.Offer;
import saddlewright.desktop.Worktable;
import saddlewright.desktop.safekeeping.FoundWork.Disk;

/** What is said of files and of found work, and the ways out that are offered with it. */
class FileNoticesTest {
  private static final ZonedDateTime NOW =
      ZonedDateTime.of(2025, 11, 28, 15, 0, 0, 0, ZoneId.of("Europe/London"));

  @TempDir Path folder;

  private final Worktable table = new Worktable();
  private final List<String> taken = new ArrayList<>();
  private final FileNotices notices = new FileNotices(table, ways());

  private FileNotices.Ways ways() {
    return new FileNotices.Ways() {
      @Override
      public void loadTheirs() {
        taken.add("theirs");
      }

      @Override
      public void saveOver() {
        taken.add("over");
      }

      @Override
      public void saveElsewhere() {
        taken.add("elsewhere");
      }

      @Override
      public void saveThere() {
        taken.add("there");
      }

      @Override
      public void openCopy(Path file, Path of) {
        taken.add("copy of " + file.getFileName());
      }

      @Override
      public void recover(FoundWork work) {
        taken.add("recover");
      }

      @Override
      public void showFound() {
        taken.add("show");
      }
    };
  }

  private Path open() throws Exception {
    Path file = Files.writeString(folder.resolve("case.saddle"), "theirs");
    Files.setLastModifiedTime(file, FileTime.from(Instant.now()));
    Case c = Case.blank("SW-TEST-0001").withIdentity("SW-TEST-0001", "Bar or plate", "");
    table.lay(c, Optional.of(file));
    return file;
  }

  private String said() {
    return table.noticeProperty().get().orElse("");
  }

  private List<String> offered() {
    return table.offers().stream().map(Offer::label).toList();
  }

  @Test
  void a_changed_file_is_told_with_three_ways_none_of_which_loses_anything() throws Exception {
    open();
    table.apply("Title", table.current().withIdentity("SW-TEST-0001", "Plate", ""));
    notices.disk(Disk.CHANGED);
    assertThat(said())
        .matches(
            "case\\.saddle was changed by another program or window, today at \\d\\d:\\d\\d\\."
                + " Your changes here are not saved; whichever you choose, neither is lost\\.");
    assertThat(offered())
        .containsExactly("Load theirs", "Keep mine and save over", "Save mine elsewhere…");
    table.offers().forEach(o -> o.action().run());
    assertThat(taken).containsExactly("theirs", "over", "elsewhere");
  }

  @Test
  void where_nothing_was_changed_here_it_says_so() throws Exception {
    open();
    notices.disk(Disk.CHANGED);
    assertThat(said()).endsWith("You have changed nothing here since it was saved.");
  }

  @Test
  void a_file_that_is_gone_is_told_with_its_folder() throws Exception {
    open();
    notices.disk(Disk.GONE);
    assertThat(said())
        .isEqualTo(
            "case.saddle is no longer in "
                + folder
                + ": it was moved or deleted, or the disk was taken away. What lies here is"
                + " complete.");
    assertThat(offered()).containsExactly("Save it there again", "Save mine elsewhere…");
  }

  @Test
  void a_saving_that_fails_says_that_the_work_is_kept_meanwhile() throws Exception {
    open();
    Instant at = NOW.toInstant();
    table.safetyProperty().set(Safety.keptAt(at));
    notices.notSaved(
        new CaseFileException(
            CaseFileException.Kind.NOT_SAVED, "case.saddle was not saved: the disk is full."));
    assertThat(said())
        .isEqualTo(
            "case.saddle was not saved: the disk is full. The work is kept safe meanwhile, as of "
                + Moment.clock(at)
                + ".");
    assertThat(offered()).containsExactly("Save mine elsewhere…");
  }

  @Test
  void recovered_work_on_a_changed_file_offers_the_file_too() throws Exception {
    Path file = open();
    notices.recovered(copy(Optional.of(file)), Disk.CHANGED);
    assertThat(said())
        .startsWith("The work on case.saddle is back as it stood on 28 November 2025");
    assertThat(said()).endsWith("so saving will ask first.");
    assertThat(offered()).containsExactly("Open the file too", "Save mine elsewhere…");
    table.offers().get(0).action().run();
    assertThat(taken).containsExactly("copy of case.saddle");
  }

  private static RecoveryCopy copy(Optional<Path> file) {
    return new RecoveryCopy(
        Case.blank("SW-TEST-0001").withIdentity("SW-TEST-0001", "Bar or plate", ""),
        file,
        Optional.empty(),
        NOW.withHour(14).withMinute(3).toInstant(),
        "Removal of Rest 44",
        Optional.empty(),
        false);
  }

  private static FoundWork work(RecoveryCopy c, Disk disk) {
    return new FoundWork(
        Path.of("999-dead.0.recovery"),
        Optional.of(c),
        Optional.empty(),
        disk,
        Optional.of(NOW.minusDays(1).toInstant()));
  }

  @Test
  void the_offer_names_case_file_time_and_edit() {
    FoundWork w = work(copy(Optional.of(Path.of("/cases/bar.saddle"))), Disk.SAME);
    assertThat(FoundWords.name(w)).isEqualTo("Bar or plate");
    assertThat(FoundWords.reference(w)).contains("SW-TEST-0001");
    assertThat(FoundWords.place(w))
        .isEqualTo("bar.saddle, in " + Path.of("/cases").toAbsolutePath());
    assertThat(FoundWords.last(w, NOW)).isEqualTo("Last edit today at 14:03: Removal of Rest 44");
    assertThat(FoundWords.disk(w, NOW)).isEmpty();
  }

  @Test
  void the_offer_says_what_became_of_the_file() {
    RecoveryCopy c = copy(Optional.of(Path.of("/cases/bar.saddle")));
    assertThat(FoundWords.disk(work(c, Disk.CHANGED), NOW))
        .contains(
            "The file has been changed since, yesterday at 15:00. Both can be opened, side by"
                + " side.");
    assertThat(FoundWords.disk(work(c, Disk.GONE), NOW))
        .contains("The file is no longer there; this is all there is of it.");
    assertThat(FoundWords.place(work(copy(Optional.empty()), Disk.NONE)))
        .isEqualTo("Never saved to a file");
  }

  @Test
  void a_case_without_title_goes_by_its_reference() {
    RecoveryCopy c = copy(Optional.empty());
    RecoveryCopy bare =
        new RecoveryCopy(
            Case.blank("SW-TEST-0001"), c.file(), c.base(), c.at(), "", Optional.empty(), false);
    FoundWork w = work(bare, Disk.NONE);
    assertThat(FoundWords.name(w)).isEqualTo("SW-TEST-0001");
    assertThat(FoundWords.reference(w)).isEmpty();
    assertThat(FoundWords.last(w, NOW)).isEqualTo("Last edit today at 14:03");
  }

  @Test
  void moments_are_told_as_short_as_leaves_no_doubt() {
    assertThat(Moment.inWords(NOW.minusHours(1).toInstant(), NOW)).isEqualTo("today at 14:00");
    assertThat(Moment.inWords(NOW.minusHours(16).toInstant(), NOW)).isEqualTo("yesterday at 23:00");
    assertThat(Moment.inWords(NOW.minusDays(9).toInstant(), NOW))
        .isEqualTo("on 19 November 2025 at 15:00");
  }
}
