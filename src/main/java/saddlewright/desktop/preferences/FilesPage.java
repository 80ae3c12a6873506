package saddlewright.desktop.preferences;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.input.Clipboard;
import javafx.scene.input.DataFormat;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import saddlewright.desktop.Words;

/** Where the program keeps what it keeps. */
final class FilesPage extends Page {
  private final Label said = words("", "preferences-hint");

  /**
   * @param places the file or folder under each name, in order
   */
  FilesPage(List<Map.Entry<String, Path>> places) {
    super("files");
    say(Words.of("preferences.files-intro"));
    for (Map.Entry<String, Path> place : places) {
      place(place.getKey(), place.getValue());
    }
    said.setId("preferences-files-said");
    add(said);
  }

  private void place(String key, Path path) {
    String name = Words.of("preferences.place." + key);
    TextField text = new TextField(path.toString());
    text.setEditable(false);
    text.setId("preferences-place-" + key);
    text.setAccessibleText(name);
    Button copy = new Button(Words.of("preferences.copy-path"));
    copy.setAccessibleText(Words.of("preferences.copy-path-of", name));
    copy.setOnAction(
        e -> {
          boolean done =
              Clipboard.getSystemClipboard()
                  .setContent(Map.of(DataFormat.PLAIN_TEXT, path.toString()));
          said.setText(Words.of(done ? "preferences.copied" : "notice.not-copied", path));
        });
    Button open = new Button(Words.of("preferences.open-folder"));
    open.setAccessibleText(Words.of("preferences.open-folder-of", name));
    open.setOnAction(e -> open(path));
    row(
        name,
        new VBox(6, text, new FlowPane(8, 6, copy, open)),
        Optional.of(Words.of("preferences.place." + key + "-hint")));
  }

  private void open(Path place) {
    Path folder = Files.isDirectory(place) ? place : place.toAbsolutePath().getParent();
    try {
      Files.createDirectories(folder);
      FolderWindow.open(folder);
      said.setText("");
    } catch (IOException e) {
      said.setText(Words.of("preferences.not-opened", folder));
    }
  }

  @Override
  void reset() {
    // Nothing is set here.
  }

  @Override
  Runnable wayBack() {
    return () -> {};
  }
}
