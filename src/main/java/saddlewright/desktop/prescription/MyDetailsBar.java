package saddlewright.desktop.prescription;

import java.nio.file.Path;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import javafx.beans.InvalidationListener;
import javafx.beans.WeakInvalidationListener;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import javafx.stage.FileChooser;
import saddlewright.casefile.CaseFileException;
import saddlewright.casefile.order.Answer;
import saddlewright.casefile.order.Item;
import saddlewright.casefile.order.PrescriptionDetails;
import saddlewright.desktop.FileQuestion;
import saddlewright.desktop.Words;
import saddlewright.desktop.Worktable;
import saddlewright.desktop.preferences.MyDetails;
import saddlewright.prescription.pdf.Letterhead;

/** Fills in who the prescriber and the laboratory are, and keeps them for the next case. */
final class MyDetailsBar extends VBox {
  private final Worktable table;
  private final MyDetails mine;
  private final Button fill = new Button(Words.of("mine.fill"));
  private final Button keep = new Button(Words.of("mine.keep"));
  private final Button picture = new Button(Words.of("mine.letterhead"));
  private final Button bare = new Button(Words.of("mine.no-letterhead"));
  private final Label said = FieldBlock.small("hint-line");
  private Optional<Path> shown = Optional.empty();

  /** Held here, so that a window that is closed is not held by the details that outlive it. */
  private final InvalidationListener elsewhere = o -> follow();

  MyDetailsBar(Worktable table, MyDetails mine) {
    this.table = table;
    this.mine = mine;
    getStyleClass().add("my-details");
    fill.setId("mine-fill");
    fill.setOnAction(e -> fill());
    keep.setId("mine-keep");
    keep.setOnAction(e -> keep());
    said.setId("mine-said");
    picture.setId("mine-letterhead");
    picture.setOnAction(e -> choose());
    bare.setId("mine-no-letterhead");
    bare.setOnAction(e -> take(Optional.empty()));
    getChildren().addAll(new FlowPane(8, 6, fill, keep, picture, bare), said);
    say("");
    follow();
    mine.letterheadProperty().addListener(new WeakInvalidationListener(elsewhere));
    mine.knownProperty().addListener(new WeakInvalidationListener(elsewhere));
  }

  /** Takes over what has been set here, in another window or in the preferences. */
  private void follow() {
    if (!mine.letterhead().equals(shown)) {
      shown = mine.letterhead();
      shown.ifPresentOrElse(this::show, () -> table.letterheadProperty().set(Optional.empty()));
    }
    bare.setDisable(mine.letterhead().isEmpty());
    refresh();
  }

  void refresh() {
    PrescriptionDetails p = table.current().prescription();
    fill.setDisable(mine.known().keySet().stream().noneMatch(i -> p.answer(i).isBlank()));
    Map<Item, String> here = here(p);
    keep.setDisable(here.isEmpty() || here.equals(mine.known()));
  }

  /** Fills blank fields only: what somebody has written stays. */
  private void fill() {
    PrescriptionDetails before = table.current().prescription();
    PrescriptionDetails next = before;
    int kept = 0;
    for (Map.Entry<Item, String> e : mine.known().entrySet()) {
      if (before.answer(e.getKey()).isBlank()) {
        next = next.with(e.getKey(), e.getValue());
      } else if (!before.text(e.getKey()).equals(e.getValue())) {
        kept++;
      }
    }
    table.apply(Words.of("edit.mine"), table.current().with(next));
    say(kept == 0 ? "" : Words.of("mine.left", kept));
  }

  private static Map<Item, String> here(PrescriptionDetails p) {
    Map<Item, String> out = new EnumMap<>(Item.class);
    for (Item i : MyDetails.ITEMS) {
      Optional.of(p.answer(i))
          .filter(a -> a.state() == Answer.State.GIVEN)
          .ifPresent(a -> out.put(i, a.text()));
    }
    return out;
  }

  private void keep() {
    try {
      mine.remember(here(table.current().prescription()));
      say(Words.of("mine.kept", mine.file()));
    } catch (CaseFileException e) {
      say(e.sentences());
    }
    refresh();
  }

  private void choose() {
    FileChooser chooser = new FileChooser();
    chooser.setTitle(Words.of("mine.letterhead-title"));
    chooser
        .getExtensionFilters()
        .add(new FileChooser.ExtensionFilter("PNG, JPEG", "*.png", "*.jpg", "*.jpeg"));
    FileQuestion.toOpen(chooser, getScene().getWindow()).ifPresent(f -> take(Optional.of(f)));
  }

  /** Puts a picture at the head of prescriptions, or none, now and in future. */
  void take(Optional<Path> file) {
    if (file.isPresent() && !show(file.get())) {
      return;
    }
    shown = file.map(Path::toAbsolutePath);
    if (file.isEmpty()) {
      table.letterheadProperty().set(Optional.empty());
      say("");
    }
    try {
      mine.rememberLetterhead(file);
    } catch (CaseFileException e) {
      say(e.sentences());
    }
  }

  /** Whether the picture can be printed; when it cannot, it is said why. */
  private boolean show(Path file) {
    try {
      table.letterheadProperty().set(Optional.of(Letterhead.of(file)));
      say(Words.of("mine.letterhead-taken", file.getFileName()));
      return true;
    } catch (CaseFileException e) {
      say(e.sentences());
      return false;
    }
  }

  private void say(String sentence) {
    said.setText(sentence);
    said.setVisible(!sentence.isEmpty());
    said.setManaged(!sentence.isEmpty());
  }
}
