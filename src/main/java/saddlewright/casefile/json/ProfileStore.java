package saddlewright.casefile.json;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import saddlewright.casefile.AtomicFile;
import saddlewright.casefile.CaseFileException;
import saddlewright.casefile.ProfileFile;

/** Profile files on disk: opened within bounds, saved whole or not at all. */
public final class ProfileStore {
  private ProfileStore() {}

  /**
   * The profile in a file.
   *
   * @throws CaseFileException when the file cannot be read or holds no lawful profile
   */
  public static ProfileFile load(Path file) throws CaseFileException {
    return ProfileCodec.fromBytes(FileBytes.of(file, "school profile"), AtomicFile.nameOf(file));
  }

  /**
   * Writes the profile to a file, in place of what was there. When that fails, what was there is
   * untouched.
   *
   * @throws CaseFileException when it cannot be written
   */
  public static void save(ProfileFile profile, Path file) throws CaseFileException {
    AtomicFile.write(file, ProfileCodec.toJson(profile).getBytes(StandardCharsets.UTF_8));
  }
}
