package saddlewright.desktop.safekeeping;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import saddlewright.casefile.AtomicFile;
import saddlewright.casefile.CaseFileException;
import saddlewright.desktop.Offer;
import saddlewright.desktop.Words;
import saddlewright.desktop.Worktable;
import saddlewright.desktop.safekeeping.FoundWork.Disk;

/**
 * What is said above the sheet of the file of the case and of work that was found, each with the
 * ways out of it; none of them loses what another holds.
 */
public final class FileNotices {
  /** The ways out. */
  public interface Ways {
    /** Takes over what another has written; undo goes back to what was here. */
    void loadTheirs();

    /** Saves over what another has written, which is kept beside. */
    void saveOver();

    void saveElsewhere();

    void saveThere();

    /** Opens what a file holds as a case that has no file yet. */
    void openCopy(Path file, Path of);

    void recover(FoundWork work);

    /** Shows all that was found. */
    void showFound();
  }

  private final Worktable table;
  private final Ways ways;

  public FileNotices(Worktable table, Ways ways) {
    this.table = table;
    this.ways = ways;
  }

  private Optional<Path> file() {
    return table.fileProperty().get();
  }

  private static Offer offer(String key, Runnable way) {
    return new Offer(Words.of(key), way);
  }

  /** Another has changed the file, or it has gone. */
  public void disk(Disk disk) {
    if (disk == Disk.CHANGED) {
      file().ifPresent(f -> changed("safe.changed", f));
    } else if (disk == Disk.GONE) {
      file().ifPresent(this::gone);
    }
  }

  /** It was to be saved over what another has written. */
  public void notOver(Path file) {
    changed("safe.not-over", file);
  }

  private void changed(String key, Path file) {
    String name = AtomicFile.nameOf(file);
    String when = DeskFile.changedAt(file).map(Moment::inWords).orElse("");
    String mine = Words.of(table.unsavedProperty().get() ? "safe.mine-unsaved" : "safe.mine-saved");
    table.say(
        Words.of(key, name, when) + " " + mine,
        offer("safe.load-theirs", ways::loadTheirs),
        offer("safe.save-over", ways::saveOver),
        offer("safe.save-elsewhere", ways::saveElsewhere));
  }

  private void gone(Path file) {
    table.say(
        Words.of("safe.gone", AtomicFile.nameOf(file), AtomicFile.folderOf(file)),
        offer("safe.save-there", ways::saveThere),
        offer("safe.save-elsewhere", ways::saveElsewhere));
  }

  /** What was here gave way to what another has written. */
  public void loadedTheirs(Path file) {
    table.say(
        Words.of("safe.loaded-theirs", AtomicFile.nameOf(file)),
        offer("safe.back-to-mine", table::undo));
  }

  /** It was saved over what another has written. */
  public void savedOver(Path file) {
    Path theirs = PreviousVersion.of(file);
    table.say(
        Words.of("safe.saved-over", AtomicFile.nameOf(file), AtomicFile.nameOf(theirs)),
        offer("safe.open-theirs", () -> ways.openCopy(theirs, file)));
  }

  /** It could not be saved. */
  public void notSaved(CaseFileException e) {
    String kept =
        table
            .safetyProperty()
            .get()
            .kept()
            .map(at -> " " + Words.of("safe.kept-meanwhile", Moment.clock(at)))
            .orElse("");
    table.say(e.sentences() + kept, offer("safe.save-elsewhere", ways::saveElsewhere));
  }

  /** The work cannot be kept safe; said only where nothing else is being said. */
  public boolean notKept(String why) {
    if (table.noticeProperty().get().isPresent()) {
      return false;
    }
    table.say(Words.of("safe.not-kept", why));
    return true;
  }

  /** Found work lies on the desk again. */
  public void recovered(RecoveryCopy work, Disk disk) {
    String when = Moment.inWords(work.at());
    if (work.file().isEmpty()) {
      table.say(
          Words.of("safe.recovered-no-file", when),
          offer("safe.save-elsewhere", ways::saveElsewhere));
      return;
    }
    Path file = work.file().get();
    String name = AtomicFile.nameOf(file);
    switch (disk) {
      case CHANGED ->
          table.say(
              Words.of(
                  "safe.recovered-changed",
                  name,
                  when,
                  DeskFile.changedAt(file).map(Moment::inWords).orElse("")),
              offer("safe.open-file-too", () -> ways.openCopy(file, file)),
              offer("safe.save-elsewhere", ways::saveElsewhere));
      case GONE ->
          table.say(
              Words.of("safe.recovered-gone", name, when, AtomicFile.folderOf(file)),
              offer("safe.save-elsewhere", ways::saveElsewhere));
      case NONE, SAME ->
          table.say(
              Words.of("safe.recovered", name, when), offer("safe.save-now", ways::saveThere));
    }
  }

  /** Another window or run of the program has taken the work up meanwhile. */
  public void takenUp() {
    table.say(Words.of("safe.taken-up"));
  }

  /** Work was found while a case is open, so that its offer is not seen. */
  public void found(FoundWorks all) {
    List<Offer> offers = new ArrayList<>();
    Optional<FoundWork> here = file().flatMap(all::of);
    here.ifPresent(w -> offers.add(offer("safe.open", () -> ways.recover(w))));
    offers.add(offer("safe.show", ways::showFound));
    String said =
        here.map(
                w ->
                    Words.of(
                        "safe.found-here",
                        AtomicFile.nameOf(file().orElseThrow()),
                        Moment.inWords(w.at())))
            .orElseGet(() -> Words.of("safe.found-elsewhere", all.waiting()));
    String before = table.noticeProperty().get().map(n -> n + "\n").orElse("");
    table.say(before + said, offers.toArray(Offer[]::new));
  }
}
