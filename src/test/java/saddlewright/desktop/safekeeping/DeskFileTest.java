package saddlewright.desktop.safekeeping;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import saddlewright.casefile.Case;
import saddlewright.casefile.CaseFileException;
import saddlewright.casefile.json.CaseStore;
import saddlewright.desktop.safekeeping.FoundWork.Disk;

/** Nobody's work is written over unasked, and what a file held before stays beside it. */
class DeskFileTest {
  @TempDir Path folder;

  private final DeskFile desk = new DeskFile();
  private Path file;

  private static Case titled(String title) {
    return Case.blank("SW-TEST-0001").withIdentity("SW-TEST-0001", title, "");
  }

  @BeforeEach
  void open() throws Exception {
    file = folder.resolve("case.saddle");
    CaseStore.save(titled("as opened"), file);
    desk.opened(file, DeskFile.digestOf(file));
  }

  private String held(Path p) throws Exception {
    return CaseStore.load(p).title();
  }

  @Test
  void the_first_saving_keeps_what_the_file_held_and_later_ones_leave_that_alone()
      throws Exception {
    desk.save(titled("first"), file, false);
    desk.save(titled("second"), file, false);
    assertThat(held(file)).isEqualTo("second");
    assertThat(held(PreviousVersion.find(file).orElseThrow())).isEqualTo("as opened");
  }

  @Test
  void a_new_file_and_one_saved_unchanged_leave_no_previous_version() throws Exception {
    desk.save(titled("as opened"), file, false);
    assertThat(PreviousVersion.find(file)).isEmpty();
    Path fresh = folder.resolve("fresh.saddle");
    desk.save(titled("new"), fresh, false);
    assertThat(PreviousVersion.find(fresh)).isEmpty();
  }

  @Test
  void what_another_has_written_is_not_written_over_even_at_the_same_time_and_size()
      throws Exception {
    FileTime before = Files.getLastModifiedTime(file);
    CaseStore.save(titled("as oqened"), file);
    Files.setLastModifiedTime(file, before);
    assertThat(desk.look()).isEqualTo(Disk.CHANGED);
    assertThat(desk.save(titled("mine"), file, false)).isFalse();
    assertThat(held(file)).isEqualTo("as oqened");
  }

  @Test
  void saving_over_keeps_what_another_has_written() throws Exception {
    desk.save(titled("first"), file, false);
    CaseStore.save(titled("theirs"), file);
    assertThat(desk.save(titled("mine"), file, true)).isTrue();
    assertThat(held(file)).isEqualTo("mine");
    assertThat(held(PreviousVersion.of(file))).isEqualTo("theirs");
    assertThat(desk.look()).isEqualTo(Disk.SAME);
  }

  @Test
  void where_theirs_cannot_be_kept_it_is_not_written_over() throws Exception {
    CaseStore.save(titled("theirs"), file);
    Files.createDirectory(PreviousVersion.of(file));
    assertThatThrownBy(() -> desk.save(titled("mine"), file, true))
        .isInstanceOf(CaseFileException.class)
        .hasMessageContaining("Save yours elsewhere");
    assertThat(held(file)).isEqualTo("theirs");
  }

  @Test
  void a_file_that_is_gone_is_saved_again_and_a_folder_that_is_gone_is_told() throws Exception {
    Files.delete(file);
    assertThat(desk.look()).isEqualTo(Disk.GONE);
    assertThat(desk.save(titled("again"), file, false)).isTrue();
    assertThat(held(file)).isEqualTo("again");
    Path lost = folder.resolve("stick/case.saddle");
    assertThatThrownBy(() -> desk.save(titled("again"), lost, false))
        .isInstanceOf(CaseFileException.class)
        .hasMessageContaining("does not exist");
  }

  @Test
  void the_watch_tells_of_each_change_once_and_never_of_ones_own() throws Exception {
    List<Disk> told = new ArrayList<>();
    FileWatch watch =
        new FileWatch(desk, new Safekeeping(folder.resolve("state"), Runnable::run), told::add);
    watch.look();
    desk.save(titled("mine"), file, false);
    watch.look();
    assertThat(told).isEmpty();
    CaseStore.save(titled("theirs"), file);
    watch.look();
    watch.look();
    assertThat(told).containsExactly(Disk.CHANGED);
    CaseStore.save(titled("theirs again"), file);
    Files.setLastModifiedTime(file, FileTime.from(Instant.now().plusSeconds(5)));
    watch.look();
    assertThat(told).containsExactly(Disk.CHANGED, Disk.CHANGED);
  }

  @Test
  void a_file_is_gone_when_it_is_gone_twice() throws Exception {
    List<Disk> told = new ArrayList<>();
    FileWatch watch =
        new FileWatch(desk, new Safekeeping(folder.resolve("state"), Runnable::run), told::add);
    watch.look();
    Files.delete(file);
    watch.look();
    assertThat(told).isEmpty();
    watch.look();
    watch.look();
    assertThat(told).containsExactly(Disk.GONE);
  }
}
