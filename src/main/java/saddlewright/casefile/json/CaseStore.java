package saddlewright.casefile.json;

import java.nio.file.Path;
import saddlewright.casefile.AtomicFile;
import saddlewright.casefile.Case;
import saddlewright.casefile.CaseFileException;
import saddlewright.casefile.CaseFileException.Kind;

/** Case files on disk: opened within bounds, saved whole or not at all. */
public final class CaseStore {
  private CaseStore() {}

  /**
   * The case in a file.
   *
   * @throws CaseFileException when the file cannot be read or holds no lawful case
   */
  public static Case load(Path file) throws CaseFileException {
    return CaseCodec.fromBytes(FileBytes.of(file, "case"), AtomicFile.nameOf(file));
  }

  /**
   * Writes the case to a file, in place of what was there. When that fails, what was there is
   * untouched.
   *
   * @throws CaseFileException when it cannot be written
   */
  public static void save(Case c, Path file) throws CaseFileException {
    save(c, file, new AtomicFile());
  }

  static void save(Case c, Path file, AtomicFile writer) throws CaseFileException {
    byte[] bytes = CaseCodec.toBytes(c);
    if (bytes.length > CaseCodec.MAX_BYTES) {
      throw new CaseFileException(
          Kind.NOT_SAVED,
          AtomicFile.nameOf(file)
              + " was not saved: the case is larger than "
              + CaseCodec.MAX_BYTES / 1_000_000
              + " MB and could not be opened again. Shorten its texts.",
          null);
    }
    writer.save(file, bytes);
  }
}
