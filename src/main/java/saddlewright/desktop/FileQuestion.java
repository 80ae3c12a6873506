package saddlewright.desktop;

import java.io.File;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javafx.stage.FileChooser;
import javafx.stage.Window;

/** The question which file is meant, asked by the platform's own dialog. */
public final class FileQuestion {
  /** Whoever answers in place of the dialog, where there is nobody to see one. */
  public interface Answering {
    Optional<Path> toOpen(FileChooser question);

    Optional<Path> toSave(FileChooser question);
  }

  private static Optional<Answering> answering = Optional.empty();

  private FileQuestion() {}

  /** Has all questions answered without a dialog; empty for the dialog again. */
  static void answerBy(Optional<Answering> other) {
    answering = other;
  }

  /** The file to open; empty when the question was left. */
  public static Optional<Path> toOpen(FileChooser question, Window owner) {
    return answering.isPresent()
        ? answering.get().toOpen(question)
        : Optional.ofNullable(question.showOpenDialog(owner)).map(File::toPath);
  }

  /** The files to open; none when the question was left. */
  public static List<Path> allToOpen(FileChooser question, Window owner) {
    if (answering.isPresent()) {
      return answering.get().toOpen(question).stream().toList();
    }
    List<File> chosen = question.showOpenMultipleDialog(owner);
    return chosen == null ? List.of() : chosen.stream().map(File::toPath).toList();
  }

  /** The file to write; empty when the question was left. */
  public static Optional<Path> toSave(FileChooser question, Window owner) {
    return answering.isPresent()
        ? answering.get().toSave(question)
        : Optional.ofNullable(question.showSaveDialog(owner)).map(File::toPath);
  }
}
