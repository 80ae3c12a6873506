package saddlewright.desktop.safekeeping;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.ref.WeakReference;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.concurrent.Future;
import java.util.concurrent.ScheduledThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Consumer;
import java.util.stream.Stream;
import saddlewright.casefile.AtomicFile;
import saddlewright.casefile.CaseFileException;
import saddlewright.casefile.json.CaseCodec;
import saddlewright.casefile.json.FileBytes;
import saddlewright.casefile.json.PatientStore;
import saddlewright.casefile.order.PatientIdentity;

/**
 * The recovery copies of one run of the program, and those that runs before it left behind. They
 * are written on a thread of their own.
 */
public final class Safekeeping {
  private static final String FOLDER = "recovery";
  private static final String DISCARDED = "discarded";

  /** Longer than any writing takes, so that what is older was left by a run that ended. */
  private static final Duration LEFT = Duration.ofSeconds(10);

  private static final Duration OLD_LOCK = Duration.ofDays(1);

  private final Path folder;
  private final Executor window;
  private final ScheduledThreadPoolExecutor thread;

  /** A network disk that does not answer must not keep the recovery copies waiting. */
  private final ScheduledThreadPoolExecutor outside;

  private final List<WeakReference<Journal>> journals = new ArrayList<>();
  private Optional<Session> session = Optional.empty();
  private int entries;
  private final AtomicBoolean troubleSaid = new AtomicBoolean();

  /**
   * Writes nothing yet.
   *
   * @param state the folder of the program's state, see {@link StateFolder}
   * @param window runs what the window is told
   */
  public Safekeeping(Path state, Executor window) {
    this.folder = state.resolve(FOLDER);
    this.window = window;
    this.thread = thread("safekeeping");
    this.outside = thread("files of the user");
  }

  private static ScheduledThreadPoolExecutor thread(String name) {
    ScheduledThreadPoolExecutor e =
        new ScheduledThreadPoolExecutor(
            1,
            work -> {
              Thread t = new Thread(work, name);
              t.setDaemon(true);
              return t;
            });
    e.setRemoveOnCancelPolicy(true);
    e.setKeepAliveTime(5, TimeUnit.SECONDS);
    e.allowCoreThreadTimeOut(true);
    return e;
  }

  /** The folder of the recovery copies. */
  public Path folder() {
    return folder;
  }

  /**
   * A journal for one desk.
   *
   * @param told hears, on the thread of the window, how safe the work is
   */
  public Journal journal(Consumer<Safety> told) {
    int n;
    synchronized (this) {
      n = entries++;
    }
    Journal j =
        new Journal(
            () -> folder.resolve(session().name() + "." + n + Journal.ENDING),
            thread,
            s -> window.execute(() -> told.accept(s)));
    synchronized (this) {
      journals.removeIf(r -> r.get() == null);
      journals.add(new WeakReference<>(j));
    }
    return j;
  }

