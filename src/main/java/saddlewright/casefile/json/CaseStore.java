package saddlewright.casefile.json;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
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
    String name = AtomicFile.nameOf(file);
    if (Files.isDirectory(file)) {
      throw unreadable(name + " is a folder, not a case file. Choose a file inside it.", null);
    }
    byte[] bytes;
    try (InputStream in = Files.newInputStream(file)) {
      // One byte more than allowed: enough for the codec to refuse it, however long it is.
      bytes = in.readNBytes(CaseCodec.MAX_BYTES + 1);
    } catch (NoSuchFileException e) {
      throw unreadable(
          name
              + " does not exist. Check the name and the folder, "
              + AtomicFile.folderOf(file)
              + ".",
          e);
    } catch (AccessDeniedException e) {
      throw unreadable(name + " may not be read. Ask its owner for permission, or open a copy.", e);
    } catch (IOException e) {
      throw unreadable(name + " cannot be read (" + e.getMessage() + "). Try a copy of it.", e);
    }
    return CaseCodec.fromBytes(bytes, name);
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

  private static CaseFileException unreadable(String sentences, Throwable cause) {
    return new CaseFileException(Kind.UNREADABLE, sentences, cause);
  }
}
