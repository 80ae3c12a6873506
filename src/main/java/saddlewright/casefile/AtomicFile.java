package saddlewright.casefile;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;

/**
 * Writes a whole file or nothing: into a temporary file in the same folder, forced to the disk, then
 * moved over the old one. When anything fails the old file stays as it was.
 */
public final class AtomicFile {
  private AtomicFile() {}

  /** Replaces the file's content; what fails is thrown as the file system says it. */
  public static void write(Path file, byte[] content) throws IOException {
    Path target = real(file.toAbsolutePath());
    if (Files.isDirectory(target)) {
      throw new java.nio.file.FileSystemException(
          file.toString(), null, "it is a folder; give the name of a file");
    }
    Path temporary =
        Files.createTempFile(target.getParent(), "." + target.getFileName(), ".part");
    try {
      try (FileChannel channel = FileChannel.open(temporary, StandardOpenOption.WRITE)) {
        ByteBuffer bytes = ByteBuffer.wrap(content);
        while (bytes.hasRemaining()) {
          channel.write(bytes);
        }
        channel.force(true);
      }
      keepPermissions(target, temporary);
      move(temporary, target);
    } finally {
      Files.deleteIfExists(temporary);
    }
  }

  /** A link is followed, so that it is not replaced by a file. */
  private static Path real(Path file) throws IOException {
    return Files.isSymbolicLink(file) && Files.exists(file) ? file.toRealPath() : file;
  }

  /** Temporary files are private to their owner; the written one is as the old one was. */
  private static void keepPermissions(Path old, Path temporary) throws IOException {
    if (!Files.getFileStore(temporary).supportsFileAttributeView("posix")) {
      return;
    }
    Files.setPosixFilePermissions(
        temporary,
        Files.exists(old)
            ? Files.getPosixFilePermissions(old)
            : java.nio.file.attribute.PosixFilePermissions.fromString("rw-r--r--"));
  }

  private static void move(Path from, Path to) throws IOException {
    try {
      Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
    } catch (AtomicMoveNotSupportedException e) {
      Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
    }
  }
}
