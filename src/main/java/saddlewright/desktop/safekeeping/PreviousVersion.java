package saddlewright.desktop.safekeeping;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import saddlewright.casefile.AtomicFile;

/**
 * What a case file held before it was first saved in a sitting: {@code NAME.saddle~} beside {@code
 * NAME.saddle}. It holds no more of the patient than the case does.
 */
public final class PreviousVersion {
  private PreviousVersion() {}

  /** Where it lies, whether or not it is there. */
  public static Path of(Path file) {
    return file.resolveSibling(AtomicFile.nameOf(file) + "~");
  }

  /** The previous version of a file; empty when there is none. */
  public static Optional<Path> find(Path file) {
    return Optional.of(of(file)).filter(Files::isRegularFile);
  }
}
