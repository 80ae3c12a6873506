package saddlewright.desktop.safekeeping;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Optional;
import saddlewright.casefile.Case;

/** Work as a run of the program leaves it behind that ended without being asked. */
public final class LeftBehind {
  private LeftBehind() {}

  /**
   * Puts a recovery copy into a folder of state.
   *
   * @param file the user's file, which holds what it held when the work began
   */
  public static Path in(Path state, Case work, Optional<Path> file, String edit)
      throws IOException {
    Path folder = Files.createDirectories(state.resolve("recovery"));
    RecoveryCopy copy =
        new RecoveryCopy(
            work,
            file,
            file.flatMap(DeskFile::digestOf),
            Instant.now(),
            edit,
            Optional.empty(),
            false);
    Path entry = folder.resolve("999-dead." + work.title().length() + ".recovery");
    return Files.write(entry, RecoveryFormat.toBytes(copy));
  }
}
