package saddlewright.desktop.preferences;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import saddlewright.desktop.Words;
import saddlewright.layout.Layout;

/**
 * What the user prefers, page by page. A change holds at once and in every window; a reset can be
 * taken back until the window is closed.
 */
public final class PreferencesPane extends BorderPane {
  private final List<Page> pages = new ArrayList<>();
  private final Optional<MyDetailsPage> mine;
  private final ListView<Page> index = new ListView<>();
  private final Label title = new Label();
  private final BorderPane shown = new BorderPane();
  private final Button reset = new Button();
  private final Button back = new Button(Words.of("preferences.take-back"));
  private final List<Runnable> waysBack = new ArrayList<>();

  /**
   * @param sample the design in which inks are shown
   * @param places what is kept where, beside the preferences themselves
   */
  public PreferencesPane(
      Preferences preferences,
      Supplier<Optional<Layout>> sample,
      List<Map.Entry<String, Path>> places) {
    setId("preferences");
    getStyleClass().add("preferences");
    pages.add(new GeneralPage(preferences));
    pages.add(new SchoolPage(preferences));
    pages.add(new InksPage(preferences, sample));
    mine = preferences.mine().map(MyDetailsPage::new);
    mine.ifPresent(pages::add);
    List<Map.Entry<String, Path>> all = new ArrayList<>();
    preferences.file().ifPresent(f -> all.add(Map.entry("preferences", f)));
    preferences.mine().ifPresent(m -> all.add(Map.entry("my-details", m.file())));
    all.addAll(places);
    pages.add(new FilesPage(all));
    index.setId("preferences-pages");
    index.setAccessibleText(Words.of("preferences.title"));
    index.getItems().setAll(pages);
    index.setCellFactory(
        v ->
            new ListCell<>() {
              @Override
              protected void updateItem(Page page, boolean empty) {
                super.updateItem(page, empty);
                setText(empty || page == null ? null : page.title());
              }
            });
    index.getSelectionModel().selectedItemProperty().addListener((o, was, page) -> show(page));
    title.getStyleClass().add("page-title");
    shown.setTop(title);
    shown.getStyleClass().add("preferences-page");
    setLeft(index);
    setCenter(shown);
    setBottom(foot(preferences));
    index.getSelectionModel().selectFirst();
  }

  private VBox foot(Preferences preferences) {
    Label trouble = Page.words("", "field-error");
    trouble.setId("preferences-trouble");
    trouble.managedProperty().bind(trouble.textProperty().isNotEmpty());
    trouble.setText(preferences.troubleProperty().get().orElse(""));
    preferences.troubleProperty().addListener((o, was, now) -> trouble.setText(now.orElse("")));
    reset.setId("preferences-reset");
    reset.setOnAction(
        e -> {
          Page page = index.getSelectionModel().getSelectedItem();
          remember(page.wayBack());
          page.reset();
        });
    Button all = new Button(Words.of("preferences.reset-all"));
    all.setId("preferences-reset-all");
    all.setOnAction(
        e -> {
          Map<String, String> now = preferences.texts();
          remember(() -> preferences.take(now));
          preferences.resetAll();
        });
    back.setId("preferences-take-back");
    back.setDisable(true);
    back.setOnAction(
        e -> {
          waysBack.remove(waysBack.size() - 1).run();
          back.setDisable(waysBack.isEmpty());
        });
    FlowPane buttons = new FlowPane(8, 6, reset, all, back);
    buttons.setAlignment(Pos.CENTER_LEFT);
    VBox foot = new VBox(6, trouble, buttons);
    foot.getStyleClass().add("preferences-foot");
    return foot;
  }

  private void remember(Runnable wayBack) {
    waysBack.add(wayBack);
    back.setDisable(false);
  }

  private void show(Page page) {
    mine.ifPresent(MyDetailsPage::keep);
    if (page == null) {
      return;
    }
    title.setText(page.title());
    reset.setText(Words.of("preferences.reset-page", page.title()));
    boolean files = page instanceof FilesPage;
    reset.setVisible(!files);
    reset.setManaged(!files);
    page.look();
    shown.setCenter(page.content());
  }

  /** Shows the page of a key, such as "inks". */
  public void show(String key) {
    pages.stream()
        .filter(p -> p.key().equals(key))
        .findFirst()
        .ifPresent(index.getSelectionModel()::select);
  }

  /** Is told when the window has been closed: what was reset stays so. */
  public void closed() {
    mine.ifPresent(MyDetailsPage::keep);
    waysBack.clear();
    back.setDisable(true);
  }
}
