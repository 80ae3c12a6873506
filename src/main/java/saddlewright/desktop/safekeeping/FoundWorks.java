package saddlewright.desktop.safekeeping;

import java.nio.file.Path;
import java.util.Optional;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;

/** The work that was found at the start, and what has been decided of each; used by all windows. */
public final class FoundWorks {
  /** What has been decided of found work. */
  public enum Decision {
    NONE,
    /** It is offered again at the next start. */
    LATER,
    /** It is put aside, and deleted when the program ends. */
    DISCARDED
  }

  /**
   * Found work and what has been decided of it.
   *
   * @param aside where it lies once it has been discarded
   */
  public record Line(FoundWork work, Decision decision, Optional<Path> aside) {}

  private final Safekeeping safe;
  private boolean looked;
  private final ObservableList<Line> lines = FXCollections.observableArrayList();

  /** Held here, since it hears of the lines only for as long as somebody holds it. */
  private final ObservableList<Line> shown = FXCollections.unmodifiableObservableList(lines);

  public FoundWorks(Safekeeping safe) {
    this.safe = safe;
  }

  /** Looks for it on another thread, the first time that it is asked. */
  public void look(Runnable whenFound) {
    if (looked) {
      return;
    }
    looked = true;
    safe.look(
        all -> {
          all.forEach(w -> lines.add(new Line(w, Decision.NONE, Optional.empty())));
          if (!all.isEmpty()) {
            whenFound.run();
          }
        });
  }

  public ObservableList<Line> lines() {
    return shown;
  }

  /** How many wait for a decision. */
  public long waiting() {
    return lines.stream().filter(l -> l.decision() == Decision.NONE).count();
  }

  /** The latest work on a file that waits for a decision. */
  public Optional<FoundWork> of(Path file) {
    return lines.stream()
        .filter(l -> l.decision() != Decision.DISCARDED)
        .map(Line::work)
        .filter(w -> w.copy().flatMap(RecoveryCopy::file).filter(f -> isSame(f, file)).isPresent())
        .findFirst();
  }

  private static boolean isSame(Path one, Path other) {
    return one.toAbsolutePath().normalize().equals(other.toAbsolutePath().normalize());
  }

  /** Takes it off the list, since it lies on a desk or another run has it. */
  public void taken(FoundWork work) {
    lines.removeIf(l -> l.work().equals(work));
  }

  void later(Line line) {
    replace(line, new Line(line.work(), Decision.LATER, Optional.empty()));
  }

  void discard(Line line) {
    Optional<Path> aside = safe.discard(line.work());
    if (aside.isEmpty()) {
      lines.remove(line);
    } else {
      replace(line, new Line(line.work(), Decision.DISCARDED, aside));
    }
  }

  /** Takes a decision back. */
  void again(Line line) {
    line.aside().ifPresent(a -> safe.takeBack(a, line.work()));
    replace(line, new Line(line.work(), Decision.NONE, Optional.empty()));
  }

  private void replace(Line line, Line by) {
    int at = lines.indexOf(line);
    if (at >= 0) {
      lines.set(at, by);
    }
  }
}
