package saddlewright.desktop.safekeeping;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import saddlewright.casefile.Case;
import saddlewright.casefile.json.CaseStore;
import saddlewright.casefile.order.PatientIdentity;
import saddlewright.desktop.Worktable;

/** What a desk is kept as, and what becomes of it. */
class JournalTest {
  @TempDir Path folder;

  private final Worktable table = new Worktable();
  private final DeskFile file = new DeskFile();
  private Safekeeping safe;
  private DeskJournal journal;
  private Path user;
  private Case first;

  @BeforeEach
  void lay() throws Exception {
    safe = new Safekeeping(folder.resolve("state"), Runnable::run);
    journal = new DeskJournal(table, file, safe);
    user = folder.resolve("case.saddle");
    first = Case.blank("SW-TEST-0001").withIdentity("SW-TEST-0001", "Begun", "");
    CaseStore.save(first, user);
    file.opened(user, DeskFile.digestOf(user));
    table.lay(first, Optional.of(user));
  }

  private void edit(String title) {
    table.apply("Title", table.current().withIdentity(first.reference(), title, ""));
  }

  private List<Path> files() throws Exception {
    if (!Files.exists(safe.folder())) {
      return List.of();
    }
    try (var all = Files.list(safe.folder())) {
      return all.filter(p -> !p.toString().endsWith(".lock")).sorted().toList();
    }
  }

  /** The one copy, as another run would read it. */
  private RecoveryCopy copy() throws Exception {
    safe.flush();
    Path p =
        files().stream().filter(f -> f.toString().endsWith(".recovery")).findFirst().orElseThrow();
    return RecoveryFormat.fromBytes(Files.readAllBytes(p), "copy");
  }

  /** Has the copies look as if the run that wrote them had ended. */
  private List<FoundWork> asLeftBehind() throws Exception {
    safe.flush();
    Path other = folder.resolve("other");
    Files.createDirectories(other.resolve("recovery"));
    for (Path p : files()) {
      Files.copy(p, other.resolve("recovery").resolve("999-dead" + tail(p)));
    }
    return new Safekeeping(other, Runnable::run).look();
  }

  private static String tail(Path p) {
    String n = p.getFileName().toString();
    return n.substring(n.indexOf('.'));
  }

  @Test
  void nothing_is_kept_of_a_case_that_is_saved() throws Exception {
    safe.flush();
    assertThat(files()).isEmpty();
  }

  @Test
  void an_edit_is_kept_with_its_name_its_file_and_what_the_file_held() throws Exception {
    edit("Edited");
    RecoveryCopy c = copy();
    assertThat(c.subject()).isEqualTo(table.current());
    assertThat(c.edit()).isEqualTo("Title");
    assertThat(c.file()).contains(user.toAbsolutePath());
    assertThat(c.base()).isEqualTo(DeskFile.digestOf(user));
    assertThat(c.disk()).isEqualTo(FoundWork.Disk.SAME);
  }

  @Test
  void an_edit_is_kept_within_a_second_without_being_asked_for() throws Exception {
    edit("Edited");
    long until = System.nanoTime() + 1_000_000_000L;
    while (files().stream().noneMatch(p -> p.toString().endsWith(".recovery"))) {
      assertThat(System.nanoTime()).isLessThan(until);
      Thread.sleep(10);
    }
  }

  @Test
  void saving_takes_the_copy_away() throws Exception {
    edit("Edited");
    safe.flush();
    assertThat(files()).hasSize(1);
    assertThat(file.save(table.current(), user, false)).isTrue();
    table.markSaved(user);
    safe.flush();
    assertThat(files()).isEmpty();
  }

  @Test
  void leaving_the_desk_takes_the_copy_away_at_once() throws Exception {
    edit("Edited");
    safe.flush();
    journal.journal().close();
    assertThat(files()).isEmpty();
  }