  private synchronized Session session() {
    if (session.isEmpty()) {
      try {
        makePrivate(folder);
        session = Optional.of(Session.begin(folder));
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
    return session.get();
  }

  /** Nobody but the user may look into it. */
  private static void makePrivate(Path folder) throws IOException {
    Files.createDirectories(folder);
    try {
      Files.setPosixFilePermissions(folder, PosixFilePermissions.fromString("rwx------"));
    } catch (UnsupportedOperationException e) {
      // The folders of Windows are the user's own by where they lie.
    }
  }

  /** Writes at once what waits to be written; for when the computer is shut down. */
  public void flush() {
    List<WeakReference<Journal>> all;
    synchronized (this) {
      all = List.copyOf(journals);
    }
    all.forEach(r -> Optional.ofNullable(r.get()).ifPresent(Journal::write));
  }

  /** Runs something on the thread on which the files of the user are looked at. */
  void run(Runnable work) {
    outside.execute(work);
  }

  /** Runs something there again and again. */
  Future<?> every(long ms, Runnable work) {
    return outside.scheduleWithFixedDelay(work, ms, ms, TimeUnit.MILLISECONDS);
  }

  /** Runs something on the thread of the window. */
  void tell(Runnable what) {
    window.execute(what);
  }

  /** Whether nobody has yet been told that the work cannot be kept; once it is asked, no longer. */
  public boolean isFirstTrouble() {
    return troubleSaid.compareAndSet(false, true);
  }

  /** Tells the window of the work that runs before this one left behind, the latest first. */
  public void look(Consumer<List<FoundWork>> found) {
    run(
        () -> {
          List<FoundWork> all = look();
          window.execute(() -> found.accept(all));
        });
  }

  List<FoundWork> look() {
    List<FoundWork> out = new ArrayList<>();
    for (Path p : files(folder)) {
      if (p.toString().endsWith(Journal.ENDING) && isOrphan(p)) {
        FoundWork f = read(p);
        if (isNeeded(f, out)) {
          out.add(f);
        } else {
          forget(p);
        }
      }
    }
    sweep();
    out.sort(Comparator.comparing(FoundWork::at).reversed());
    return out;
  }

  private static List<Path> files(Path folder) {
    try (Stream<Path> all = Files.list(folder)) {
      return all.filter(Files::isRegularFile).sorted().toList();
    } catch (IOException | UncheckedIOException e) {
      // There is no such folder yet, or none that can be read.
      return List.of();
    }
  }

  private boolean isOrphan(Path entry) {
    return !Session.isAlive(folder, sessionOf(entry));
  }

  private static String sessionOf(Path entry) {
    String n = entry.getFileName().toString();
    return n.substring(0, Math.max(0, n.indexOf('.')));
  }

  /** Whether a copy holds what stands neither in the user's file nor in another copy. */
  private static boolean isNeeded(FoundWork f, List<FoundWork> others) {
    if (f.copy().isEmpty()) {
      return true;
    }
    RecoveryCopy c = f.copy().get();
    boolean saved =
        !c.isPatientKept()
            && c.file()
                .flatMap(Digest::of)
                .filter(Digest.of(CaseCodec.toBytes(c.subject()))::equals)
                .isPresent();
    return !saved
        && others.stream()
            .flatMap(o -> o.copy().stream())
            .noneMatch(o -> o.subject().equals(c.subject()) && o.patient().equals(c.patient()));
  }

  private static FoundWork read(Path entry) {
    try {
      RecoveryCopy c =
          RecoveryFormat.fromBytes(
              FileBytes.of(entry, "recovery copy", 2 * CaseCodec.MAX_BYTES),
              AtomicFile.nameOf(entry));
      RecoveryCopy whole = c.isPatientKept() ? c.of(patient(entry, c)) : c;
      return new FoundWork(
          entry,
          Optional.of(whole),
          Optional.empty(),
          c.disk(),
          c.file().flatMap(DeskFile::changedAt));
    } catch (CaseFileException e) {
      return new FoundWork(
          entry,
          Optional.empty(),
          Optional.of(e.sentences()),
          FoundWork.Disk.NONE,
          Optional.empty());
    }
  }

  /** Who the patient is; not where the file tells of another case. */
  private static Optional<PatientIdentity> patient(Path entry, RecoveryCopy c) {
    try {
      return PatientStore.findBeside(Journal.bare(entry))
          .filter(p -> p.reference().equals(c.subject().reference()))
          .filter(p -> !p.isEmpty());
    } catch (CaseFileException e) {
      // The case is not given up for that; who it is of is typed again.
      return Optional.empty();
    }
  }

  private static void forget(Path entry) {
    try {
      Journal.delete(entry);
    } catch (IOException e) {
      // It is looked at again at the next start.
    }
  }

  /** Takes away what runs that ended left, other than work. */
  private void sweep() {
    for (Path p : files(folder.resolve(DISCARDED))) {
      if (isOrphan(p)) {
        quietlyDelete(p);
      }
    }
    for (Path p : files(folder)) {
      if (isUnfinished(p) && isOlder(p, LEFT)
          || isPatientAlone(p)
          || Session.isLeftLock(folder, p) && isOlder(p, OLD_LOCK)) {
        quietlyDelete(p);
      }
    }
  }

  private static boolean isUnfinished(Path p) {
    return p.getFileName().toString().matches("\\.saddlewright-[0-9a-f-]{36}\\.tmp");
  }

  /** Who a patient is must not lie about when the work is gone. */
  private boolean isPatientAlone(Path p) {
    String ending = ".patient.json";
    String n = p.getFileName().toString();
    return n.endsWith(ending)
        && isOrphan(p)
        && !Files.exists(
            p.resolveSibling(n.substring(0, n.length() - ending.length()) + Journal.ENDING));
  }

  private static boolean isOlder(Path p, Duration than) {
    return DeskFile.changedAt(p).filter(t -> t.isBefore(Instant.now().minus(than))).isPresent();
  }

  private static void quietlyDelete(Path p) {
    try {
      Files.deleteIfExists(p);
    } catch (IOException e) {
      // It does no harm where it lies.
    }
  }

  /**
   * Takes found work over, so that no other run offers it.
   *
   * @return where it lies now; empty when another run has it already
   */
  public Optional<Path> claim(FoundWork found) {
    int n;
    synchronized (this) {
      n = entries++;
    }
    return move(found.entry(), folder.resolve(session().name() + "." + n + Journal.ENDING));
  }

  /** Has what was claimed deleted as soon as the journal of a desk holds the work itself. */
  public void handOver(Path claimed, FoundWork found, Journal to) {
    to.supersede(claimed);
    found.copy().flatMap(RecoveryCopy::file).ifPresent(this::sweepBeside);
  }

  /** A saving that was cut off leaves a file beside the user's, which nobody needs. */
  private void sweepBeside(Path file) {
    run(
        () -> {
          for (Path p : files(AtomicFile.folderOf(file))) {
            if (isUnfinished(p) && isOlder(p, LEFT)) {
              quietlyDelete(p);
            }
          }
        });
  }

  /**
   * Puts found work aside; it is deleted when the program ends.
   *
   * @return where it lies now; empty when another run has it
   */
  public Optional<Path> discard(FoundWork found) {
    Path aside = folder.resolve(DISCARDED);
    try {
      Files.createDirectories(aside);
    } catch (IOException e) {
      return Optional.empty();
    }
    return move(found.entry(), aside.resolve(session().name() + "." + found.entry().getFileName()));
  }

  /** Takes discarded work back to where it was found. */
  public void takeBack(Path discarded, FoundWork found) {
    move(discarded, found.entry());
  }

  private static Optional<Path> move(Path from, Path to) {
    try {
      Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
    } catch (IOException e) {
      return Optional.empty();
    }
    try {
      Path patient = PatientStore.beside(Journal.bare(from));
      if (Files.exists(patient)) {
        Files.move(patient, PatientStore.beside(Journal.bare(to)), StandardCopyOption.ATOMIC_MOVE);
      }
    } catch (IOException e) {
      // The case has moved; who it is of stays behind, and is typed again.
    }
    return Optional.of(to);
  }

  /** Ends the run: what was discarded is deleted. */
  public void close() {
    session.ifPresent(
        s ->
            files(folder.resolve(DISCARDED)).stream()
                .filter(p -> sessionOf(p).equals(s.name()))
                .forEach(Safekeeping::quietlyDelete));
  }
}
