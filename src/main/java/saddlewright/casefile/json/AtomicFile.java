package saddlewright.casefile.json;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.AccessDeniedException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFileAttributeView;
import java.util.UUID;

/**
 * Replaces a file as a whole: the new content is written beside it, forced to the disk and moved
 * into its place, so that at any moment either the old or the new content is there.
 */
final class AtomicFile {
  /** Puts bytes into an existing, empty file and forces them to the disk. */
  @FunctionalInterface
  interface Writing {
    void write(Path file, byte[] bytes) throws IOException;
  }

  private final Writing writing;

  AtomicFile() {
    this(AtomicFile::writeAndForce);
  }

  AtomicFile(Writing writing) {
    this.writing = writing;
  }

  /**
   * Replaces or creates the file; a link is followed.
   *
   * @throws IOException when that fails; the file is then as it was, and nothing is left beside it
   */
  void replace(Path file, byte[] bytes) throws IOException {
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

  static void writeAndForce(Path file, byte[] bytes) throws IOException {
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