  @Test
  void undoing_all_takes_the_copy_away() throws Exception {
    edit("Edited");
    safe.flush();
    table.undo();
    safe.flush();
    assertThat(files()).isEmpty();
  }

  @Test
  void who_the_patient_is_stands_in_a_file_of_its_own_and_only_while_it_is_not_saved()
      throws Exception {
    edit("Edited");
    table.know(
        new PatientIdentity(
            first.reference(), "A. Nother", Optional.of(LocalDate.of(1950, 1, 2)), "77"));
    safe.flush();
    assertThat(files()).hasSize(2);
    for (Path p : files()) {
      String text = Files.readString(p, StandardCharsets.UTF_8);
      assertThat(text.contains("Nother")).isEqualTo(p.toString().endsWith(".patient.json"));
    }
    List<FoundWork> found = asLeftBehind();
    assertThat(found.get(0).copy().orElseThrow().patient())
        .isEqualTo(table.patientProperty().get());
    table.markPatientSaved();
    safe.flush();
    assertThat(files()).hasSize(1);
  }

  @Test
  void a_patient_of_another_case_is_not_taken_up() throws Exception {
    table.know(new PatientIdentity(first.reference(), "A. Nother", Optional.empty(), ""));
    safe.flush();
    Path patient =
        files().stream().filter(p -> p.toString().endsWith(".patient.json")).findFirst().get();
    Files.writeString(
        patient, Files.readString(patient).replace(first.reference(), "SW-ELSE-0002"));
    assertThat(asLeftBehind().get(0).copy().orElseThrow().patient()).isEmpty();
  }

  @Test
  void only_the_user_may_look_into_the_folder() throws Exception {
    edit("Edited");
    safe.flush();
    if (safe.folder().getFileSystem().supportedFileAttributeViews().contains("posix")) {
      assertThat(Files.getPosixFilePermissions(safe.folder())).hasSize(3);
    }
  }

  @Test
  void work_of_a_run_that_goes_on_is_not_offered() throws Exception {
    edit("Edited");
    safe.flush();
    assertThat(new Safekeeping(folder.resolve("state"), Runnable::run).look()).isEmpty();
    assertThat(files()).hasSize(1);
  }

  @Test
  void what_the_file_holds_already_is_not_offered() throws Exception {
    edit("Edited");
    safe.flush();
    CaseStore.save(table.current(), user);
    assertThat(asLeftBehind()).isEmpty();
  }

  @Test
  void a_file_that_changed_or_went_since_is_told_apart() throws Exception {
    edit("Edited");
    safe.flush();
    CaseStore.save(first.withIdentity(first.reference(), "Theirs", ""), user);
    assertThat(copy().disk()).isEqualTo(FoundWork.Disk.CHANGED);
    Files.delete(user);
    assertThat(copy().disk()).isEqualTo(FoundWork.Disk.GONE);
  }

  @Test
  void broken_copies_are_told_in_a_sentence_and_not_deleted() throws Exception {
    edit("Edited");
    safe.flush();
    Path p = files().get(0);
    byte[] half = Files.readAllBytes(p);
    Files.write(p, Arrays.copyOf(half, half.length / 2));
    List<FoundWork> found = asLeftBehind();
    assertThat(found).hasSize(1);
    assertThat(found.get(0).copy()).isEmpty();
    assertThat(found.get(0).trouble().orElseThrow()).endsWith(".");
    assertThat(found.get(0).entry()).exists();
  }

  @Test
  void discarded_work_comes_back_until_the_run_ends() throws Exception {
    edit("Edited");
    asLeftBehind();
    Safekeeping next = new Safekeeping(folder.resolve("other"), Runnable::run);
    FoundWork w = next.look().get(0);
    Path aside = next.discard(w).orElseThrow();
    assertThat(w.entry()).doesNotExist();
    assertThat(next.look()).isEmpty();
    next.takeBack(aside, w);
    assertThat(next.look()).hasSize(1);
    Path again = next.discard(w).orElseThrow();
    next.close();
    assertThat(again).doesNotExist();
  }

