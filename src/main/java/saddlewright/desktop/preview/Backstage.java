package saddlewright.desktop.preview;

import java.util.Optional;
import java.util.concurrent.PriorityBlockingQueue;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.application.Platform;

/**
 * The thread behind the window on which documents are made and pages are rendered, the urgent
 * first. Work that nobody wants any more when its turn comes is not done.
 */
final class Backstage implements AutoCloseable {
  /** What is done before what. */
  enum Urgency {
    DOCUMENT,
    PAGE_IN_VIEW,
    SMALL_PAGE,
    WORDS
  }

  private final AtomicLong count = new AtomicLong();
  private final ThreadPoolExecutor thread =
      new ThreadPoolExecutor(
          1,
          1,
          5,
          TimeUnit.SECONDS,
          new PriorityBlockingQueue<>(),
          r -> {
            Thread t = new Thread(r, "pages of the prescription");
            t.setDaemon(true);
            return t;
          });

  Backstage() {
    thread.allowCoreThreadTimeOut(true);
  }

  /**
   * Has something made.
   *
   * @param wanted whether it is still wanted; asked on either thread
   * @param work made behind the window
   * @param then what becomes of it, on the thread of the window, if still wanted
   * @param failed what is done when it could not be made
   */
  <T> void make(
      Urgency urgency,
      BooleanSupplier wanted,
      Supplier<T> work,
      Consumer<T> then,
      Consumer<RuntimeException> failed) {
    if (thread.isShutdown()) {
      return;
    }
    thread.execute(
        new Task(
            urgency,
            count.incrementAndGet(),
            () -> {
              if (!wanted.getAsBoolean()) {
                return;
              }
              Optional<T> made;
              try {
                made = Optional.of(work.get());
              } catch (RuntimeException e) {
                Platform.runLater(() -> failed.accept(e));
                return;
              }
              Platform.runLater(
                  () -> {
                    if (wanted.getAsBoolean()) {
                      made.ifPresent(then);
                    }
                  });
            }));
  }

  /** Does something when all that was asked for before has been done. */
  void last(Runnable work) {
    if (thread.isShutdown()) {
      work.run();
    } else {
      thread.execute(new Task(Urgency.WORDS, Long.MAX_VALUE, work));
    }
  }

  @Override
  public void close() {
    thread.shutdown();
  }

  private record Task(Urgency urgency, long number, Runnable work)
      implements Runnable, Comparable<Task> {
    @Override
    public void run() {
      work.run();
    }

    @Override
    public int compareTo(Task other) {
      int first = urgency.compareTo(other.urgency);
      return first != 0 ? first : Long.compare(number, other.number);
    }
  }
}
