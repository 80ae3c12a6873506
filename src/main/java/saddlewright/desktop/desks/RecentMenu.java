package saddlewright.desktop.desks;

import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;
import javafx.scene.control.CheckMenuItem;
import javafx.scene.control.Menu;
import javafx.scene.control.MenuItem;
import javafx.scene.control.SeparatorMenuItem;
import saddlewright.desktop.Words;

/** The menu of the files that were opened lately, by name and folder. */
public final class RecentMenu {
  private RecentMenu() {}

  /**
   * The menu.
   *
   * @param open opens a file of the list
   * @param page shows the list on a page of its own, where single files are taken off
   * @param hidden is told when files that are noted are no longer shown
   */
  public static Menu of(RecentFiles recent, Consumer<Path> open, Runnable page, Runnable hidden) {
    Menu menu = new Menu(Words.of("file.recent"));
    menu.setOnShowing(e -> menu.getItems().setAll(items(recent, open, page, hidden)));
    menu.getItems().setAll(items(recent, open, page, hidden));
    return menu;
  }

  private static List<MenuItem> items(
      RecentFiles recent, Consumer<Path> open, Runnable page, Runnable hidden) {
    List<MenuItem> out = new java.util.ArrayList<>();
    for (Path p : recent.shown()) {
      MenuItem item =
          new MenuItem(Words.of("recent.line", p.getFileName(), RecentFiles.folderInWords(p)));
      item.setMnemonicParsing(false);
      item.setOnAction(e -> open.accept(p));
      out.add(item);
    }
    if (out.isEmpty()) {
      MenuItem none =
          new MenuItem(
              Words.of(recent.privateProperty().get() ? "recent.private" : "welcome.no-recent"));
      none.setDisable(true);
      out.add(none);
    }
    MenuItem all = new MenuItem(Words.of("recent.page"));
    all.setOnAction(e -> page.run());
    MenuItem clear = new MenuItem(Words.of("file.forget"));
    clear.setOnAction(e -> recent.forgetAll());
    clear.setDisable(recent.count() == 0);
    CheckMenuItem kept = new CheckMenuItem(Words.of("recent.keep-private"));
    kept.setSelected(recent.privateProperty().get());
    kept.selectedProperty()
        .addListener(
            (o, was, now) -> {
              recent.privateProperty().set(now);
              if (now && recent.count() > 0) {
                hidden.run();
              }
            });
    out.addAll(List.of(new SeparatorMenuItem(), all, clear, kept));
    return out;
  }
}
