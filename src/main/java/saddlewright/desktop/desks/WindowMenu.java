package saddlewright.desktop.desks;

import java.util.List;
import javafx.scene.control.Menu;
import javafx.scene.control.MenuItem;
import javafx.scene.control.RadioMenuItem;
import javafx.scene.control.SeparatorMenuItem;
import javafx.scene.control.ToggleGroup;
import saddlewright.desktop.Words;
import saddlewright.desktop.Worktable;

/** The menu of the windows: those that are open, and the way from one to the next. */
public final class WindowMenu {
  private WindowMenu() {}

  /**
   * The menu of one window.
   *
   * @param first what stands above the list
   */
  public static <D extends Desk> Menu of(OpenDesks<D> desks, D own, List<MenuItem> first) {
    Menu menu = new Menu(Words.of("menu.window"));
    menu.getItems().setAll(first);
    menu.setOnShowing(
        e -> {
          menu.getItems().setAll(first);
          menu.getItems().add(new SeparatorMenuItem());
          menu.getItems().addAll(list(desks, own));
        });
    return menu;
  }

  private static <D extends Desk> List<MenuItem> list(OpenDesks<D> desks, D own) {
    List<Worktable> tables = desks.all().stream().map(Desk::table).toList();
    List<String> names = DeskNames.of(tables);
    ToggleGroup group = new ToggleGroup();
    List<MenuItem> out = new java.util.ArrayList<>();
    for (int i = 0; i < names.size(); i++) {
      D desk = desks.all().get(i);
      String name = names.get(i);
      RadioMenuItem item =
          new RadioMenuItem(
              desk.table().unsavedProperty().get() ? Words.of("window.unsaved", name) : name);
      item.setMnemonicParsing(false);
      item.setToggleGroup(group);
      item.setSelected(desk == own);
      item.setOnAction(e -> desks.bringUp(desk));
      out.add(item);
    }
    return out;
  }
}
