package saddlewright.desktop.safekeeping;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.time.Instant;
import java.util.Optional;
import java.util.concurrent.Future;
import java.util.function.Consumer;
import saddlewright.desktop.safekeeping.FoundWork.Disk;

/**
 * Notices when the file of a desk is changed by another program, or goes. It looks now and then,
 * since notices of the operating system do not reach over network disks; what is not touched is not
 * read.
 */
public final class FileWatch {
  private static final long EVERY_MS = 2000;

  private record Touch(Instant changed, long size) {
    static Optional<Touch> of(Path file) {
      try {
        BasicFileAttributes a = Files.readAttributes(file, BasicFileAttributes.class);
        return Optional.of(new Touch(a.lastModifiedTime().toInstant(), a.size()));
      } catch (IOException e) {
        return Optional.empty();
      }
    }
  }

  private final DeskFile file;
  private final Safekeeping safe;
  private final Consumer<Disk> told;
  private Optional<Future<?>> running = Optional.empty();
  private DeskFile.Known looked = DeskFile.Known.NOTHING;
  private Optional<Touch> touch = Optional.empty();
  private boolean missed;

  /**
   * Looks at nothing yet.
   *
   * @param told hears, on the thread of the window and once for each change, what has become of it
   */
  public FileWatch(DeskFile file, Safekeeping safe, Consumer<Disk> told) {
    this.file = file;
    this.safe = safe;
    this.told = told;
  }

  /** Looks from now on. */
  public void start() {
    if (running.isEmpty()) {
      running = Optional.of(safe.every(EVERY_MS, this::look));
    }
  }

  public void stop() {
    running.ifPresent(r -> r.cancel(false));
    running = Optional.empty();
  }

  /** Looks at once, since the user has come back from another program. */
  public void lookNow() {
    safe.run(this::look);
  }

  /** As the file is now it has been told of already. */
  public void isTold() {
    synchronized (file) {
      looked = file.known();
      touch = looked.file().flatMap(Touch::of);
    }
  }

  /** Looks, off the thread of the window. */
  void look() {
    DeskFile.Known known;
    Disk disk;
    boolean firstMissed;
    // While it is being saved here it is neither what it was nor known to be otherwise.
    synchronized (file) {
      known = file.known();
      if (known.file().isEmpty()) {
        return;
      }
      Optional<Touch> now = Touch.of(known.file().get());
      boolean same = known == looked && now.equals(touch);
      if (same && !(missed && now.isEmpty())) {
        return;
      }
      looked = known;
      touch = now;
      disk = known.look();
      // Many programs put a new file in the place of the old: it is gone when it is gone twice.
      firstMissed = disk == Disk.GONE && !missed;
      missed = firstMissed;
    }
    if (!firstMissed && disk != Disk.SAME) {
      safe.tell(
          () -> {
            if (file.known() == known) {
              told.accept(disk);
            }
          });
    }
  }
}