  @Test
  void only_one_run_takes_found_work_up_and_it_is_kept_until_it_is_kept_anew() throws Exception {
    edit("Edited");
    asLeftBehind();
    Path state = folder.resolve("other");
    Safekeeping one = new Safekeeping(state, Runnable::run);
    Safekeeping two = new Safekeeping(state, Runnable::run);
    FoundWork seenByBoth = one.look().get(0);
    Path claimed = one.claim(seenByBoth).orElseThrow();
    assertThat(two.claim(seenByBoth)).isEmpty();
    Worktable desk = new Worktable();
    DeskJournal next = new DeskJournal(desk, new DeskFile(), one);
    next.expect(seenByBoth.copy().get());
    desk.recover(seenByBoth.copy().get(), Optional.of(first), Optional.empty(), "Recovered");
    one.handOver(claimed, seenByBoth, next.journal());
    assertThat(claimed).exists();
    one.flush();
    assertThat(claimed).doesNotExist();
    Path anew = next(state);
    RecoveryCopy kept = RecoveryFormat.fromBytes(Files.readAllBytes(anew), "copy");
    assertThat(kept.at()).isEqualTo(seenByBoth.copy().get().at());
    assertThat(kept.edit()).isEqualTo("Title");
    assertThat(desk.current()).isEqualTo(table.current());
    assertThat(desk.unsavedProperty().get()).isTrue();
    desk.undo();
    assertThat(desk.current()).isEqualTo(first);
    assertThat(desk.unsavedProperty().get()).isFalse();
  }

  private static Path next(Path state) throws Exception {
    try (var all = Files.list(state.resolve("recovery"))) {
      return all.filter(p -> p.toString().endsWith(".recovery")).findFirst().orElseThrow();
    }
  }

  @Test
  void a_folder_that_cannot_be_written_is_told_and_stops_nothing() throws Exception {
    Path blocked = Files.writeString(folder.resolve("blocked"), "a file, not a folder");
    Safekeeping none = new Safekeeping(blocked, Runnable::run);
    Worktable desk = new Worktable();
    new DeskJournal(desk, new DeskFile(), none);
    desk.lay(first, Optional.empty());
    desk.apply("Title", first.withIdentity(first.reference(), "Edited", ""));
    none.flush();
    assertThat(desk.safetyProperty().get().trouble()).isPresent();
    assertThat(desk.current().title()).isEqualTo("Edited");
  }

  @Test
  void an_edit_costs_its_thread_next_to_nothing() {
    long[] ns = new long[400];
    Journal j = safe.journal(s -> {});
    RecoveryCopy c =
        new RecoveryCopy(
            first,
            Optional.of(user),
            Optional.empty(),
            java.time.Instant.now(),
            "Edit",
            Optional.empty(),
            false);
    for (int i = 0; i < ns.length; i++) {
      long t = System.nanoTime();
      j.keep(c);
      ns[i] = System.nanoTime() - t;
    }
    Arrays.sort(ns);
    assertThat(ns[ns.length / 2]).as("median, in ns").isLessThan(200_000);
  }

  @Test
  void the_folder_is_that_of_the_platform() {
    Path home = Path.of("/home/x");
    assertThat(StateFolder.of("Linux", Map.of(), home))
        .isEqualTo(Path.of("/home/x/.local/state/saddlewright"));
    assertThat(StateFolder.of("Linux", Map.of("XDG_STATE_HOME", "/s"), home))
        .isEqualTo(Path.of("/s/saddlewright"));
    assertThat(StateFolder.of("Mac OS X", Map.of(), home))
        .isEqualTo(Path.of("/home/x/Library/Application Support/Saddlewright"));
    assertThat(StateFolder.of("Windows 11", Map.of("LOCALAPPDATA", "/l"), home))
        .isEqualTo(Path.of("/l/Saddlewright"));
  }
}
