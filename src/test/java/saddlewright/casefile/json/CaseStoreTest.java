package saddlewright.casefile.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import saddlewright.casefile.AtomicFile;
import saddlewright.casefile.Case;
import saddlewright.casefile.CaseFileException;
import saddlewright.casefile.CaseFileException.Kind;

/** Cases on a real disk, and on a real full one where the system offers it. */
class CaseStoreTest {
  private static final Case OLD = Case.blank("OLD");
  private static final Case NEW = Case.blank("NEW");

  @TempDir Path folder;
  private Path file;

  @BeforeEach
  void choose_a_file() {
    file = folder.resolve("case.json");
  }

  private List<String> filesLeft() throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(f -> f.getFileName().toString()).sorted().toList();
    }
  }

  private static CaseFileException refusedLoad(Path file) {
    CaseFileException e = catchThrowableOfType(CaseFileException.class, () -> CaseStore.load(file));
    assertThat(e).isNotNull();
    return e;
  }

  private static CaseFileException refusedSave(Path file, AtomicFile writer) {
    CaseFileException e =
        catchThrowableOfType(CaseFileException.class, () -> CaseStore.save(NEW, file, writer));
    assertThat(e).isNotNull();
    assertThat(e.kind()).isEqualTo(Kind.NOT_SAVED);
    return e;
  }

  /** The old case is still there, whole and alone. */
  private void assertOldIsUntouched() throws Exception {
    assertThat(filesLeft()).containsExactly("case.json");
    assertThat(CaseStore.load(file)).isEqualTo(OLD);
  }

  @Test
  void a_saved_case_is_loaded_again_and_nothing_else_is_left() throws Exception {
    CaseStore.save(OLD, file);
    assertThat(CaseStore.load(file)).isEqualTo(OLD);
    CaseStore.save(NEW, file);
    assertThat(CaseStore.load(file)).isEqualTo(NEW);
    assertThat(filesLeft()).containsExactly("case.json");
  }

  @Test
  void a_replaced_file_keeps_its_permissions() throws Exception {
    assumeThat(folder.getFileSystem().supportedFileAttributeViews()).contains("posix");
    CaseStore.save(OLD, file);
    for (String permissions : List.of("rw-rw----", "rw-------", "rw-r--r--")) {
      Files.setPosixFilePermissions(file, PosixFilePermissions.fromString(permissions));
      CaseStore.save(NEW, file);
      assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(file)))
          .isEqualTo(permissions);
    }
  }

  @Test
  void a_new_file_is_as_private_as_any_other_new_file() throws Exception {
    assumeThat(folder.getFileSystem().supportedFileAttributeViews()).contains("posix");
    Path other = Files.createFile(folder.resolve("other"));
    CaseStore.save(OLD, file);
    assertThat(Files.getPosixFilePermissions(file)).isEqualTo(Files.getPosixFilePermissions(other));
  }

  @Test
  void a_link_is_followed_and_stays_a_link() throws Exception {
    Path real = Files.createDirectory(folder.resolve("archive")).resolve("real.json");
    CaseStore.save(OLD, real);
    Files.createSymbolicLink(file, real);
    CaseStore.save(NEW, file);
    assertThat(Files.isSymbolicLink(file)).isTrue();
    assertThat(CaseStore.load(real)).isEqualTo(NEW);
  }

  @Test
  void a_full_disk_leaves_the_old_case_untouched() throws Exception {
    Path full = Path.of("/dev/full"); // answers every write as a full disk does
    assumeThat(Files.exists(full)).isTrue();
    CaseStore.save(OLD, file);
    AtomicFile onFullDisk =
        new AtomicFile(
            (fresh, bytes) -> {
              AtomicFile.writeAndForce(fresh, Arrays.copyOf(bytes, bytes.length / 2));
              AtomicFile.writeAndForce(full, bytes);
            });
    assertThat(refusedSave(file, onFullDisk))
        .hasMessage("case.json was not saved: the disk is full. Make room, or save it elsewhere.");
    assertOldIsUntouched();
  }

  @Test
  void any_trouble_while_writing_leaves_the_old_case_untouched() throws Exception {
    CaseStore.save(OLD, file);
    AtomicFile onBrokenDisk =
        new AtomicFile(
            (fresh, bytes) -> {
              AtomicFile.writeAndForce(fresh, Arrays.copyOf(bytes, 10));
              throw new FileSystemException("x", null, "Input/output error");
            });
    assertThat(refusedSave(file, onBrokenDisk))
        .hasMessage(
            "case.json was not saved: the disk reports \"Input/output error\". Save it elsewhere.");
    assertOldIsUntouched();
  }

  @Test
  void a_file_that_another_program_holds_is_told_of_and_left_untouched() throws Exception {
    CaseStore.save(OLD, file);
    // ERROR_SHARING_VIOLATION of Windows, as its Java reports it (from memory).
    AtomicFile onHeldFile =
        new AtomicFile(
            (fresh, bytes) -> {
              throw new FileSystemException(
                  "x",
                  null,
                  "The process cannot access the file because it is being used by another process");
            });
    assertThat(refusedSave(file, onHeldFile))
        .hasMessage(
            "case.json was not saved: it is open in another program. Close it there, or save it"
                + " under another name.");
    AtomicFile onDeniedMove =
        new AtomicFile(
            (fresh, bytes) -> {
              throw new AccessDeniedException("x");
            });
    assertThat(refusedSave(file, onDeniedMove)).hasMessageContaining("open in another program");
    assertOldIsUntouched();
  }

  @Test
  void a_new_case_that_fails_leaves_no_file_at_all() throws Exception {
    refusedSave(
        file,
        new AtomicFile(
            (fresh, bytes) -> {
              throw new IOException("Disk quota exceeded");
            }));
    assertThat(filesLeft()).isEmpty();
  }

  @Test
  void a_folder_that_vanishes_while_saving_is_named() throws Exception {
    Path gone = Files.createDirectory(folder.resolve("gone"));
    CaseFileException e =
        refusedSave(
            gone.resolve("case.json"),
            new AtomicFile(
                (fresh, bytes) -> {
                  Files.delete(fresh);
                  Files.delete(gone);
                }));
    assertThat(e)
        .hasMessage(
            "case.json was not saved: the folder " + gone + " is gone. Save it in another folder.");
  }

  @Test
  void a_folder_that_is_not_there_is_named() {
    Path nowhere = folder.resolve("nowhere");
    assertThat(refusedSave(nowhere.resolve("case.json"), new AtomicFile()))
        .hasMessage(
            "case.json was not saved: the folder "
                + nowhere
                + " does not exist. Choose another folder.");
    assertThat(refusedLoad(nowhere.resolve("case.json")))
        .hasMessage("case.json does not exist. Check the name and the folder, " + nowhere + ".");
  }

  @Test
  void a_read_only_folder_is_named() throws Exception {
    Path locked = Files.createDirectory(folder.resolve("locked"));
    if (locked.toFile().setWritable(false) && Files.isWritable(locked)) {
      locked = Path.of("/sys"); // even an administrator may not write here
      assumeThat(Files.isDirectory(locked)).isTrue();
    }
    CaseFileException e = refusedSave(locked.resolve("case.json"), new AtomicFile());
    assertThat(e)
        .hasMessage(
            "case.json was not saved: the folder "
                + locked
                + " may not be written to. Save it in another folder.");
  }

  @Test
  void a_write_protected_file_is_not_replaced() throws Exception {
    CaseStore.save(OLD, file);
    assumeThat(file.toFile().setWritable(false) && !Files.isWritable(file)).isTrue();
    assertThat(refusedSave(file, new AtomicFile()))
        .hasMessage(
            "case.json was not saved: the file is write-protected. Save it under another name.");
    assertOldIsUntouched();
  }

  @Test
  void a_folder_in_place_of_a_file_is_told() throws Exception {
    Files.createDirectory(file);
    assertThat(refusedLoad(file))
        .hasMessage("case.json is a folder, not a case file. Choose a file inside it.");
    assertThat(refusedSave(file, new AtomicFile()))
        .hasMessage("case.json is a folder. Choose a file name inside it.");
  }

  @Test
  void a_file_that_may_not_be_read_is_told() throws Exception {
    CaseStore.save(OLD, file);
    assumeThat(file.toFile().setReadable(false) && !Files.isReadable(file)).isTrue();
    assertThat(refusedLoad(file))
        .hasMessage("case.json may not be read. Ask its owner for permission, or open a copy.");
  }

  @Test
  void a_file_without_end_is_given_up_after_twenty_megabytes() {
    Path endless = Path.of("/dev/zero");
    assumeThat(Files.exists(endless)).isTrue();
    assertThat(refusedLoad(endless).kind()).isEqualTo(Kind.TOO_LARGE);
  }

  @Test
  void a_case_too_large_to_be_opened_again_is_not_saved() throws Exception {
    CaseStore.save(OLD, file);
    Case large = OLD.withIdentity("OLD", "", "x".repeat(CaseCodec.MAX_BYTES));
    assertThat(catchThrowableOfType(CaseFileException.class, () -> CaseStore.save(large, file)))
        .hasMessage(
            "case.json was not saved: the case is larger than 20 MB and could not be opened again."
                + " Shorten its texts.");
    assertOldIsUntouched();
  }

  @Test
  void a_bad_file_is_told_by_its_own_name() throws Exception {
    Files.writeString(file, "{}");
    assertThat(refusedLoad(file)).hasMessageStartingWith("case.json is JSON but not a case");
  }
}
