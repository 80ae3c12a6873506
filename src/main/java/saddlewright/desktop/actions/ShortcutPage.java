package saddlewright.desktop.actions;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import saddlewright.desktop.Words;

/** All keys of a window: those of its actions, read off its menus, and those of its panes. */
public final class ShortcutPage extends BorderPane {
  /** Keys with what they do. */
  private record Line(String keys, String deed) {}

  /** Lines under a title. */
  private record Section(String title, List<Line> lines) {}

  private final List<Section> sections = new ArrayList<>();
  private final VBox page = new VBox(16);
  private final TextField filter = new TextField();

  public ShortcutPage(List<Action> actions) {
    sections.addAll(ofActions(actions));
    for (Surroundings place : Surroundings.values()) {
      sections.add(
          new Section(
              Words.of(place),
              place.keys().stream()
                  .map(
                      k -> new Line(Words.of("shortcut." + k + ".keys"), Words.of("shortcut." + k)))
                  .toList()));
    }
    filter.setId("shortcut-filter");
    filter.setPromptText(Words.of("shortcuts.filter"));
    filter.setAccessibleText(Words.of("shortcuts.filter"));
    filter.textProperty().addListener(o -> fill());
    getStyleClass().add("shortcut-page");
    setTop(filter);
    page.getStyleClass().add("shortcut-lines");
    ScrollPane scroll = new ScrollPane(page);
    scroll.setFitToWidth(true);
    scroll.setId("shortcuts");
    scroll.setAccessibleText(Words.of("shortcuts.title"));
    setCenter(scroll);
    fill();
  }

  private static List<Section> ofActions(List<Action> actions) {
    List<Section> out = new ArrayList<>();
    List<String> titles = actions.stream().map(a -> a.path().get(0)).distinct().toList();
    for (String title : titles) {
      List<Line> lines = new ArrayList<>();
      for (Action a : actions) {
        if (a.path().get(0).equals(title) && !a.keys().isEmpty()) {
          String under = String.join(" \u203a ", a.path().subList(1, a.path().size()));
          lines.add(
              new Line(
                  KeyNames.of(a.keys()),
                  under.isEmpty() ? a.name() : under + " \u203a " + a.name()));
        }
      }
      if (!lines.isEmpty()) {
        out.add(new Section(title, lines));
      }
    }
    return out;
  }

  private void fill() {
    String sought = filter.getText().strip().toLowerCase(Locale.ROOT);
    page.getChildren().clear();
    for (Section s : sections) {
      List<Line> lines =
          s.lines().stream()
              .filter(
                  l ->
                      (s.title() + ' ' + l.keys() + ' ' + l.deed())
                          .toLowerCase(Locale.ROOT)
                          .contains(sought))
              .toList();
      if (!lines.isEmpty()) {
        page.getChildren().add(block(s.title(), lines));
      }
    }
    if (page.getChildren().isEmpty()) {
      page.getChildren().add(new Label(Words.of("shortcuts.none", filter.getText().strip())));
    }
  }

  private static VBox block(String title, List<Line> lines) {
    GridPane grid = new GridPane();
    grid.setHgap(14);
    grid.setVgap(4);
    for (int i = 0; i < lines.size(); i++) {
      Label keys = new Label(lines.get(i).keys());
      keys.getStyleClass().add("keys");
      keys.setMinWidth(Region.USE_PREF_SIZE);
      Label deed = new Label(lines.get(i).deed());
      deed.setWrapText(true);
      deed.setMinHeight(Region.USE_PREF_SIZE);
      GridPane.setHgrow(deed, Priority.ALWAYS);
      grid.addRow(i, keys, deed);
    }
    javafx.scene.layout.ColumnConstraints first = new javafx.scene.layout.ColumnConstraints();
    first.setPercentWidth(36);
    grid.getColumnConstraints().add(first);
    Label head = new Label(title);
    head.getStyleClass().add("panel-title");
    return new VBox(6, head, grid);
  }
}
