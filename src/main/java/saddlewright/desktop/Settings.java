package saddlewright.desktop;

import java.nio.file.Path;
import saddlewright.desktop.desks.RecentFiles;
import saddlewright.desktop.preferences.MyDetails;
import saddlewright.desktop.preferences.Preferences;

/** What the user has settled, read once and shared by all windows. */
record Settings(
    Path folder,
    Preferences preferences,
    Remembered remembered,
    RecentFiles recent,
    MyDetails mine,
    Printing printing) {

  static Settings in(Path folder, Preferences preferences) {
    Remembered remembered = new Remembered(folder);
    return new Settings(
        folder,
        preferences,
        remembered,
        new RecentFiles(folder, preferences),
        preferences.mine().orElseGet(() -> new MyDetails(folder)),
        new Printing(remembered));
  }
}
