package saddlewright.desktop.desks;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.beans.property.BooleanProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import saddlewright.casefile.AtomicFile;
import saddlewright.casefile.CaseFileException;
import saddlewright.desktop.preferences.Preferences;

/**
 * The files that were opened or saved lately, the latest first, the same in all windows. A file's
 * name may tell of a patient: while the list is private nothing is noted and nothing is shown.
 */
public final class RecentFiles {
  private static final String FILE = "recent.txt";
  private static final int MOST = 10;

  private final Path file;
  private final BooleanProperty kept;
  private final List<Path> noted = new ArrayList<>();
  private final ObservableList<Path> shown = FXCollections.observableArrayList();

  /** Those noted in a settings folder, private or not as is preferred. */
  public RecentFiles(Path folder, Preferences preferences) {
    this.file = folder.resolve(FILE);
    this.kept = preferences.recentPrivateProperty();
    read();
    show();
    kept.addListener(o -> show());
  }

  /** What may be seen of the list. */
  public ObservableList<Path> shown() {
    return FXCollections.unmodifiableObservableList(shown);
  }

  /** Whether nothing is noted and nothing is shown; it is one of the user's preferences. */
  public BooleanProperty privateProperty() {
    return kept;
  }

  /** How many are noted, also while they are not shown. */
  public int count() {
    return noted.size();
  }

  /** Puts a file at the head, unless the list is private. */
  public void note(Path opened) {
    if (!kept.get()) {
      change(
          list -> {
            Path full = opened.toAbsolutePath().normalize();
            list.remove(full);
            list.add(0, full);
          });
    }
  }

  /** Takes one off the list. */
  public void forget(Path opened) {
    change(list -> list.remove(opened));
  }

  /** Takes all off the list. */
  public void forgetAll() {
    change(List::clear);
  }

  /** The list as it now stands in the file is changed: other processes note there as well. */
  private void change(Consumer<List<Path>> what) {
    read();
    what.accept(noted);
    while (noted.size() > MOST) {
      noted.remove(noted.size() - 1);
    }
    show();
    StringBuilder lines = new StringBuilder();
    noted.forEach(p -> lines.append(p).append('\n'));
    try {
      Files.createDirectories(AtomicFile.folderOf(file));
      AtomicFile.write(file, lines.toString().getBytes(StandardCharsets.UTF_8));
    } catch (IOException | CaseFileException e) {
      // Convenience only: where it cannot be kept, the work goes on without it.
      System.err.println("saddlewright: " + file + " cannot be written: " + e.getMessage());
    }
  }

  private void read() {
    try {
      List<Path> found =
          Files.readAllLines(file).stream().flatMap(l -> path(l).stream()).distinct().toList();
      noted.clear();
      noted.addAll(found);
    } catch (IOException e) {
      // Nothing noted yet, or not readable: what is known here is a fair start.
      return;
    }
  }

  private static Optional<Path> path(String line) {
    try {
      return Optional.of(line).filter(l -> !l.isBlank()).map(Path::of);
    } catch (InvalidPathException e) {
      // A line that is no file costs itself only.
      return Optional.empty();
    }
  }

  private void show() {
    shown.setAll(kept.get() ? List.of() : noted);
  }

  /** The folder of a file as one writes it: the home folder as ~. */
  public static String folderInWords(Path opened) {
    Path folder = AtomicFile.folderOf(opened.toAbsolutePath().normalize());
    Path home = Path.of(System.getProperty("user.home", "/")).toAbsolutePath().normalize();
    if (home.getNameCount() == 0 || !folder.startsWith(home)) {
      return folder.toString();
    }
    Path rest = home.relativize(folder);
    return rest.toString().isEmpty() ? "~" : "~" + folder.getFileSystem().getSeparator() + rest;
  }
}
