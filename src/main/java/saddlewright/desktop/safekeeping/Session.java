package saddlewright.desktop.safekeeping;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Instant;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.concurrent.ConcurrentHashMap;

/**
 * One run of the program, known to others by a lock that the operating system takes back when the
 * run ends, however it ends.
 */
final class Session {
  private static final String ENDING = ".lock";

  /** Far behind the content, so that others can read who holds it also where locks forbid that. */
  private static final long PLACE = Long.MAX_VALUE - 1;

  /**
   * Runs within this process. Their lock files must not be opened again here: a lock is lost when
   * any channel of its process to the same file is closed.
   */
  private static final Set<Path> HERE = ConcurrentHashMap.newKeySet();

  private final String name;

  private Session(String name) {
    this.name = name;
  }

  /**
   * Begins a run.
   *
   * @throws IOException when the folder cannot be written to
   */
  static Session begin(Path folder) throws IOException {
    ProcessHandle me = ProcessHandle.current();
    String name = me.pid() + "-" + UUID.randomUUID().toString().substring(0, 8);
    Path file = folder.resolve(name + ENDING).toAbsolutePath();
    HERE.add(file);
    // Held until the process ends, so that the channel is never closed.
    FileChannel channel =
        FileChannel.open(file, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
    channel.write(ByteBuffer.wrap(owner(me).getBytes(StandardCharsets.UTF_8)));
    try {
      channel.lock(PLACE, 1, false);
    } catch (IOException e) {
      // Some network disks have no locks; the process is then known by its number and its start.
      channel.force(false);
    }
    return new Session(name);
  }

  private static String owner(ProcessHandle p) {
    return p.pid() + " " + p.info().startInstant().map(Instant::toString).orElse("");
  }

  /** Name of the run; without a full stop. */
  String name() {
    return name;
  }

  /** Whether the run of that name is still going on. */
  static boolean isAlive(Path folder, String name) {
    Path file = folder.resolve(name + ENDING).toAbsolutePath();
    if (HERE.contains(file)) {
      return true;
    }
    try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
      FileLock lock = channel.tryLock(PLACE, 1, false);
      if (lock == null) {
        return true;
      }
      lock.release();
      return false;
    } catch (OverlappingFileLockException e) {
      return true;
    } catch (IOException e) {
      return isOwnerAlive(file);
    }
  }

  private static boolean isOwnerAlive(Path file) {
    try {
      String owner = Files.readString(file);
      Optional<ProcessHandle> p =
          ProcessHandle.of(Long.parseLong(owner.substring(0, owner.indexOf(' '))));
      return p.filter(ProcessHandle::isAlive).filter(h -> owner(h).equals(owner)).isPresent();
    } catch (IOException | NumberFormatException | IndexOutOfBoundsException e) {
      return false;
    }
  }

  /** Whether a file of the folder is the lock of a run that has ended. */
  static boolean isLeftLock(Path folder, Path file) {
    String n = file.getFileName().toString();
    return n.endsWith(ENDING) && !isAlive(folder, n.substring(0, n.length() - ENDING.length()));
  }
}
