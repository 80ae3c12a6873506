package saddlewright.desktop;

import java.util.Arrays;
import java.util.stream.Collectors;

/** The thread of the windows, and who is told of what is thrown on it. */
final class OnStageThread {
  private static Thread itself = Thread.currentThread();

  private OnStageThread() {}

  /** Where it stands now: what it hangs in, when it does not answer. */
  static String whereItStands() {
    return Arrays.stream(itself.getStackTrace())
        .map(StackTraceElement::toString)
        .collect(Collectors.joining("\n    "));
  }

  /** Has failures told to somebody; answers who was told before. */
  static Thread.UncaughtExceptionHandler handleBy(Thread.UncaughtExceptionHandler told)
      throws Exception {
    OnStage.startToolkit();
    return OnStage.run(
        () -> {
          Thread here = Thread.currentThread();
          itself = here;
          Thread.UncaughtExceptionHandler before = here.getUncaughtExceptionHandler();
          here.setUncaughtExceptionHandler(told);
          return before;
        });
  }
}
