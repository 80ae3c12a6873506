package saddlewright.desktop.safekeeping;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Optional;
import saddlewright.casefile.AtomicFile;
import saddlewright.casefile.Case;
import saddlewright.casefile.CaseFileException;
import saddlewright.casefile.json.CaseCodec;
import saddlewright.casefile.json.CaseStore;
import saddlewright.desktop.Words;
import saddlewright.desktop.safekeeping.FoundWork.Disk;

/**
 * The user's file of the case on a desk, with what it held when it was read or written here last,
 * so that what another has written there since is never written over unasked.
 */
public final class DeskFile {
  /** The file and what it held; what is not known of it is empty. */
  record Known(Optional<Path> file, Optional<String> digest) {
    static final Known NOTHING = new Known(Optional.empty(), Optional.empty());

    Disk look() {
      return compare(file, digest);
    }
  }

  private volatile Known known = Known.NOTHING;
  private Optional<Path> backedUp = Optional.empty();

  Known known() {
    return known;
  }

  /** Digest of what the file held; empty where there is none or that is not known. */
  public Optional<String> digest() {
    return known.digest();
  }

  /** The case has no file. */
  public synchronized void none() {
    known = Known.NOTHING;
    backedUp = Optional.empty();
  }

  /** Notes, before it is read, what a file holds. */
  public static Optional<String> digestOf(Path file) {
    return Digest.of(file);
  }

  /** The case has come from a file, which held what the digest says. */
  public synchronized void opened(Path file, Optional<String> digest) {
    known = new Known(Optional.of(file), digest);
    backedUp = Optional.empty();
  }

  /** How the file stands now to what it held. */
  public Disk look() {
    return known.look();
  }

  static Disk compare(Optional<Path> file, Optional<String> digest) {
    if (file.isEmpty()) {
      return Disk.NONE;
    }
    Optional<String> now = Digest.of(file.get());
    if (now.isEmpty()) {
      return Disk.GONE;
    }
    return digest.isEmpty() || digest.equals(now) ? Disk.SAME : Disk.CHANGED;
  }

  /** When a file was written last; empty where that cannot be told. */
  public static Optional<Instant> changedAt(Path file) {
    try {
      return Optional.of(Files.getLastModifiedTime(file).toInstant());
    } catch (IOException e) {
      return Optional.empty();
    }
  }

  /**
   * Writes the case to a file, which becomes its own. At the first time what the file held before
   * is kept beside it.
   *
   * @param over whether also over what another has written there
   * @return false when another has written there, and nothing was done
   * @throws CaseFileException when it cannot be written; the file is then as it was
   */
  public synchronized boolean save(Case c, Path file, boolean over) throws CaseFileException {
    boolean own = known.file().filter(file::equals).isPresent();
    if (own && !over && look() == Disk.CHANGED) {
      return false;
    }
    byte[] bytes = CaseCodec.toBytes(c);
    if (over || backedUp.filter(file::equals).isEmpty()) {
      keepPrevious(file, Digest.of(bytes), over);
    }
    CaseStore.save(c, file);
    known = new Known(Optional.of(file), Optional.of(Digest.of(bytes)));
    backedUp = Optional.of(file);
    return true;
  }

  private static void keepPrevious(Path file, String next, boolean must) throws CaseFileException {
    Optional<String> there = Digest.of(file);
    if (there.isEmpty() || there.get().equals(next)) {
      return;
    }
    try {
      AtomicFile.write(PreviousVersion.of(file), Files.readAllBytes(file));
    } catch (CaseFileException e) {
      if (must) {
        throw notKept(file, e.sentences());
      }
    } catch (IOException e) {
      if (must) {
        throw notKept(file, String.valueOf(e.getMessage()));
      }
    }
  }

  private static CaseFileException notKept(Path file, String why) {
    return new CaseFileException(
        CaseFileException.Kind.NOT_SAVED,
        Words.of("safe.theirs-not-kept", AtomicFile.nameOf(file), why));
  }
}
