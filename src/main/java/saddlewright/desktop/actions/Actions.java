package saddlewright.desktop.actions;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.event.Event;
import javafx.scene.control.CheckMenuItem;
import javafx.scene.control.Menu;
import javafx.scene.control.MenuBar;
import javafx.scene.control.MenuItem;
import javafx.scene.control.RadioMenuItem;
import javafx.scene.control.SeparatorMenuItem;
import javafx.scene.input.KeyCombination;

/** Reads the actions off a menu bar. */
public final class Actions {
  private Actions() {}

  /** What the menus hold at this moment, in their order. */
  public static List<Action> of(MenuBar bar) {
    List<Action> out = new ArrayList<>();
    bar.getMenus().forEach(m -> collect(m, List.of(), true, out));
    return out;
  }

  /** The items at the ends of the menus, in their order. */
  public static List<MenuItem> items(MenuBar bar) {
    List<MenuItem> out = new ArrayList<>();
    bar.getMenus().forEach(m -> collect(m, out));
    return out;
  }

  private static void collect(Menu menu, List<MenuItem> out) {
    for (MenuItem item : menu.getItems()) {
      if (item instanceof Menu sub) {
        collect(sub, out);
      } else if (!(item instanceof SeparatorMenuItem)) {
        out.add(item);
      }
    }
  }

  private static void collect(Menu menu, List<String> above, boolean ready, List<Action> out) {
    // Some menus are filled when they are about to be shown.
    Event.fireEvent(menu, new Event(Menu.ON_SHOWING));
    List<String> path = new ArrayList<>(above);
    path.add(plain(menu));
    boolean open = ready && !menu.isDisable();
    for (MenuItem item : menu.getItems()) {
      if (!item.isVisible() || item instanceof SeparatorMenuItem) {
        continue;
      }
      if (item instanceof Menu sub) {
        collect(sub, path, open, out);
      } else if (item.getText() != null && item.getOnAction() != null || isSwitch(item)) {
        out.add(
            new Action(
                path,
                plain(item),
                keys(item),
                open && !item.isDisable(),
                isOn(item),
                () -> choose(item)));
      }
    }
  }

  private static boolean isSwitch(MenuItem item) {
    return item instanceof CheckMenuItem || item instanceof RadioMenuItem;
  }

  private static Optional<Boolean> isOn(MenuItem item) {
    if (item instanceof CheckMenuItem c) {
      return Optional.of(c.isSelected());
    }
    return item instanceof RadioMenuItem r ? Optional.of(r.isSelected()) : Optional.empty();
  }

  /** As a click on it does. */
  private static void choose(MenuItem item) {
    if (item instanceof CheckMenuItem c) {
      c.setSelected(!c.isSelected());
    } else if (item instanceof RadioMenuItem r) {
      r.setSelected(true);
    }
    item.fire();
  }

  private static List<KeyCombination> keys(MenuItem item) {
    List<KeyCombination> out = new ArrayList<>();
    Optional.ofNullable(item.getAccelerator()).ifPresent(out::add);
    out.addAll(MoreKeys.of(item));
    return out;
  }

  private static String plain(MenuItem item) {
    return item.isMnemonicParsing() ? plain(item.getText()) : item.getText();
  }

  /** The text without the mark of its access key; a doubled mark stands for itself. */
  public static String plain(String text) {
    return text.replaceAll("_(?!_)", "").replace("__", "_");
  }
}
