package saddlewright.desktop.desks;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import javafx.stage.Stage;
import saddlewright.chart.ArchChart;
import saddlewright.dentition.Arch;
import saddlewright.desktop.Worktable;

/** The windows that are open in this process, in the order in which they were opened. */
public final class OpenDesks<D extends Desk> {
  private final BiFunction<Stage, OpenDesks<D>, D> maker;
  private final ObservableList<D> desks = FXCollections.observableArrayList();
  private boolean quitting;

  /**
   * No window yet.
   *
   * @param maker fills a stage, shows it, and enters what it made with {@link #enter}
   */
  public OpenDesks(BiFunction<Stage, OpenDesks<D>, D> maker) {
    this.maker = maker;
  }

  /** Takes a window among them until it is hidden, by whatever way. */
  public void enter(D desk) {
    desks.add(desk);
    desk.stage()
        .showingProperty()
        .addListener(
            (o, was, showing) -> {
              if (!showing) {
                desks.remove(desk);
              }
            });
  }

  public ObservableList<D> all() {
    return FXCollections.unmodifiableObservableList(desks);
  }

  /** Opens a further window, on its welcome page. */
  public D open() {
    return maker.apply(new Stage(), this);
  }

  /** The window that has the file open, or the case out of that prescription. */
  public Optional<D> holding(Path file) {
    return desks.stream()
        .filter(d -> d.table().openProperty().get())
        .filter(d -> d.place().filter(p -> isSame(p, file)).isPresent())
        .findFirst();
  }

  private static boolean isSame(Path one, Path other) {
    if (one.toAbsolutePath().normalize().equals(other.toAbsolutePath().normalize())) {
      return true;
    }
    try {
      return Files.isSameFile(one, other);
    } catch (IOException e) {
      // One of them is not there, so that the names alone can tell.
      return false;
    }
  }

  /** Where another case can lie: in this window if it shows none or an untouched new one. */
  public D roomFor(D asking) {
    return isFree(asking.table()) ? asking : open();
  }

  private static boolean isFree(Worktable t) {
    return !t.openProperty().get()
        || t.fileProperty().get().isEmpty()
            && !t.unsavedProperty().get()
            && t.editsProperty().get().isEmpty()
            && isBlank(t);
  }

  private static boolean isBlank(Worktable t) {
    for (Arch arch : Arch.values()) {
      if (!t.current().chart(arch).equals(ArchChart.full(arch))
          || !t.current().design(arch).components().isEmpty()) {
        return false;
      }
    }
    return t.current().title().isBlank();
  }

  /** Brings a window before the others and gives it the keyboard. */
  public void bringUp(D desk) {
    desk.stage().setIconified(false);
    desk.stage().toFront();
    desk.stage().requestFocus();
  }

  /** Goes to the window after this one, or before it; round to the first after the last. */
  public void step(D from, boolean onwards) {
    int n = desks.indexOf(from) + (onwards ? 1 : -1);
    if (!desks.isEmpty()) {
      bringUp(desks.get(Math.floorMod(n, desks.size())));
    }
  }

  /** Closes one window, if its case may be left; the others stay. */
  public boolean close(D desk) {
    if (quitting || !desk.mayLeave()) {
      return false;
    }
    desk.shut();
    return true;
  }

  /**
   * Closes all windows once every case that is not saved has been asked for, in turn; where one may
   * not be left, all stay.
   */
  public boolean quit() {
    if (quitting) {
      return false;
    }
    quitting = true;
    try {
      List<D> now = List.copyOf(desks);
      for (D d : now) {
        if (d.table().unsavedProperty().get()) {
          bringUp(d);
        }
        if (!d.mayLeave()) {
          return false;
        }
      }
      now.forEach(Desk::shut);
      return true;
    } finally {
      quitting = false;
    }
  }
}
