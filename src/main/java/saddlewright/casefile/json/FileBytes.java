package saddlewright.casefile.json;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import saddlewright.casefile.AtomicFile;
import saddlewright.casefile.CaseFileException;
import saddlewright.casefile.CaseFileException.Kind;

/** The bytes of a file that is to be opened, within bounds. */
public final class FileBytes {
  private FileBytes() {}

  /** At most as many bytes as a case may have, and one more. */
  static byte[] of(Path file, String noun) throws CaseFileException {
    // One byte more than allowed: enough for the codec to refuse it, however long it is.
    return of(file, noun, CaseCodec.MAX_BYTES + 1);
  }

  /**
   * The first bytes of a file.
   *
   * @param noun what the file should be, for the sentences
   * @param most how many are read; no more than these
   * @throws CaseFileException when it cannot be read
   */
  public static byte[] of(Path file, String noun, int most) throws CaseFileException {
    String name = AtomicFile.nameOf(file);
    if (Files.isDirectory(file)) {
      throw unreadable(
          name + " is a folder, not a " + noun + " file. Choose a file inside it.", null);
    }
    try (InputStream in = Files.newInputStream(file)) {
      return in.readNBytes(most);
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
  }

  private static CaseFileException unreadable(String sentences, Throwable cause) {
    return new CaseFileException(Kind.UNREADABLE, sentences, cause);
  }
}
