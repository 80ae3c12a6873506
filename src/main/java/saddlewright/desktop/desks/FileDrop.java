package saddlewright.desktop.desks;

import java.io.File;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;
import javafx.application.Platform;
import javafx.css.PseudoClass;
import javafx.geometry.Pos;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.scene.input.DragEvent;
import javafx.scene.input.TransferMode;
import javafx.scene.layout.StackPane;
import saddlewright.desktop.Desktop;
import saddlewright.desktop.Words;

/**
 * The sign over a window that files dragged over it can be dropped, or that none of them can be
 * opened.
 */
public final class FileDrop extends StackPane {
  private static final PseudoClass REFUSED = PseudoClass.getPseudoClass("refused");

  private final Label words = new Label();
  private final Consumer<List<Path>> open;

  /**
   * A sign that is not seen until something is dragged.
   *
   * @param open opens what has been dropped
   */
  public FileDrop(Consumer<List<Path>> open) {
    this.open = open;
    setId("drop-sign");
    getStyleClass().add("drop-sign");
    setAlignment(Pos.CENTER);
    setMouseTransparent(true);
    setVisible(false);
    words.setWrapText(true);
    words.getStyleClass().add("drop-words");
    getChildren().add(words);
  }

  /** Has files accepted wherever in the window they are dropped. */
  public void install(Scene scene) {
    scene.setOnDragOver(this::over);
    scene.setOnDragExited(e -> setVisible(false));
    scene.setOnDragDropped(this::dropped);
  }

  private void over(DragEvent e) {
    if (e.getDragboard().hasFiles()) {
      boolean accepted = show(paths(e.getDragboard().getFiles()));
      if (accepted) {
        e.acceptTransferModes(TransferMode.COPY);
      }
    }
  }

  /** Says what would become of files, and whether any can be opened. */
  public boolean show(List<Path> files) {
    List<Path> fit = files.stream().filter(f -> Desktop.mayOpen(f.toString())).toList();
    words.setText(
        fit.isEmpty()
            ? Words.of("drop.none")
            : fit.size() < files.size()
                ? Words.of("drop.some", fit.size(), files.size())
                : fit.size() == 1
                    ? Words.of("drop.one", fit.get(0).getFileName())
                    : Words.of("drop.all", fit.size()));
    pseudoClassStateChanged(REFUSED, fit.isEmpty());
    setVisible(true);
    return !fit.isEmpty();
  }

  /** Opens them once whoever dropped them has been answered. */
  private void dropped(DragEvent e) {
    setVisible(false);
    if (e.getDragboard().hasFiles()) {
      List<Path> files = paths(e.getDragboard().getFiles());
      Platform.runLater(() -> open.accept(files));
      e.setDropCompleted(true);
    }
  }

  private static List<Path> paths(List<File> files) {
    return files.stream().map(File::toPath).toList();
  }
}
