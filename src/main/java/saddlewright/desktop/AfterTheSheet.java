package saddlewright.desktop;

import javafx.animation.Animation;
import javafx.animation.PauseTransition;
import javafx.util.Duration;

/**
 * What is done shortly after an edit, once for several that follow each other quickly: the sheet is
 * to change before panels do that cost more.
 */
public final class AfterTheSheet {
  private static final Duration SHORTLY = Duration.millis(40);

  private final PauseTransition pause = new PauseTransition(SHORTLY);

  public AfterTheSheet(Runnable action) {
    pause.setOnFinished(e -> action.run());
  }

  /** Has it done shortly. */
  public void ask() {
    pause.playFromStart();
  }

  /** Has what was asked for not done. */
  public void forget() {
    pause.stop();
  }

  /** Whether nothing is waiting to be done. */
  public boolean isSettled() {
    return pause.getStatus() != Animation.Status.RUNNING;
  }
}
