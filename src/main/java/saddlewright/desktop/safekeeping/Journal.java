package saddlewright.desktop.safekeeping;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Consumer;
import java.util.function.Supplier;
import saddlewright.casefile.AtomicFile;
import saddlewright.casefile.CaseFileException;
import saddlewright.casefile.json.PatientStore;
import saddlewright.casefile.order.PatientIdentity;

/**
 * The recovery copy of one desk. Whoever edits only says what it is to hold; it is written on
 * another thread, whole each time, and edits that follow each other quickly are written once.
 */
public final class Journal {
  /** So long an edit may wait for others; with the writing it stays well under a second. */
  static final long WAIT_MS = 120;

  /** After so long it is tried again to write what could not be written. */
  private static final long AGAIN_MS = 5000;

  static final String ENDING = ".recovery";

  private final Supplier<Path> place;
  private final ScheduledExecutorService thread;
  private final Consumer<Safety> told;
  private final AtomicBoolean due = new AtomicBoolean();
  private volatile Optional<RecoveryCopy> wanted = Optional.empty();
  private Optional<RecoveryCopy> written = Optional.empty();
  private volatile Safety safety = Safety.NOTHING_TO_KEEP;
  private final List<Path> superseded = new ArrayList<>();
  private boolean closed;

  /**
   * A journal that holds nothing.
   *
   * @param place its file; it may throw {@link java.io.UncheckedIOException} where there is none
   * @param told hears how safe the work is, on the thread of the journal
   */
  Journal(Supplier<Path> place, ScheduledExecutorService thread, Consumer<Safety> told) {
    this.place = place;
    this.thread = thread;
    this.told = told;
  }

  /** Has this kept from now on; returns at once. */
  public void keep(RecoveryCopy copy) {
    wanted = Optional.of(copy);
    schedule(WAIT_MS);
  }

  /** Has nothing kept from now on: what there was is saved, or given up. */
  public void release() {
    if (wanted.isPresent() || safety.kept().isPresent()) {
      wanted = Optional.empty();
      schedule(WAIT_MS);
    }
  }

  /** Has another copy deleted as soon as this journal holds what it held. */
  synchronized void supersede(Path other) {
    superseded.add(other);
  }

  private void schedule(long wait) {
    if (due.compareAndSet(false, true)) {
      Runnable writing = this::write;
      thread.schedule(writing, wait, TimeUnit.MILLISECONDS);
    }
  }

  /** Brings the file to what is wanted, now. */
  synchronized void write() {
    due.set(false);
    Optional<RecoveryCopy> now = wanted;
    if (closed || now.equals(written) && safety.trouble().isEmpty()) {
      return;
    }
    try {
      if (now.isPresent()) {
        write(now.get(), place.get());
      } else if (written.isPresent()) {
        delete(place.get());
      }
      written = now;
      for (Path other : superseded) {
        delete(other);
      }
      superseded.clear();
      tell(now.isEmpty() ? Safety.NOTHING_TO_KEEP : Safety.keptAt(Instant.now()));
    } catch (CaseFileException e) {
      failed(e.sentences());
    } catch (IOException | RuntimeException e) {
      failed(String.valueOf(e.getMessage()));
    }
  }

  private void failed(String why) {
    tell(safety.failing(why));
    schedule(AGAIN_MS);
  }

  private void tell(Safety next) {
    safety = next;
    told.accept(next);
  }

  private static void write(RecoveryCopy copy, Path file) throws CaseFileException, IOException {
    Path patient = PatientStore.beside(bare(file));
    if (copy.isPatientKept()) {
      String reference = copy.subject().reference();
      PatientStore.save(
          copy.patient()
              .map(p -> new PatientIdentity(reference, p.name(), p.born(), p.record()))
              .orElseGet(() -> PatientIdentity.none(reference)),
          patient);
    }
    AtomicFile.write(file, RecoveryFormat.toBytes(copy));
    if (!copy.isPatientKept()) {
      Files.deleteIfExists(patient);
    }
  }

  /** A name whose identity lies under the same name with an ending of its own. */
  static Path bare(Path file) {
    String n = file.getFileName().toString();
    return file.resolveSibling(n.substring(0, n.length() - ENDING.length()) + ".json");
  }

  static void delete(Path file) throws IOException {
    Files.deleteIfExists(file);
    Files.deleteIfExists(PatientStore.beside(bare(file)));
  }

  /** Takes the copy away, since the desk was left as its user wished; returns when it is gone. */
  public synchronized void close() {
    wanted = Optional.empty();
    write();
    closed = true;
  }
}
