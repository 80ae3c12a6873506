package saddlewright.desktop;

import java.nio.file.Path;
import javafx.application.Platform;
import saddlewright.desktop.desks.RecentFiles;
import saddlewright.desktop.preferences.MyDetails;
import saddlewright.desktop.preferences.Preferences;
import saddlewright.desktop.safekeeping.FoundWorks;
import saddlewright.desktop.safekeeping.Safekeeping;

/** What the user has settled, read once and shared by all windows. */
record Settings(
    Path folder,
    Preferences preferences,
    Remembered remembered,
    RecentFiles recent,
    MyDetails mine,
    Printing printing,
    Safekeeping safe,
    FoundWorks found) {

  /**
   * All of it.
   *
   * @param folder where settings are kept
   * @param state where work is kept that is not saved
   */
  static Settings in(Path folder, Path state, Preferences preferences) {
    Safekeeping safe = new Safekeeping(state, Platform::runLater);
    Remembered remembered = new Remembered(folder);
    return new Settings(
        folder,
        preferences,
        remembered,
        new RecentFiles(folder, preferences),
        preferences.mine().orElseGet(() -> new MyDetails(folder)),
        new Printing(remembered),
        safe,
        new FoundWorks(safe));
  }
}
