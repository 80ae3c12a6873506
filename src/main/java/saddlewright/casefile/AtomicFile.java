package saddlewright.casefile;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.AccessDeniedException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFileAttributeView;
import java.util.Locale;
import java.util.UUID;

/**
 * Replaces a file as a whole: the new content is written beside it, forced to the disk and moved
 * into its place, so that at any moment either the old or the new content is there.
 */
public final class AtomicFile {
  /** Puts bytes into an existing, empty file and forces them to the disk. */
  @FunctionalInterface
  public interface Writing {
    void write(Path file, byte[] bytes) throws IOException;
  }

  private final Writing writing;

  public AtomicFile() {
    this(AtomicFile::writeAndForce);
  }

  /** Writes by another primitive; for trying what happens when a disk fails. */
  public AtomicFile(Writing writing) {
    this.writing = writing;
  }

  /**
   * Replaces or creates a file.
   *
   * @throws CaseFileException with sentences to show, when it cannot be written; what was there is
   *     then untouched
   */
  public static void write(Path file, byte[] bytes) throws CaseFileException {
    new AtomicFile().save(file, bytes);
  }

  /** As {@link #write}, by this writer's primitive. */
  public void save(Path file, byte[] bytes) throws CaseFileException {
    String name = nameOf(file);
    if (Files.isDirectory(file)) {
      throw notSaved(name + " is a folder. Choose a file name inside it.", null);
    }
    if (!Files.isDirectory(folderOf(file))) {
      throw notSaved(
          name
              + " was not saved: the folder "
              + folderOf(file)
              + " does not exist. Choose another folder.",
          null);
    }
    try {
      replace(file, bytes);
    } catch (IOException e) {
      throw notSaved(name + " was not saved: " + reason(e, file), e);
    }
  }

  private static String reason(IOException e, Path file) {
    String said = String.valueOf(e.getMessage()).toLowerCase(Locale.ROOT);
    if (said.contains("no space") || said.contains("not enough space") || said.contains("quota")) {
      return "the disk is full. Make room, or save it elsewhere.";
    }
    boolean locked =
        e instanceof AccessDeniedException && Files.isWritable(file)
            || said.contains("being used by another process");
    if (locked && Files.isWritable(folderOf(file))) {
      // So Windows answers while a viewer holds the file.
      return "it is open in another program. Close it there, or save it under another name.";
    }
    if (Files.exists(file) && !Files.isWritable(file) && Files.isWritable(folderOf(file))) {
      return "the file is write-protected. Save it under another name.";
    }
    if (e instanceof AccessDeniedException || said.contains("read-only")) {
      return "the folder " + folderOf(file) + " may not be written to. Save it in another folder.";
    }
    if (e instanceof NoSuchFileException) {
      return "the folder " + folderOf(file) + " is gone. Save it in another folder.";
    }
    String reason = e instanceof FileSystemException f ? f.getReason() : e.getMessage();
    return "the disk reports \"" + reason + "\". Save it elsewhere.";
  }

  /** The last name of a path, as sentences call the file. */
  public static String nameOf(Path file) {
    Path name = file.getFileName();
    return name == null ? file.toString() : name.toString();
  }

  /** The folder that holds a file; for a root, the root itself. */
  public static Path folderOf(Path file) {
    Path folder = file.toAbsolutePath().getParent();
    return folder == null ? file.toAbsolutePath() : folder;
  }

  private static CaseFileException notSaved(String sentences, Throwable cause) {
    return new CaseFileException(CaseFileException.Kind.NOT_SAVED, sentences, cause);
  }

  /**
   * Replaces or creates the file; a link is followed.
   *
   * @throws IOException when that fails; the file is then as it was, and nothing is left beside it
   */
  private void replace(Path file, byte[] bytes) throws IOException {
    Path target = Files.exists(file) ? file.toRealPath() : file.toAbsolutePath();
    // The move would pass over a write protection that stands on the file and not on the folder.
    if (Files.exists(target) && !Files.isWritable(target)) {
      throw new AccessDeniedException(target.toString());
    }
    Path fresh = createBeside(target);
    try {
      writing.write(fresh, bytes);
      keepPermissions(target, fresh);
      move(fresh, target);
    } finally {
      Files.deleteIfExists(fresh);
    }
    forceFolder(target.getParent());
  }

  public static void writeAndForce(Path file, byte[] bytes) throws IOException {
    try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
      ByteBuffer left = ByteBuffer.wrap(bytes);
      while (left.hasRemaining()) {
        channel.write(left);
      }
      channel.force(true);
    }
  }

  private static void move(Path from, Path to) throws IOException {
    try {
      Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
    } catch (AtomicMoveNotSupportedException e) {
      Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
    }
  }

  /** A new empty file; a case is as private as the user's other new files. */
  private static Path createBeside(Path target) throws IOException {
    while (true) {
      String name = ".saddlewright-" + UUID.randomUUID() + ".tmp";
      try {
        return Files.createFile(target.resolveSibling(name));
      } catch (FileAlreadyExistsException e) {
        // Another name, then.
      }
    }
  }

  /** A file that is replaced keeps the permissions that it had. */
  private static void keepPermissions(Path old, Path fresh) {
    PosixFileAttributeView view = Files.getFileAttributeView(old, PosixFileAttributeView.class);
    if (view == null || Files.notExists(old)) {
      return;
    }
    try {
      Files.setPosixFilePermissions(fresh, view.readAttributes().permissions());
    } catch (IOException e) {
      // Some mounted disks have fixed permissions; the content matters more.
    }
  }

  /** Makes the move itself durable, where folders can be opened for that. */
  private static void forceFolder(Path folder) {
    try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
      channel.force(true);
    } catch (IOException e) {
      // Windows does not open folders; the file itself has been forced.
    }
  }
}
